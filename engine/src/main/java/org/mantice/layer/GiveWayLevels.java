package org.mantice.layer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Rule;
import org.mantice.search.ConcessionScale;

/** Which ban weighs how much beside the cost: the kinds that the rules in force name, the worst first. */
public final class GiveWayLevels {
    private static final int MOST_LEVELS = 5;

    private final List<GiveWay> worstFirst;

    public GiveWayLevels(Iterable<? extends Rule<?>> rules) {
        TreeSet<GiveWay> kinds = new TreeSet<>(Collections.reverseOrder());
        for (Rule<?> rule : rules) rule.info().banGivesWay().ifPresent(kinds::add);
        this.worstFirst = new ArrayList<>(kinds);
    }

    /** Beyond five kinds the mildest share a level. */
    public ConcessionScale scale() {
        return new ConcessionScale(Math.max(1, Math.min(MOST_LEVELS, worstFirst.size())));
    }

    /** One ban of a rule, packed. */
    public long one(Rule<?> rule) {
        int level = worstFirst.indexOf(rule.info().banGivesWay().orElseThrow());
        return scale().one(Math.min(level, MOST_LEVELS - 1));
    }
}
