package org.mantice.rule.bellows;

import java.util.Optional;
import org.mantice.rule.Fact;
import org.mantice.rule.GiveWay;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The bellows stay within the comfortable opening while another way is left; the full opening is physics. */
public final class ComfortableOpening implements Rule<OpeningCell> {
    private static final RuleInfo INFO = new RuleInfo(
            "bellows.comfortable",
            RuleSet.BELLOWS_POLICY,
            "common practice, no source",
            Optional.of(GiveWay.COMFORTABLE_OPENING));

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
        return opening.cell() > OpeningCell.COMFORTABLE ? BAN : 0;
    }

    @Override
    public Reasons explain(OpeningCell opening) {
        return cost(opening) == 0
                ? Reasons.NOTHING
                : Reasons.of(BAN, Fact.of("bellows.comfortable.ban", opening.percent()));
    }
}
