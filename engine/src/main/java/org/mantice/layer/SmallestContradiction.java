package org.mantice.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Finds which of many demands contradict each other. Sets of one and two are tried outright, so a contradiction of that
 * size found is a smallest one; beyond, demands are dropped one by one as long as the rest still contradicts, which
 * leaves a set from which none can be spared. Needs at most n²/2 + n questions.
 */
public final class SmallestContradiction {
    private SmallestContradiction() {}

    /**
     * @param demands that cannot be met together
     * @param possible whether a set of demands can be met together; the empty set can
     * @return the contradicting demands in their given order; empty if all can be met after all
     */
    public static <D> List<D> among(List<D> demands, Predicate<List<D>> possible) {
        if (possible.test(demands)) return List.of();
        for (D one : demands) if (!possible.test(List.of(one))) return List.of(one);
        List<D> core = new ArrayList<>(demands);
        for (D candidate : demands) {
            List<D> without = new ArrayList<>(core);
            without.remove(candidate);
            if (!possible.test(without)) core = without;
        }
        if (core.size() > 2)
            for (int i = 0; i < demands.size(); i++)
                for (int j = i + 1; j < demands.size(); j++) {
                    List<D> pair = List.of(demands.get(i), demands.get(j));
                    if (!possible.test(pair)) return pair;
                }
        return List.copyOf(core);
    }
}
