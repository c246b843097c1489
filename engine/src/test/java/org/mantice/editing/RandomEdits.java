package org.mantice.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.mantice.reading.ChordText;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Edits without musical sense that fit a tune one after the other. The same seed gives the same edits. */
public final class RandomEdits {
    private static final String[] CHORDS = {
        "C", "Am7", "D7/F#", "N.C.", "Bdim", "E\u266dmaj7", "(A7)", "G (Em)", "F#\u00f8", "Csus4", "G7b9", "Bb6", "Db/F"
    };

    private final Random random;
    private final boolean chordsOnly;
    private final List<TuneEdit> made = new ArrayList<>();
    private EditedTune edited;

    private RandomEdits(Tune tune, long seed, boolean chordsOnly) {
        this.random = new Random(seed);
        this.chordsOnly = chordsOnly;
        this.edited = EditedTune.unedited(tune);
    }

    /** Edits of every kind. */
    public static List<TuneEdit> of(Tune tune, int count, long seed) {
        return new RandomEdits(tune, seed, false).make(count);
    }

    /** Edits of chords alone. */
    public static List<TuneEdit> ofChords(Tune tune, int count, long seed) {
        return new RandomEdits(tune, seed, true).make(count);
    }

    private List<TuneEdit> make(int count) {
        while (made.size() < count) {
            TuneEdit edit = edit();
            try {
                edited = Edits.apply(edited, List.of(edit), 1);
                made.add(edit);
            } catch (TuneEditException doesNotFit) {
                // another one will
            }
        }
        return made;
    }

    private TuneEdit edit() {
        return switch (random.nextInt(chordsOnly ? 9 : 14)) {
            case 0, 1, 2 -> new TuneEdit.SetChord(place(), CHORDS[random.nextInt(CHORDS.length)]);
            case 3 -> new TuneEdit.SetChord(place(), "H7", ChordText.Letters.GERMAN);
            case 4 -> new TuneEdit.MoveChord(chord(), place());
            case 5 -> new TuneEdit.RemoveChord(chord());
            case 6 -> one(4) ? new TuneEdit.ProposeChords() : new TuneEdit.AcceptChord(chord());
            case 7 -> one(4) ? new TuneEdit.AcceptChords() : new TuneEdit.AcceptChord(chord());
            case 8 -> one(4) ? new TuneEdit.DismissProposals() : new TuneEdit.RemoveChord(chord());
            case 9, 10 -> new TuneEdit.SetPhrase(place(), !one(4));
            case 11 -> new TuneEdit.SetBarlines(measure(), barlines());
            case 12 ->
                new TuneEdit.SetTempo(
                        place(),
                        one(4)
                                ? Optional.empty()
                                : Optional.of(new Tempo(
                                        MusicalTime.of(1 + random.nextInt(3), 8), 40_000 + random.nextInt(99_999))));
            default ->
                new TuneEdit.SetKey(
                        measure(),
                        new Key(random.nextInt(15) - 7, Mode.values()[random.nextInt(Mode.values().length)]));
        };
    }

    private int measure() {
        return random.nextInt(edited.tune().measures().size());
    }

    /** The start of a note or rest, or a beat. */
    private WrittenPlace place() {
        int index = measure();
        Measure measure = edited.tune().measure(index);
        List<MelodyEvent> events = measure.melody();
        if (one(2) && !events.isEmpty())
            return new WrittenPlace(
                    index, events.get(random.nextInt(events.size())).offset());
        return new WrittenPlace(index, measure.meter().beat().times(random.nextInt(4)));
    }

    /** Where a chord stands, if the measure has one. */
    private WrittenPlace chord() {
        int index = measure();
        var chords = edited.tune().measure(index).chords();
        if (chords.isEmpty()) return new WrittenPlace(index, MusicalTime.ZERO);
        return new WrittenPlace(index, chords.get(random.nextInt(chords.size())).offset());
    }

    private Barlines barlines() {
        Optional<Integer> end = one(3) ? Optional.of(2 + random.nextInt(2)) : Optional.empty();
        return new Barlines(
                one(4),
                end,
                one(2),
                one(5) ? List.of(1 + random.nextInt(2)) : List.of(),
                one(5),
                one(8),
                one(8),
                one(8) ? Optional.of(Barlines.Jump.values()[random.nextInt(2)]) : Optional.empty(),
                one(8),
                one(8),
                one(4));
    }

    private boolean one(int of) {
        return random.nextInt(of) == 0;
    }
}
