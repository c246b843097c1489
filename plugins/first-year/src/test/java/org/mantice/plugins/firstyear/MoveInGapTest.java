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

class MoveInGapTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new FirstYearPack();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new MoveInGap();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                legato(finger(60, 1), HandMove.STAY, finger(62, 2)),
                legato(finger(64, 3), HandMove.THUMB_UNDER, finger(65, 1)),
                legato(finger(67, 5), HandMove.REPEATED_NOTE, finger(67, 1)),
                withGap(finger(67, 5), HandMove.SHIFT_AT_GAP, finger(72, 5)));
    }
}
