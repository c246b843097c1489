package org.mantice.reading.midi;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.ChordKind;

/**
 * A chord that notes are compared with, and what that costs. All prices are estimates, in thousandths.
 *
 * @param root pitch class
 * @param price of so rare a kind
 */
record ChordTemplate(int root, ChordKind kind, long price) {
    private static final long OUTSIDE_PRICE = 4_000;
    private static final long[] MISSING_PRICE = {900, 1_200, 300, 1_500};

    /** All chords that can be recognised; plain kinds first. */
    static List<ChordTemplate> all() {
        List<ChordTemplate> all = new ArrayList<>();
        for (int root = 0; root < 12; root++) {
            all.add(new ChordTemplate(root, ChordKind.MAJOR, 0));
            all.add(new ChordTemplate(root, ChordKind.MINOR, 0));
            all.add(new ChordTemplate(root, ChordKind.DOMINANT, 100));
            all.add(new ChordTemplate(root, ChordKind.DIMINISHED, 300));
            all.add(new ChordTemplate(root, ChordKind.MINOR_SEVENTH, 300));
            all.add(new ChordTemplate(root, ChordKind.MAJOR_SEVENTH, 400));
            all.add(new ChordTemplate(root, ChordKind.AUGMENTED, 400));
            all.add(new ChordTemplate(root, ChordKind.DIMINISHED_SEVENTH, 400));
            all.add(new ChordTemplate(root, ChordKind.MAJOR_SIXTH, 500));
            all.add(new ChordTemplate(root, ChordKind.MINOR_SIXTH, 500));
            all.add(new ChordTemplate(root, ChordKind.HALF_DIMINISHED, 500));
            all.add(new ChordTemplate(root, ChordKind.SUSPENDED_FOURTH, 500));
        }
        return all;
    }

    /** Twelve bits, one for each pitch class that is in the chord. */
    int tones() {
        int tones = 0;
        for (int interval : kind.intervals()) tones |= 1 << (root + interval) % 12;
        return tones;
    }

    /**
     * What it costs to hear the chord in some beats.
     *
     * @param weights how long each pitch class sounds
     * @param total of the weights, above 0
     * @param bass pitch class of the lowest note
     * @param scale the key's notes as bits
     */
    long price(long[] weights, long total, int beats, int bass, int scale) {
        int tones = tones();
        long outside = 0;
        for (int i = 0; i < 12; i++) if ((tones >> i & 1) == 0) outside += weights[i];
        long sum = price + beats * OUTSIDE_PRICE * outside / total;
        sum += missing(weights, total);
        sum += 150L * Integer.bitCount(tones & ~scale);
        if (bass == root) return sum;
        if ((tones >> bass & 1) == 0) return sum + 1_200;
        return sum + (bass == (root + 7) % 12 ? 250 : 600);
    }

    /** A bare bass says little about what is missing. */
    private long missing(long[] weights, long total) {
        long missing = 0;
        List<Integer> intervals = kind.intervals();
        for (int i = 0; i < intervals.size(); i++)
            if (weights[(root + intervals.get(i)) % 12] * 33 < total) missing += MISSING_PRICE[i];
        boolean bare = weights[root] == total;
        return bare ? missing / 4 : missing;
    }
}
