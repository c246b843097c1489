package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/**
 * Use little bellows: keep a small reserve before closed, prefer the nearer half, begin nearly closed. Wide open is
 * tiring and less exact.
 */
public final class LittleBellows implements Rule<OpeningCell> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.opening", RuleSet.BELLOWS_POLICY, "common practice, no source; the numbers are estimates");
    /** A tenth of the comfortable air is kept before closed: what a stroke may take more than reckoned. */
    private static final int RESERVE = OpeningCell.COMFORTABLE / 10;

    private static final int HALF = OpeningCell.COMFORTABLE / 2;
    /** Below a twentieth the bellows are as good as closed: the next note may not sound. */
    private static final int NEARLY_CLOSED = OpeningCell.COMFORTABLE / 20;
    /** For each fortieth that is missing of the reserve. */
    private static final long PER_CELL_OF_RESERVE = 150;
    /** On top, for each fortieth that is missing of the twentieth. */
    private static final long PER_CELL_NEARLY_CLOSED = 450;
    /** For each fortieth beyond the half. */
    private static final long PER_CELL_BEYOND_HALF = 40;
    /** For each fortieth by which one begins wider than the reserve. */
    private static final long PER_CELL_AT_START = 20;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<OpeningCell> reach() {
        return OpeningCell.class;
    }

    @Override
    public long cost(OpeningCell opening) {
        int cell = opening.cell();
        return switch (opening.moment()) {
            case START -> PER_CELL_AT_START * Math.max(0, cell - RESERVE);
            case TURN_IN -> PER_CELL_BEYOND_HALF * Math.max(0, cell - HALF);
            case TURN_OUT, END ->
                PER_CELL_OF_RESERVE * Math.max(0, RESERVE - cell)
                        + PER_CELL_NEARLY_CLOSED * Math.max(0, NEARLY_CLOSED - cell);
        };
    }

    @Override
    public Reasons explain(OpeningCell opening) {
        long cost = cost(opening);
        if (cost == 0) return Reasons.NOTHING;
        String key =
                switch (opening.moment()) {
                    case START -> "bellows.opening.start";
                    case TURN_IN -> "bellows.opening.wide";
                    case TURN_OUT, END -> "bellows.opening.reserve";
                };
        return Reasons.of(cost, Fact.of(key, opening.percent()));
    }
}
