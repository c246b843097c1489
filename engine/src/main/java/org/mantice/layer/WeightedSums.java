package org.mantice.layer;

import java.util.Arrays;
import java.util.List;
import org.mantice.player.Taste;
import org.mantice.rule.Rule;
import org.mantice.search.ConcessionScale;

/** Kept costs of all rules for one thing after the other, weighted and added up. Arrays are not copied. */
public final class WeightedSums {
    private static final long[] NOTHING = {};

    private final long[] costs;
    private final long[] concessions;

    private WeightedSums(long[] costs, long[] concessions) {
        this.costs = costs;
        this.concessions = concessions;
    }

    /**
     * @param table what each rule charges for each thing, as {@link Tables} keeps it
     * @param things how many there are
     * @param taste a rule of weight 0 neither charges nor bans
     */
    public static WeightedSums of(
            List<? extends Rule<?>> rules, int[][] table, int things, Taste taste, GiveWayLevels levels) {
        long[] costs = new long[things];
        long[] concessions = NOTHING;
        for (int rule = 0; rule < table.length; rule++) {
            long weight = taste.perMille(rules.get(rule).info().id());
            if (weight == 0) continue;
            for (int thing = 0; thing < things; thing++) {
                int cost = table[rule][thing];
                if (cost != Tables.BANNED) {
                    costs[thing] = Math.addExact(costs[thing], weight * cost);
                } else {
                    if (concessions.length == 0) concessions = new long[things];
                    concessions[thing] = levels.scale().add(concessions[thing], levels.one(rules.get(rule)));
                }
            }
        }
        return new WeightedSums(costs, concessions);
    }

    /** These, with those of another added: of each thing here, the one there that belongs to it. */
    public WeightedSums plus(WeightedSums other, int[] belongs, ConcessionScale scale) {
        long[] sums = new long[costs.length];
        Arrays.setAll(sums, thing -> Math.addExact(costs[thing], other.costs[belongs[thing]]));
        if (!concedes() && !other.concedes()) return new WeightedSums(sums, NOTHING);
        long[] given = new long[costs.length];
        Arrays.setAll(given, thing -> scale.add(concession(thing), other.concession(belongs[thing])));
        return new WeightedSums(sums, given);
    }

    /** Each thing's sums repeated wherever it belongs. */
    public WeightedSums spread(List<Integer> belongs) {
        long[] sums = new long[belongs.size()];
        Arrays.setAll(sums, at -> costs[belongs.get(at)]);
        if (!concedes()) return new WeightedSums(sums, NOTHING);
        long[] given = new long[belongs.size()];
        Arrays.setAll(given, at -> concessions[belongs.get(at)]);
        return new WeightedSums(sums, given);
    }

    /** Micropoints. */
    public long[] costs() {
        return costs;
    }

    /** Whether any ban gives way. */
    public boolean concedes() {
        return concessions.length > 0;
    }

    /** Packed; empty if none give way. */
    public long[] concessions() {
        return concessions;
    }

    /** Of one thing, packed. */
    public long concession(int thing) {
        return concedes() ? concessions[thing] : ConcessionScale.NONE;
    }
}
