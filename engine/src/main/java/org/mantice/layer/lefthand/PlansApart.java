package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.plan.LeftHandPlan;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Path;
import org.mantice.search.Restriction;
import org.mantice.search.ShortestPaths;

/** The best plan that differs enough from others. */
final class PlansApart {
    /** Highest price on agreement that is tried, in micropoints a decision. */
    private static final long HIGHEST_PRICE = 10_000_000L;

    private final LeftHandScore score;
    private final PlanWriter writer;
    private final Question question;
    private final Map<Integer, BitSet> allowed;
    private final int decisions;
    /** By plan, stage and state: whether the buttons agree. */
    private final List<boolean[][]> same = new ArrayList<>();

    PlansApart(
            LeftHandScore score,
            PlanWriter writer,
            Question question,
            Map<Integer, BitSet> allowed,
            List<LeftHandPlan> from,
            int decisions) {
        this.score = score;
        this.writer = writer;
        this.question = question;
        this.allowed = allowed;
        this.decisions = decisions;
        for (LeftHandPlan plan : from) same.add(agreement(writer.states(plan)));
    }

    private boolean[][] agreement(int[] states) {
        boolean[][] agrees = new boolean[states.length][];
        for (int stage = 0; stage < states.length; stage++) {
            StateSpace space = score.stages.get(stage).space();
            agrees[stage] = new boolean[space.size()];
            for (int state = 0; state < space.size(); state++)
                agrees[stage][state] = space.moments().get(state).buttons()
                        .equals(space.moments().get(states[stage]).buttons());
        }
        return agrees;
    }

    Optional<Outcome<LeftHandPlan>> find() {
        for (boolean[][] one : same) {
            Optional<int[]> states = exact(one);
            if (states.isEmpty()) return Optional.empty();
            if (isFarFromAll(states.get())) return found(states.get(), true);
        }
        return priced().flatMap(states -> found(states, false));
    }

    private Optional<Outcome<LeftHandPlan>> found(int[] states, boolean proven) {
        return Optional.of(new Outcome.Found<>(List.of(writer.plan(states)), proven));
    }

    private boolean isFarFromAll(int[] states) {
        return same.stream().allMatch(agrees -> differences(states, agrees) >= decisions);
    }

    private int differences(int[] states, boolean[][] agrees) {
        int count = 0;
        for (int stage = 0; stage < states.length; stage++)
            if (score.stages.get(stage).named() && !agrees[stage][states[stage]]) count++;
        return count;
    }

    /** The best plan far enough from one other, by a counter in the state. */
    private Optional<int[]> exact(boolean[][] agrees) {
        int width = decisions + 1;
        LayeredGraph graph =
                WeightedLattice.counting(score.stages, score.tables, question.taste(), agrees, decisions);
        Restriction restriction = Restriction.free();
        int lastStage = score.stages.size() - 1;
        for (int stage = 0; stage <= lastStage; stage++) {
            BitSet states = allowed.get(stage);
            if (stage > 0 && stage < lastStage && states == null) continue;
            BitSet counted = new BitSet();
            for (int state = 0; state < score.stages.get(stage).space().size(); state++)
                if (states == null || states.get(state)) setCounts(counted, state * width, stage, agrees[stage][state]);
            restriction = restriction.allowing(stage, counted);
        }
        return ShortestPaths.of(graph, restriction, question.cancelled()).best().map(path -> {
            int[] plain = path.toArray();
            for (int stage = 0; stage < plain.length; stage++) plain[stage] /= width;
            return plain;
        });
    }

    /** Counters with which a path may begin at the first stage, end at the last, or pass between. */
    private void setCounts(BitSet counted, int base, int stage, boolean agrees) {
        int least = 0;
        int most = decisions;
        if (stage == 0) {
            least = score.stages.get(0).named() && !agrees ? 1 : 0;
            most = least;
        }
        if (stage == score.stages.size() - 1) least = decisions;
        if (least <= most) counted.set(base + least, base + most + 1);
    }

    /** The cheapest price on agreement, by bisection, at which the best plan is far enough from all. */
    private Optional<int[]> priced() {
        long low = 0;
        long high = HIGHEST_PRICE;
        Optional<int[]> best = atPrice(high);
        if (best.isEmpty()) return best;
        while (high - low > 1_000) {
            long middle = (low + high) / 2;
            Optional<int[]> states = atPrice(middle);
            if (states.isPresent()) {
                best = states;
                high = middle;
            } else {
                low = middle;
            }
        }
        return best;
    }

    private Optional<int[]> atPrice(long price) {
        LayeredGraph graph = WeightedLattice.of(score.stages, score.tables, question.taste(), (stage, state) -> {
            long agreeing = 0;
            if (score.stages.get(stage).named())
                for (boolean[][] agrees : same) if (agrees[stage][state]) agreeing++;
            return price * agreeing;
        });
        Restriction restriction = Restriction.free();
        for (var entry : allowed.entrySet()) restriction = restriction.allowing(entry.getKey(), entry.getValue());
        return ShortestPaths.of(graph, restriction, question.cancelled())
                .best()
                .map(Path::toArray)
                .filter(this::isFarFromAll);
    }
}
