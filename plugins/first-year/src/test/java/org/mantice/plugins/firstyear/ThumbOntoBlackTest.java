package org.mantice.plugins.firstyear;

import static org.mantice.plugins.firstyear.Moments.finger;
import static org.mantice.plugins.firstyear.Moments.legato;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class ThumbOntoBlackTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new FirstYearPack();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new ThumbOntoBlack();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                legato(finger(64, 3), HandMove.THUMB_UNDER, finger(66, 1)),
                legato(finger(64, 3), HandMove.THUMB_UNDER, finger(65, 1)),
                legato(finger(68, 3), HandMove.LIFT, finger(66, 1)));
    }
}
