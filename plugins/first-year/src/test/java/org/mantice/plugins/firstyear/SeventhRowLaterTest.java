package org.mantice.plugins.firstyear;

import static org.mantice.plugins.firstyear.Moments.button;

import java.util.List;
import org.mantice.instrument.BassRow;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class SeventhRowLaterTest extends RuleContract<ButtonMoment> {
    @Override
    protected RuleProvider provider() {
        return new FirstYearPack();
    }

    @Override
    protected Rule<ButtonMoment> rule() {
        return new SeventhRowLater();
    }

    @Override
    protected List<ButtonMoment> steps() {
        return List.of(button(BassRow.SEVENTH), button(BassRow.DIMINISHED), button(BassRow.MAJOR));
    }
}
