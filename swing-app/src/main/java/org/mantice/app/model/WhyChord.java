package org.mantice.app.model;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.sheet.ChordText;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.harmony.HarmonyFact;
import org.mantice.harmony.ProposedChord;
import org.mantice.performance.Performance;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** What there is to say of the place of the chord line that is pointed at. */
final class WhyChord {
    private final TuneEditor editor;
    private final Words words;
    private final WrittenPlace place;

    WhyChord(TuneEditor editor, ChordSpot spot, Words words) {
        this.editor = editor;
        this.words = words;
        this.place = spot.place();
    }

    /** A line for the place, one for what stands there, one for how to change it. */
    String heading() {
        Tune tune = editor.shown().map(Performance::tune).orElseThrow();
        MusicWords music = new MusicWords(words);
        List<String> lines = new ArrayList<>();
        lines.add(words.text("why.chord", music.place(tune, place)));
        Optional<PlacedChord> chord = editor.chordAt(place);
        Optional<ProposedChord> proposed = editor.proposalAt(place);
        if (chord.isEmpty())
            lines.add(editor.sounding(place)
                    .map(before -> words.text("why.chord.goesOn", ChordText.of(before)))
                    .orElseGet(() -> words.text("why.chord.none")));
        else if (chord.get().proposed())
            lines.add(proposed.map(why -> words.text(
                            "why.chord.proposed",
                            text(chord.get()),
                            why.degree(),
                            music.key(tune.measure(place.measure()).key())))
                    .orElseGet(() -> words.text("why.chord.proposedBefore", text(chord.get()))));
        else lines.add(words.text("why.chord.stands", text(chord.get())));
        lines.add(words.text(chord.isPresent() ? "why.chord.change" : "why.chord.type"));
        return String.join("\n", lines);
    }

    private static String text(PlacedChord chord) {
        return ChordText.of(chord);
    }

    /** What speaks for the chord proposed and against it, the weightiest first; empty where none is. */
    Optional<CostTree> reasons() {
        return editor.proposalAt(place).map(proposed -> {
            List<CostTree> reasons = proposed.facts().stream()
                    .sorted(Comparator.comparingLong((HarmonyFact fact) -> -Math.abs(fact.costMillipoints())))
                    .map(this::reason)
                    .toList();
            return new CostTree(words.text("why.chord.reasons"), proposed.costMillipoints(), "", reasons);
        });
    }

    private CostTree reason(HarmonyFact fact) {
        NumberFormat format = NumberFormat.getNumberInstance(words.locale());
        format.setMinimumFractionDigits(2);
        format.setMaximumFractionDigits(2);
        String weight = format.format(BigDecimal.valueOf(Math.abs(fact.costMillipoints()), 3));
        String what = words.of("why", fact.reason());
        String text = fact.costMillipoints() < 0
                ? words.text("why.chord.for", what, weight)
                : words.text("why.chord.against", what, weight);
        return new CostTree(text, fact.costMillipoints(), words.text("why.chord.about"), List.of());
    }

    /** Instead of reasons. */
    String note() {
        return words.text("why.chord.notProposed");
    }
}
