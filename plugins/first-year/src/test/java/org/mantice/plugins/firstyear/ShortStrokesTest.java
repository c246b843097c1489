package org.mantice.plugins.firstyear;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Stroke;

class ShortStrokesTest extends RuleContract<Stroke> {
    @Override
    protected RuleProvider provider() {
        return new FirstYearPack();
    }

    @Override
    protected Rule<Stroke> rule() {
        return new ShortStrokes();
    }

    @Override
    protected List<Stroke> steps() {
        return List.of(
                new Stroke(12, 6, false, false), new Stroke(13, 6, false, false), new Stroke(24, 6, true, false));
    }
}
