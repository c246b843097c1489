package org.mantice.plan;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.mantice.player.Taste;

/** What one layer decided. */
public sealed interface LayerPlan permits VariationPlan, LeftHandPlan, BellowsPlan, RightHandPlan {
    /** Unweighted millipoints by rule id; rules that charge nothing are named too, with 0. */
    SortedMap<String, Long> costByRule();

    /** Bans that had to give way. */
    List<Concession> concessions();

    /** The decisions with a name, as played. */
    List<Decision> decisions();

    /** Micropoints: each rule's millipoints times its weight in per mille. */
    default long cost(Taste taste) {
        long total = 0;
        for (Map.Entry<String, Long> rule : costByRule().entrySet())
            total = Math.addExact(total, Math.multiplyExact(rule.getValue(), (long) taste.perMille(rule.getKey())));
        return total;
    }
}
