package org.mantice.app.sheet;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.mantice.tune.Key;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/**
 * Which notes of one measure need an accidental: one holds to the barline, on its own line or space alone; a tie carries
 * it over the barline for the tied note alone, and the next note there is marked even where the key would do (Gould,
 * Behind Bars, 2011, chapter on accidentals).
 */
final class Accidentals {
    private static final Step[] SHARPS = {Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B};

    private final Key key;
    private final Map<Integer, Integer> inForce = new HashMap<>();
    private final Set<Integer> doubtful = new HashSet<>();

    Accidentals(Key key) {
        this.key = key;
    }

    /** The sign that the next note of the measure needs. */
    Optional<Glyph> before(Pitch pitch, boolean tiedBack) {
        int place = placeOf(pitch);
        int alter = pitch.name().alter();
        int now = inForce.getOrDefault(place, ofKey(key, pitch.name().step()));
        if (tiedBack) {
            if (alter != now) doubtful.add(place);
            return Optional.empty();
        }
        boolean doubted = doubtful.remove(place);
        inForce.put(place, alter);
        return alter == now && !doubted ? Optional.empty() : Optional.of(sign(alter));
    }

    /** Line or space, counted in steps from the bottom line of a treble staff. */
    static int placeOf(Pitch pitch) {
        return 7 * pitch.octave() + pitch.name().step().ordinal() - (7 * 4 + Step.E.ordinal());
    }

    /** Semitones by which the key alters a letter. */
    static int ofKey(Key key, Step step) {
        for (int i = 0; i < SHARPS.length; i++) {
            if (SHARPS[i] != step) continue;
            return i < key.fifths() ? 1 : SHARPS.length - 1 - i < -key.fifths() ? -1 : 0;
        }
        throw new IllegalStateException("no such step " + step);
    }

    static Glyph sign(int alter) {
        return switch (alter) {
            case -2 -> Glyph.ACCIDENTAL_DOUBLE_FLAT;
            case -1 -> Glyph.ACCIDENTAL_FLAT;
            case 0 -> Glyph.ACCIDENTAL_NATURAL;
            case 1 -> Glyph.ACCIDENTAL_SHARP;
            case 2 -> Glyph.ACCIDENTAL_DOUBLE_SHARP;
            default -> throw new IllegalArgumentException("alter is " + alter + "; allowed: -2 to 2");
        };
    }

    /** As text after the letter of a chord: nothing, one or two signs. */
    static String inText(NoteName name) {
        return switch (name.alter()) {
            case -2 -> "\u266d\u266d";
            case -1 -> "\u266d";
            case 1 -> "\u266f";
            case 2 -> "\u266f\u266f";
            default -> "";
        };
    }
}
