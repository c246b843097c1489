package org.mantice.reading;

import org.mantice.tune.Key;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;

/**
 * From written to sounding pitch (MusicXML 4.0, element transpose).
 *
 * @param fifths how far names move on the line of fifths
 * @param semitones octaves included
 */
record Transposition(int fifths, int semitones) {
    static final Transposition NONE = new Transposition(0, 0);

    /** @param diatonic steps, as written or from {@link #diatonicOf} */
    static Transposition of(int diatonic, int chromatic, int octaves) {
        return new Transposition(7 * chromatic - 12 * diatonic, chromatic + 12 * octaves);
    }

    /** The usual number of steps for a number of semitones: 2 for 3 (a minor third), 4 for 7. */
    static int diatonicOf(int chromatic) {
        int[] steps = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};
        return steps[Math.floorMod(chromatic, 12)] + 7 * Math.floorDiv(chromatic, 12);
    }

    /** The same, respelled so that a key stays within seven sharps or flats. */
    Transposition keeping(Key written) {
        int moved = written.fifths() + fifths;
        if (moved > 7) return new Transposition(fifths - 12, semitones);
        return moved < -7 ? new Transposition(fifths + 12, semitones) : this;
    }

    Key of(Key written) {
        return new Key(written.fifths() + keeping(written).fifths, written.mode());
    }

    NoteName of(NoteName written) {
        return NoteName.ofFifths(written.fifths() + fifths);
    }

    Pitch of(Pitch written) {
        if (equals(NONE)) return written;
        return spelled(of(written.name()), written.midi() + semitones);
    }

    /** The pitch with this MIDI number and name. */
    static Pitch spelled(NoteName name, int midi) {
        return new Pitch(name, Math.floorDiv(midi - name.step().semitone() - name.alter(), 12) - 1);
    }
}
