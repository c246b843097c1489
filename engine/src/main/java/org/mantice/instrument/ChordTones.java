package org.mantice.instrument;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;

/**
 * What a chord symbol asks for, as sets of pitch classes in the bits of an int.
 *
 * @param chord every tone without the slash bass
 * @param root 0 to 11
 * @param bass the written bass note, 0 to 11
 * @param kind the kind whose tones these are; {@link ChordKind#OTHER} where degrees change it into none of the 33
 */
record ChordTones(int chord, int root, int bass, ChordKind kind) {
    /** What each row sounds on C. */
    private static final List<Integer> ROWS =
            Arrays.stream(BassRow.values()).map(row -> mask(row.intervals())).toList();

    static ChordTones of(ChordSymbol symbol) {
        int chord = mask(symbol.pitchClasses());
        int root = symbol.root().pitchClass();
        int bass = symbol.bass().map(note -> note.pitchClass()).orElse(root);
        return new ChordTones(chord, root, bass, kindOf(symbol, chord, root));
    }

    /** Every tone with the slash bass. */
    int wanted() {
        return chord | 1 << bass;
    }

    private static ChordKind kindOf(ChordSymbol symbol, int chord, int root) {
        if (symbol.degrees().isEmpty()) return symbol.kind();
        for (ChordKind kind : ChordKind.values())
            if (!kind.intervals().isEmpty()
                    && mask(kind.intervals().stream()
                                    .map(tone -> (tone + root) % 12)
                                    .toList())
                            == chord) return kind;
        return ChordKind.OTHER;
    }

    boolean hasSlashBass() {
        return bass != root;
    }

    /** Whether any of these tones lies a semitone from a tone of the chord. */
    boolean clashes(int tones) {
        int twice = tones << 12 | tones;
        int beside = (twice >> 1 | twice >> 11 | tones << 1) & 0xFFF;
        return (beside & chord) != 0;
    }

    /**
     * Of the tones that do not sound, those that are not missed: the fifth that a seventh or diminished button on the
     * root is built without, and the perfect fifth of a chord of four or more tones. A bass note is always missed.
     */
    int leftOut(int silent, Collection<BassButton> buttons) {
        int fifth = 1 << (root + 7) % 12;
        int lowFifth = 1 << (root + 6) % 12;
        boolean spare = Integer.bitCount(chord) >= 4 || hasOnRoot(buttons, BassRow.SEVENTH);
        int unmissed =
                (spare ? fifth : 0) | (hasOnRoot(buttons, BassRow.DIMINISHED) && (chord & fifth) == 0 ? lowFifth : 0);
        return silent & unmissed & ~(1 << bass);
    }

    private boolean hasOnRoot(Collection<BassButton> buttons, BassRow row) {
        return buttons.stream().anyMatch(button -> button.row() == row && button.rootPitchClass() == root);
    }

    static int mask(Collection<Integer> pitchClasses) {
        int mask = 0;
        for (int pitchClass : pitchClasses) mask |= 1 << pitchClass;
        return mask;
    }

    static int mask(BassButton button) {
        int high = ROWS.get(button.row().ordinal()) << button.rootPitchClass();
        return (high | high >> 12) & 0xFFF;
    }

    static SortedSet<Integer> set(int mask) {
        SortedSet<Integer> classes = new TreeSet<>();
        for (int pitchClass = 0; pitchClass < 12; pitchClass++)
            if ((mask & 1 << pitchClass) != 0) classes.add(pitchClass);
        return classes;
    }
}
