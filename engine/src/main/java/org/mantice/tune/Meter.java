package org.mantice.tune;

import java.util.List;

/**
 * A time signature.
 *
 * @param groups numerators as written: 3/4 is [3], 3+2/8 is [3, 2]; empty for free time
 * @param unit denominator, a power of two from 1 to 64; 4 for free time
 */
public record Meter(List<Integer> groups, int unit) {
    public static final Meter FREE = new Meter(List.of(), 4);

    public Meter {
        groups = List.copyOf(groups);
        if (unit < 1 || unit > 64 || Integer.bitCount(unit) != 1)
            throw new IllegalArgumentException("unit is " + unit + "; allowed: 1, 2, 4, 8, 16, 32, 64");
        for (int group : groups)
            if (group < 1 || group > 128)
                throw new IllegalArgumentException("beats is " + group + "; allowed: 1 to 128");
    }

    public static Meter of(int beats, int unit) {
        return new Meter(List.of(beats), unit);
    }

    public boolean isFree() {
        return groups.isEmpty();
    }

    /** All numerators added; 0 for free time. */
    public int beats() {
        return groups.stream().mapToInt(Integer::intValue).sum();
    }

    /** Length of a full measure; one whole note for free time. */
    public MusicalTime length() {
        return isFree() ? MusicalTime.WHOLE : MusicalTime.of(beats(), unit);
    }

    /** 6/8, 9/8, 12/8 and the like, felt in dotted beats. */
    public boolean isCompound() {
        return groups.size() == 1 && unit >= 8 && beats() > 3 && beats() % 3 == 0;
    }

    /** The felt beat: a dotted quarter in 6/8, else the unit. */
    public MusicalTime beat() {
        return MusicalTime.of(isCompound() ? 3 : 1, unit);
    }

    /** As {@code "6/8"} or {@code "3+2/8"}; {@code "free"}. */
    @Override
    public String toString() {
        if (isFree()) return "free";
        return String.join("+", groups.stream().map(String::valueOf).toList()) + "/" + unit;
    }
}
