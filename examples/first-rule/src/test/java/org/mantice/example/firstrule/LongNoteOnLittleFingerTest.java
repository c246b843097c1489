package org.mantice.example.firstrule;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class LongNoteOnLittleFingerTest extends RuleContract<FingerMoment> {
    @Override
    protected RuleProvider provider() {
        return new FirstRulePack();
    }

    @Override
    protected Rule<FingerMoment> rule() {
        return new LongNoteOnLittleFinger();
    }

    @Override
    protected List<FingerMoment> steps() {
        return List.of(
                FingerMoment.struck(List.of(67), List.of(5), 28, 899, 80),
                FingerMoment.struck(List.of(67), List.of(5), 28, 900, 80),
                FingerMoment.struck(List.of(67), List.of(4), 28, 2_000, 80),
                FingerMoment.struck(List.of(64, 67), List.of(3, 5), 28, 2_000, 80));
    }
}
