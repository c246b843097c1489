package org.mantice.performance;

import java.util.ArrayList;
import java.util.List;

/** Cuts an order of play into passes as {@link Pass} defines them. */
final class Passes {
    private Passes() {}

    static int countIn(List<Integer> order, int measures) {
        return starts(order, measures).size();
    }

    /** Indexes in one time through at which a pass begins, ascending from 0. */
    static List<Integer> starts(List<Integer> order, int measures) {
        List<Integer> starts = new ArrayList<>();
        starts.add(0);
        for (int i = 1; i < order.size(); i++) {
            int back = order.get(i - 1) - order.get(i) + 1;
            if (2 * back > measures) starts.add(i);
        }
        return starts;
    }

    static List<Pass> of(List<Integer> order, int measures, int timesThrough) {
        List<Pass> passes = new ArrayList<>();
        List<Integer> starts = starts(order, measures);
        for (int time = 1; time <= timesThrough; time++)
            for (int i = 0; i < starts.size(); i++) {
                int first = (time - 1) * order.size() + starts.get(i);
                int end = i + 1 < starts.size() ? (time - 1) * order.size() + starts.get(i + 1) : time * order.size();
                passes.add(new Pass(passes.size() + 1, time, first, end - 1));
            }
        return passes;
    }
}
