package org.mantice.plugins.firstyear;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** What a pupil in the first year has not learnt yet costs more; the plan finds the way round where there is one. */
public final class FirstYearPack implements RuleProvider {
    @Override
    public String id() {
        return "first-year";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.plugins.firstyear.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(
                new OneSound(),
                new CounterbassLater(),
                new ShortStrokes(),
                new ThumbOntoBlack(),
                new FourthFromFifth(),
                new MoveInGap());
    }
}
