package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;

/** A row on which things stand side by side and never over each other. */
final class Shelf {
    private static final double GAP = 0.2;

    private final List<double[]> taken = new ArrayList<>();

    /** Whether nothing stands between. */
    boolean isFree(double from, double to) {
        for (double[] one : taken) if (from < one[1] + GAP && one[0] - GAP < to) return false;
        return true;
    }

    /** Takes the stretch if nothing stands there. */
    boolean take(double from, double to) {
        boolean free = isFree(from, to);
        if (free) taken.add(new double[] {from, to});
        return free;
    }
}
