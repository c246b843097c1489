package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Mark;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** A measure of a voice while it is put together; places count items until the lengths of all are known. */
final class AbcMeasure {
    /** A sign before an item of a layer. */
    private record Placed(int layer, int index, Function<MusicalTime, ScoreSign> sign) {}

    private record Chord(int layer, int index, ChordSymbol symbol, ScoreChord.Manner manner) {}

    private final List<List<AbcItem>> layers = new ArrayList<>(List.of(new ArrayList<>()));
    private final List<Placed> signs = new ArrayList<>();
    private final List<Chord> chords = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    Key key;
    Meter meter;
    boolean meterGiven;
    boolean repeatStart;
    /** How often the passage that ends here is played in all; 0 for no repeat. */
    int repeatEnd;

    boolean thickEnd;
    /** A section may begin here: a repeat or a double bar stands before it. */
    boolean startsSection;

    Optional<String> ending = Optional.empty();
    boolean endingStop;
    Optional<String> label = Optional.empty();
    String number = "";
    boolean implicit;

    AbcMeasure(Key key, Meter meter) {
        this.key = key;
        this.meter = meter;
    }

    List<AbcItem> layer() {
        return layers.get(layers.size() - 1);
    }

    List<AbcItem> first() {
        return layers.get(0);
    }

    void startLayer() {
        layers.add(new ArrayList<>());
    }

    boolean hasItems() {
        return layers.size() > 1 || !layers.get(0).isEmpty();
    }

    void add(Function<MusicalTime, ScoreSign> sign) {
        signs.add(new Placed(layers.size() - 1, layer().size(), sign));
    }

    boolean hasChordHere() {
        return chords.stream()
                .skip(Math.max(0, chords.size() - 4))
                .anyMatch(chord -> chord.layer == layers.size() - 1 && chord.index == layer().size());
    }

    void add(ChordSymbol symbol, ScoreChord.Manner manner) {
        chords.add(new Chord(layers.size() - 1, layer().size(), symbol, manner));
    }

    boolean hasChords() {
        return !chords.isEmpty();
    }

    /** Takes over what stands in a measure that turned out to have no note: at this one's end or at its start. */
    void takeOver(AbcMeasure empty, boolean atEnd) {
        int index = atEnd ? first().size() : 0;
        for (Placed each : empty.signs) signs.add(new Placed(0, index, each.sign));
        for (Chord each : empty.chords) chords.add(new Chord(0, index, each.symbol, each.manner));
    }

    /** How long the first layer is, rests of whole measures apart. */
    MusicalTime length() {
        return length(first());
    }

    private static MusicalTime length(List<AbcItem> items) {
        return items.stream()
                .filter(item -> !item.whole)
                .map(item -> item.length)
                .reduce(MusicalTime.ZERO, MusicalTime::plus);
    }

    ScoreMeasure build(int index, String voice, int staff, String clef) {
        List<ScoreNote> notes = new ArrayList<>();
        List<List<MusicalTime>> onsets = new ArrayList<>();
        MusicalTime end = MusicalTime.ZERO;
        for (int layer = 0; layer < layers.size(); layer++) {
            List<MusicalTime> starts = new ArrayList<>();
            MusicalTime onset = MusicalTime.ZERO;
            for (AbcItem item : layers.get(layer)) {
                starts.add(onset);
                item.addTo(notes, onset, layer, layer == 0 ? voice : voice + "&" + layer, staff);
                if (!item.whole) onset = onset.plus(item.length);
            }
            starts.add(onset);
            onsets.add(starts);
            end = end.max(onset);
        }
        return new ScoreMeasure(
                index,
                number,
                implicit,
                key,
                meterGiven ? Optional.of(meter) : Optional.empty(),
                end,
                notes,
                chords.stream()
                        .map(chord -> new ScoreChord(
                                onsets.get(chord.layer).get(chord.index), true, chord.symbol, chord.manner, List.of()))
                        .toList(),
                signs(onsets),
                barlines(end),
                Map.of(staff, clef),
                0,
                List.copyOf(findings));
    }

    private List<ScoreSign> signs(List<List<MusicalTime>> onsets) {
        List<ScoreSign> built = new ArrayList<>();
        label.ifPresent(text -> built.add(new ScoreSign.Plain(new Mark.Rehearsal(MusicalTime.ZERO, text))));
        for (Placed each : signs)
            built.add(each.sign.apply(onsets.get(each.layer).get(each.index)));
        return built;
    }

    private List<ScoreBarline> barlines(MusicalTime end) {
        List<ScoreBarline> barlines = new ArrayList<>();
        if (repeatStart || ending.isPresent())
            barlines.add(barline(
                    MusicalTime.ZERO,
                    ScoreBarline.Location.LEFT,
                    "regular",
                    repeatStart ? "forward" : "",
                    "",
                    ending.map(numbers -> new ScoreBarline.ScoreEnding(true, numbers, numbers))));
        if (repeatEnd > 0 || thickEnd || endingStop)
            barlines.add(barline(
                    end,
                    ScoreBarline.Location.RIGHT,
                    thickEnd ? "light-light" : "regular",
                    repeatEnd > 0 ? "backward" : "",
                    repeatEnd > 0 ? String.valueOf(repeatEnd) : "",
                    endingStop ? Optional.of(new ScoreBarline.ScoreEnding(false, "", "")) : Optional.empty()));
        return barlines;
    }

    private static ScoreBarline barline(
            MusicalTime onset,
            ScoreBarline.Location location,
            String style,
            String repeat,
            String times,
            Optional<ScoreBarline.ScoreEnding> ending) {
        return new ScoreBarline(onset, location, style, repeat, times, true, ending, false, false, false, List.of());
    }
}
