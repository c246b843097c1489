package org.mantice.rule.righthand;

/** How much dearer a movement is for want of time. */
final class Haste {
    /** A quarter note at 100 beats a minute. */
    private static final long UNIT_MILLIS = 600;

    private static final long LEAST_MILLIS = 50;

    private Haste() {}

    /** Per mille: 1,000 at a quarter note at 100, 1,500 in half the time, 750 in twice the time (estimate). */
    static long perMille(long availableMillis) {
        return 500 + 500 * UNIT_MILLIS / Math.max(LEAST_MILLIS, availableMillis);
    }
}
