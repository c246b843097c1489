package org.mantice.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Demands that cannot be met together although each smaller part of them can.
 *
 * @param demands in the order in which they were given; empty where not even no demand can be met
 * @param smallest whether no set of fewer demands contradicts itself; otherwise only no part of this one does
 */
public record Contradiction<D>(List<D> demands, boolean smallest) {
    /** Most sets asked about for a smaller one. Estimate: about a second on a large lattice. */
    private static final int PATIENCE = 2_000;

    public Contradiction {
        demands = List.copyOf(demands);
    }

    /**
     * Finds a contradiction: a single demand, or else a set from which nothing can be dropped, then a smaller one if
     * there is one, by trying all sets of two, three and so on as far as patience goes. Asks at most 2 n + 2,002 times.
     *
     * @param demands that are thought to contradict each other
     * @param possible whether a set of demands can be met together
     * @return empty if they can be met together after all
     */
    public static <D> Optional<Contradiction<D>> among(List<D> demands, Predicate<List<D>> possible) {
        if (possible.test(demands)) return Optional.empty();
        if (!possible.test(List.of())) return Optional.of(new Contradiction<>(List.of(), true));
        for (D one : demands)
            if (!possible.test(List.of(one))) return Optional.of(new Contradiction<>(List.of(one), true));
        List<Integer> core =
                new ArrayList<>(IntStream.range(0, demands.size()).boxed().toList());
        for (Integer demand : List.copyOf(core)) {
            List<Integer> less = new ArrayList<>(core);
            less.remove(demand);
            if (!possible.test(at(less, demands))) core = less;
        }
        return Optional.of(smaller(demands, possible, at(core, demands)));
    }

    private static <D> Contradiction<D> smaller(List<D> demands, Predicate<List<D>> possible, List<D> core) {
        int tried = 0;
        for (int size = 2; size < core.size(); size++) {
            int[] chosen = IntStream.range(0, size).toArray();
            do {
                if (++tried > PATIENCE) return new Contradiction<>(core, false);
                List<D> set = at(IntStream.of(chosen).boxed().toList(), demands);
                if (!possible.test(set)) return new Contradiction<>(set, true);
            } while (advance(chosen, demands.size()));
        }
        return new Contradiction<>(core, true);
    }

    private static <D> List<D> at(List<Integer> indices, List<D> demands) {
        return indices.stream().map(demands::get).toList();
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
}
