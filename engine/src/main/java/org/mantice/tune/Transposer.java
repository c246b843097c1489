package org.mantice.tune;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Moves a tune to another key: notes, keys, chord symbols and the bass staff.
 *
 * <p>Each written key goes to the key with the fewest accidentals; of F-sharp and G-flat (and their relatives) to the one
 * on the side of the written key, flats for C. Notes and chords keep their place in the key, so letters move alike. A
 * note that would need a double accidental is written plainly (G for F-double-sharp), a chord root or bass outside the
 * new key also where it would be E-sharp, B-sharp, C-flat or F-flat. Moving by 0 changes nothing.
 */
public final class Transposer {
    private static final int FARTHEST = 11;

    private final int semitones;
    private final Map<Key, Key> keys = new HashMap<>();

    private Transposer(int semitones) {
        if (semitones < -FARTHEST || semitones > FARTHEST)
            throw new IllegalArgumentException("semitones is " + semitones + "; allowed: -11 to 11");
        this.semitones = semitones;
    }

    /** @param semitones up, -11 to 11 */
    public static Tune transpose(Tune tune, int semitones) {
        Transposer transposer = new Transposer(semitones);
        if (semitones == 0) return tune;
        return new Tune(
                tune.title(),
                tune.dance(),
                tune.measures().stream().map(transposer::moved).toList());
    }

    /** The nearer way from a tune's first key to one with the given key note: -5 to 6 semitones. */
    public static int semitonesTo(Tune tune, NoteName tonic) {
        int from = tune.measure(0).key().tonic().pitchClass();
        return Math.floorMod(tonic.pitchClass() - from + 5, 12) - 5;
    }

    /** The key so many semitones up, -11 to 11. */
    public static Key transpose(Key key, int semitones) {
        return new Transposer(semitones).moved(key);
    }

    private Key moved(Key key) {
        return keys.computeIfAbsent(key, this::sparest);
    }

    private Key sparest(Key key) {
        if (semitones == 0) return key;
        int sharps = Math.floorMod(key.fifths() + 7 * semitones, 12);
        boolean flats = sharps > 6 || sharps == 6 && key.fifths() <= 0;
        return new Key(flats ? sharps - 12 : sharps, key.mode());
    }

    private Measure moved(Measure measure) {
        Key from = measure.key();
        Key to = moved(from);
        return new Measure(
                measure.number(),
                measure.length(),
                measure.meter(),
                to,
                measure.pickup(),
                measure.melody().stream().map(event -> moved(event, from, to)).toList(),
                measure.chords().stream().map(chord -> moved(chord, from, to)).toList(),
                measure.bass().stream().map(event -> moved(event, from, to)).toList(),
                measure.marks(),
                measure.barlines());
    }

    private MelodyEvent moved(MelodyEvent event, Key from, Key to) {
        return new MelodyEvent(
                event.offset(),
                event.duration(),
                moved(event.notes(), from, to),
                moved(event.graces(), from, to),
                moved(event.after(), from, to),
                event.marks());
    }

    private GraceGroup moved(GraceGroup group, Key from, Key to) {
        return new GraceGroup(
                group.notes().stream().map(notes -> moved(notes, from, to)).toList());
    }

    private List<MelodyNote> moved(List<MelodyNote> notes, Key from, Key to) {
        List<MelodyNote> moved = new ArrayList<>();
        for (MelodyNote note : notes)
            moved.add(
                    new MelodyNote(moved(note.pitch(), from, to), note.tiedBack(), note.tiedForward(), note.fingers()));
        return moved;
    }

    private BassEvent moved(BassEvent event, Key from, Key to) {
        List<Pitch> pitches =
                event.pitches().stream().map(pitch -> moved(pitch, from, to)).toList();
        return new BassEvent(event.offset(), event.duration(), pitches, event.chord(), event.tiedBack(), event.marks());
    }

    private Pitch moved(Pitch pitch, Key from, Key to) {
        NoteName name = moved(pitch.name(), from, to);
        int plain = pitch.midi() + semitones - name.step().semitone() - name.alter();
        return new Pitch(name, plain / 12 - 1);
    }

    private static NoteName moved(NoteName name, Key from, Key to) {
        return plain(name.fifths() + to.fifths() - from.fifths());
    }

    /** Without a double accidental. */
    private static NoteName plain(int fifths) {
        int place = fifths;
        while (place > 12) place -= 12;
        while (place < -8) place += 12;
        return NoteName.ofFifths(place);
    }

    private PlacedChord moved(PlacedChord chord, Key from, Key to) {
        return new PlacedChord(
                chord.offset(),
                moved(chord.symbol(), from, to),
                chord.alternate().map(symbol -> moved(symbol, from, to)),
                chord.optional(),
                chord.proposed());
    }

    private ChordSymbol moved(ChordSymbol symbol, Key from, Key to) {
        if (symbol.isSilent()) return symbol;
        Optional<NoteName> bass = symbol.bass().map(name -> chordName(name, from, to));
        return new ChordSymbol(
                chordName(symbol.root(), from, to), symbol.kind(), symbol.degrees(), bass, symbol.text());
    }

    private static NoteName chordName(NoteName name, Key from, Key to) {
        NoteName moved = moved(name, from, to);
        int place = moved.fifths() - to.fifths();
        boolean inKey = place >= -1 && place <= 5;
        if (inKey || moved.fifths() <= 10 && moved.fifths() >= -6) return moved;
        return NoteName.ofFifths(moved.fifths() > 10 ? moved.fifths() - 12 : moved.fifths() + 12);
    }
}
