package org.mantice.search;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which locks contradict each other: a set of restrictions that leaves no path although each smaller part of it leaves
 * one.
 *
 * @param locks indices of the restrictions in the set, ascending; empty where the lattice has no path without locks
 * @param smallest whether no set of fewer restrictions is contradictory; otherwise only no part of this one is
 */
public record Conflict(List<Integer> locks, boolean smallest) {
    /** Most sets tried. Estimate: about a second on a large lattice. */
    private static final int PATIENCE = 2_000;

    public Conflict {
        locks = List.copyOf(locks);
    }

    /**
     * Finds a contradictory set among restrictions that together leave no path: one from which nothing can be dropped,
     * then a smaller one if there is one, by trying all sets of one, two and so on as far as patience goes.
     *
     * @throws IllegalArgumentException if the restrictions together do leave a path
     */
    public static Conflict among(LayeredGraph graph, List<Restriction> restrictions) {
        List<Integer> all = IntStream.range(0, restrictions.size()).boxed().toList();
        if (!isContradictory(graph, restrictions, all))
            throw new IllegalArgumentException(
                    "restrictions are " + restrictions.size() + " that leave a path; allowed: contradictory ones");
        List<Integer> core = new ArrayList<>(all);
        for (Integer lock : all) {
            List<Integer> less = new ArrayList<>(core);
            less.remove(lock);
            if (isContradictory(graph, restrictions, less)) core = less;
        }
        return smaller(graph, restrictions, core);
    }

    private static Conflict smaller(LayeredGraph graph, List<Restriction> restrictions, List<Integer> core) {
        int tried = 0;
        for (int size = 1; size < core.size(); size++) {
            int[] chosen = IntStream.range(0, size).toArray();
            do {
                if (++tried > PATIENCE) return new Conflict(core, false);
                List<Integer> set = IntStream.of(chosen).boxed().toList();
                if (isContradictory(graph, restrictions, set)) return new Conflict(set, true);
            } while (advance(chosen, restrictions.size()));
        }
        return new Conflict(core, true);
    }

    /** The next choice in lexicographic order; false after the last. */
    private static boolean advance(int[] chosen, int from) {
        int index = chosen.length - 1;
        while (index >= 0 && chosen[index] == from - chosen.length + index) index--;
        if (index < 0) return false;
        chosen[index]++;
        for (int next = index + 1; next < chosen.length; next++) chosen[next] = chosen[next - 1] + 1;
        return true;
    }

    private static boolean isContradictory(LayeredGraph graph, List<Restriction> restrictions, List<Integer> set) {
        Restriction all = Restriction.free();
        for (int lock : set) all = all.and(restrictions.get(lock));
        return Reachability.firstBlockedStage(graph, all).isPresent();
    }
}
