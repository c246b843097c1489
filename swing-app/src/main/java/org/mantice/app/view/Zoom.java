package org.mantice.app.view;

import java.util.List;

/** The sizes of the sheet, in per cent. */
final class Zoom {
    static final int USUAL = 100;

    private static final List<Integer> STEPS = List.of(75, 90, 100, 110, 125, 150, 175, 200);

    private Zoom() {}

    static int larger(int percent) {
        return STEPS.stream().filter(step -> step > percent).findFirst().orElse(most());
    }

    static int smaller(int percent) {
        return STEPS.stream().filter(step -> step < percent).reduce((a, b) -> b).orElse(least());
    }

    static int least() {
        return STEPS.get(0);
    }

    static int most() {
        return STEPS.get(STEPS.size() - 1);
    }

    /** The nearest that is allowed. */
    static int within(int percent) {
        return Math.max(least(), Math.min(most(), percent));
    }
}
