package org.mantice.plugins.firstyear;

import static org.mantice.plugins.firstyear.Moments.finger;
import static org.mantice.plugins.firstyear.Moments.legato;
import static org.mantice.plugins.firstyear.Moments.withGap;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class FourthFromFifthTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new FirstYearPack();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new FourthFromFifth();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                legato(finger(65, 4), HandMove.STAY, finger(67, 5)),
                legato(finger(65, 4), HandMove.STRETCH, finger(68, 5)),
                legato(finger(69, 5), HandMove.STRETCH, finger(65, 4)),
                legato(finger(65, 3), HandMove.STRETCH, finger(69, 5)),
                withGap(finger(65, 4), HandMove.SHIFT_AT_GAP, finger(69, 5)));
    }
}
