package org.mantice.reading.midi;

import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;

/**
 * Names for keys of the keyboard. Of the line of fifths a key uses twelve neighbours: its scale, in major two flats and
 * three sharps beyond it, in minor one and four (common practice: raised leading notes, flattened third and seventh).
 */
public final class Spelling {
    private Spelling() {}

    public static Pitch pitch(int midi, Key key) {
        NoteName name = name(Math.floorMod(midi, 12), key);
        return new Pitch(name, (midi - name.step().semitone() - name.alter()) / 12 - 1);
    }

    /** @param pitchClass 0 (C) to 11 (B) */
    public static NoteName name(int pitchClass, Key key) {
        boolean minor = key.mode() == Mode.MINOR || key.mode() == Mode.AEOLIAN;
        int lowest = key.fifths() - (minor ? 2 : 3);
        for (int fifths = lowest; fifths < lowest + 12; fifths++) {
            NoteName name = NoteName.ofFifths(fifths);
            if (name.pitchClass() == pitchClass) return name;
        }
        throw new IllegalArgumentException("pitch class is " + pitchClass + "; allowed: 0 to 11");
    }
}
