package org.mantice.rule.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Fingers that must leave the place where they rest when the fourth finger lies on its column. */
public final class Stretch implements Rule<ButtonMoment> {
    /** Estimate: millipoints for each hundredth of a column beyond rest, so 500 for a whole column. */
    static final int PER_HUNDREDTH = 5;
    /** Two columns, in hundredths: estimate. */
    static final int SPAN_AT_EASE = 200;
    /** For buttons held together further apart than that: estimate. */
    static final int PER_HUNDREDTH_OF_SPAN = 10;
    /** Where fingers 2 to 5 rest, in hundredths of a column above the fourth finger's place; estimates. */
    private static final int[][] REST = {{70, 240}, {30, 115}, {-50, 50}, {-110, -40}};

    private static final RuleInfo INFO = RuleInfo.of("left-hand.stretch", RuleSet.JUMP_COST, "estimate");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<ButtonMoment> reach() {
        return ButtonMoment.class;
    }

    @Override
    public long cost(ButtonMoment moment) {
        long cost = 0;
        for (int i = 0; i < moment.buttons().size(); i++) cost += (long) PER_HUNDREDTH * beyond(moment, i);
        return cost + (long) PER_HUNDREDTH_OF_SPAN * tooWide(moment);
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        List<Fact> facts = new ArrayList<>();
        long hundredths = 0;
        for (int i = 0; i < moment.buttons().size(); i++) {
            int beyond = beyond(moment, i);
            hundredths += beyond;
            if (beyond > 0)
                facts.add(Fact.of(INFO.id() + ".fact", moment.fingers().get(i), moment.name(i), beyond));
        }
        int wide = tooWide(moment);
        if (wide > 0) facts.add(Fact.of(INFO.id() + ".span", SPAN_AT_EASE + wide));
        return new Reasons((long) PER_HUNDREDTH * hundredths + (long) PER_HUNDREDTH_OF_SPAN * wide, facts);
    }

    /** By how many hundredths of a column the buttons held together lie further apart than a hand opens at ease. */
    private static int tooWide(ButtonMoment moment) {
        int lowest = Integer.MAX_VALUE;
        int highest = Integer.MIN_VALUE;
        for (int offset : moment.offsets()) {
            lowest = Math.min(lowest, offset);
            highest = Math.max(highest, offset);
        }
        return moment.offsets().isEmpty() ? 0 : Math.max(0, highest - lowest - SPAN_AT_EASE);
    }

    private static int beyond(ButtonMoment moment, int button) {
        int[] rest = REST[moment.fingers().get(button) - 2];
        int offset = moment.offsets().get(button);
        return Math.max(0, Math.max(rest[0] - offset, offset - rest[1]));
    }
}
