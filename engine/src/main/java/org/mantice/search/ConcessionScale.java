package org.mantice.search;

/**
 * How counts of concessions (bans that gave way) are packed into one {@code long}, so that comparing two packed values
 * as numbers compares the vectors of counts lexicographically, worst level first.
 *
 * <p>Each level gets {@code 60 / levels} bits: 12 bits (at most 4,095 concessions) with five levels, 30 bits with two.
 * Packed values are never negative. Level 0 is the worst: one concession of level 0 outweighs any number of others.
 *
 * @param levels number of levels, 1 to 5
 */
public record ConcessionScale(int levels) {
    private static final int BITS = 60;

    /** The value without any concession, in every scale. */
    public static final long NONE = 0L;

    public ConcessionScale {
        if (levels < 1 || levels > 5) throw new IllegalArgumentException("levels is " + levels + "; allowed: 1 to 5");
    }

    /** The largest count a level can hold. */
    public long capacity() {
        return (1L << bitsPerLevel()) - 1;
    }

    /** One concession of {@code level} (0 the worst, {@code levels - 1} the mildest), packed. */
    public long one(int level) {
        return 1L << shift(level);
    }

    /**
     * Packs counts, worst level first.
     *
     * @throws IllegalArgumentException if there are not exactly {@link #levels} counts or one is outside 0 to
     *     {@link #capacity()}
     */
    public long pack(int... counts) {
        if (counts.length != levels)
            throw new IllegalArgumentException("counts has " + counts.length + " levels; allowed: " + levels);
        long packed = 0;
        for (int level = 0; level < levels; level++) {
            if (counts[level] < 0 || counts[level] > capacity())
                throw new IllegalArgumentException(
                        "count of level " + level + " is " + counts[level] + "; allowed: 0 to " + capacity());
            packed += (long) counts[level] << shift(level);
        }
        return packed;
    }

    /** The count of {@code level} in a packed value. */
    public long count(long packed, int level) {
        check(packed);
        return packed >>> shift(level) & capacity();
    }

    /**
     * The sum, level by level.
     *
     * @throws ArithmeticException if a level would exceed {@link #capacity()}
     */
    public long add(long a, long b) {
        long sum = a + b;
        long carries = (a & b | (a | b) & ~sum) & topBits();
        if (carries != 0) throw new ArithmeticException("more than " + capacity() + " concessions of one level");
        return sum;
    }

    long check(long packed) {
        if (packed < 0 || packed >>> levels * bitsPerLevel() != 0)
            throw new IllegalArgumentException(
                    "packed concessions are " + packed + "; allowed: 0 to " + ((1L << levels * bitsPerLevel()) - 1));
        return packed;
    }

    private int bitsPerLevel() {
        return BITS / levels;
    }

    private int shift(int level) {
        if (level < 0 || level >= levels)
            throw new IllegalArgumentException("level is " + level + "; allowed: 0 to " + (levels - 1));
        return (levels - 1 - level) * bitsPerLevel();
    }

    private long topBits() {
        long bits = 0;
        for (int level = 0; level < levels; level++) bits |= 1L << shift(level) + bitsPerLevel() - 1;
        return bits;
    }
}
