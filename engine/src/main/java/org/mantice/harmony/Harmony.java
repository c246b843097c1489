package org.mantice.harmony;

import java.util.List;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;

/**
 * A chord as a degree of a key.
 *
 * @param degree its name, as {@code "V7"}
 * @param semitones of the root above the tonic, 0 to 11
 * @param role the number in the {@link HarmonyTable} whose weights it takes
 * @param applied a dominant, of the key or of one of its degrees: see {@link #leadingTo}
 */
record Harmony(String degree, int semitones, ChordKind kind, int role, boolean applied) {
    /** Places on the line of fifths above the tonic, by semitones; the tritone up as a sharp fourth. */
    private static final List<Integer> FIFTHS = List.of(0, -5, 2, -3, 4, -1, 6, 1, -4, 3, -2, 5);

    /**
     * With its seventh where it is a dominant and the next chord's root lies a fifth below: the seventh is what falls into
     * that chord's third (Piston, Harmony, 1941, chapters on the dominant seventh and on secondary dominants). Of the
     * dominants that fall a fifth in the training tunes, 81 in 100 have it; of the others 15.
     *
     * @param semitonesDown from this root to the next
     */
    Harmony leadingTo(int semitonesDown) {
        if (!applied || Math.floorMod(semitonesDown, 12) != 7) return this;
        return new Harmony(degree + "7", semitones, ChordKind.DOMINANT, role, false);
    }

    ChordSymbol symbol(NoteName tonic) {
        return ChordSymbol.of(NoteName.ofFifths(plain(tonic.fifths() + FIFTHS.get(semitones))), kind);
    }

    /** Without a double accidental. */
    private static int plain(int fifths) {
        return fifths > 12 ? fifths - 12 : fifths < -8 ? fifths + 12 : fifths;
    }

    /**
     * Which note of the chord a note is.
     *
     * @param aboveTonic semitones above the tonic, 0 to 11
     * @return 0 the root, 1 the third, 2 the fifth, 3 the minor seventh of a major triad; -1 for none of them
     */
    int noteOf(int aboveTonic) {
        ChordKind notes = kind == ChordKind.MAJOR ? ChordKind.DOMINANT : kind;
        return notes.intervals().indexOf(Math.floorMod(aboveTonic - semitones, 12));
    }
}
