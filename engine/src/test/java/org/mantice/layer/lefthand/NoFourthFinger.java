package org.mantice.layer.lefthand;

import java.util.Optional;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A ban for tests. */
final class NoFourthFinger implements Rule<ButtonMoment> {
    @Override
    public RuleInfo info() {
        return new RuleInfo("test.no-four", RuleSet.JUMP_COST, "invented", Optional.of(GiveWay.LEGATO));
    }

    @Override
    public Class<ButtonMoment> reach() {
        return ButtonMoment.class;
    }

    @Override
    public long cost(ButtonMoment moment) {
        return moment.fingers().contains(4) ? BAN : 0;
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        return cost(moment) == 0 ? Reasons.NOTHING : Reasons.of(BAN, Fact.of("banned"));
    }
}
