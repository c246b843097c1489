package org.mantice.editing;

import java.util.ArrayList;
import java.util.List;
import org.mantice.editing.TuneEditException.Reason;
import org.mantice.reading.ChordText;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Edits of single chords. What stands at one place is edited together. */
final class ChordEdits {
    private ChordEdits() {}

    static Tune set(Spot spot, TuneEdit.SetChord edit) {
        WrittenPlace place = edit.place();
        List<PlacedChord> chords = others(spot.measure(place), place);
        ChordText.Written written = edit.written();
        chords.add(new PlacedChord(place.offset(), written.symbol(), written.alternate(), written.optional(), false));
        return with(spot.tune(), place, chords);
    }

    static Tune remove(Spot spot, TuneEdit.RemoveChord edit) {
        chordsAt(spot, edit.place());
        return with(
                spot.tune(),
                edit.place(),
                others(spot.tune().measure(edit.place().measure()), edit.place()));
    }

    static Tune move(Spot spot, TuneEdit.MoveChord edit) {
        List<PlacedChord> moved = chordsAt(spot, edit.from());
        spot.measure(edit.to()).chords().stream()
                .filter(chord -> chord.offset().equals(edit.to().offset()))
                .findFirst()
                .ifPresent(there -> {
                    throw spot.refuse(Reason.CHORD_THERE, spot.words(edit.to()), there.symbol());
                });
        Tune without = with(
                spot.tune(), edit.from(), others(spot.tune().measure(edit.from().measure()), edit.from()));
        List<PlacedChord> chords =
                new ArrayList<>(without.measure(edit.to().measure()).chords());
        for (PlacedChord chord : moved) chords.add(own(chord, edit.to().offset()));
        return with(without, edit.to(), chords);
    }

    static Tune accept(Spot spot, TuneEdit.AcceptChord edit) {
        List<PlacedChord> here = chordsAt(spot, edit.place());
        if (here.stream().noneMatch(PlacedChord::proposed))
            throw spot.refuse(
                    Reason.NOT_PROPOSED, spot.words(edit.place()), here.get(0).symbol());
        List<PlacedChord> chords = others(spot.tune().measure(edit.place().measure()), edit.place());
        for (PlacedChord chord : here) chords.add(own(chord, edit.place().offset()));
        return with(spot.tune(), edit.place(), chords);
    }

    /** The chord at an offset, written rather than proposed. */
    static PlacedChord own(PlacedChord chord, MusicalTime offset) {
        return new PlacedChord(offset, chord.symbol(), chord.alternate(), chord.optional(), false);
    }

    /** One or more. */
    private static List<PlacedChord> chordsAt(Spot spot, WrittenPlace place) {
        List<PlacedChord> here = spot.measure(place).chords().stream()
                .filter(chord -> chord.offset().equals(place.offset()))
                .toList();
        if (here.isEmpty()) throw spot.refuse(Reason.NO_CHORD, spot.words(place));
        return here;
    }

    private static List<PlacedChord> others(Measure measure, WrittenPlace place) {
        List<PlacedChord> chords = new ArrayList<>(measure.chords());
        chords.removeIf(chord -> chord.offset().equals(place.offset()));
        return chords;
    }

    private static Tune with(Tune tune, WrittenPlace place, List<PlacedChord> chords) {
        return tune.withMeasure(place.measure(), tune.measure(place.measure()).withChords(chords));
    }
}
