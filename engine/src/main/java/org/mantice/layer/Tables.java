package org.mantice.layer;

import org.mantice.rule.Rule;

/** How costs lie in tables of whole numbers. */
public final class Tables {
    /** A ban, as stored. */
    public static final int BANNED = -1;

    private Tables() {}

    /** @param cost millipoints or {@link Rule#BAN} */
    public static int stored(long cost) {
        return cost == Rule.BAN ? BANNED : Math.toIntExact(cost);
    }

    /** Millipoints or {@link Rule#BAN}. */
    public static long cost(int stored) {
        return stored == BANNED ? Rule.BAN : stored;
    }
}
