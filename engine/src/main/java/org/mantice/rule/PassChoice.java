package org.mantice.rule;

import org.mantice.instrument.RegisterSwitch;

/**
 * What one pass would be played with. Only choices that fit the keyboard are offered.
 *
 * @param pass from 1
 * @param passes how many there are
 * @param octave octaves up from the written melody, -1 to 1
 * @param lowestMidi lowest key of the pass at that octave
 * @param highestMidi highest key of the pass at that octave
 */
public record PassChoice(int pass, int passes, RegisterSwitch register, int octave, int lowestMidi, int highestMidi)
        implements VariationStep {
    /** Lowest note that sounds, with the 16' bank an octave below the key. */
    public int lowestSounding() {
        return lowestMidi
                + register.banks().stream().mapToInt(b -> b.semitones()).min().orElse(0);
    }

    /** Highest note that sounds, with the 4' bank an octave above the key. */
    public int highestSounding() {
        return highestMidi
                + register.banks().stream().mapToInt(b -> b.semitones()).max().orElse(0);
    }
}
