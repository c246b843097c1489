package org.mantice.plugins.firstyear;

import java.util.List;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The fourth and fifth finger do not stretch apart in legato yet: a whole tone is enough. */
public final class FourthFromFifth implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "first-year.fourth-from-fifth", RuleSet.FINGERING_SPAN, "common practice, no source; sizes estimate");
    private static final int FREE_SEMITONES = 2;
    private static final long PER_SEMITONE = UNIT / 2;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerPair> reach() {
        return FingerPair.class;
    }

    @Override
    public long cost(FingerPair pair) {
        return PER_SEMITONE * beyond(pair);
    }

    @Override
    public Reasons explain(FingerPair pair) {
        int beyond = beyond(pair);
        if (beyond == 0) return Reasons.NOTHING;
        return Reasons.of(PER_SEMITONE * beyond, Fact.of("first-year.fourth-from-fifth.fact", FREE_SEMITONES + beyond));
    }

    private static int beyond(FingerPair pair) {
        if (pair.gapMillis() > 0) return 0;
        List<FingerPair.Voice> voices = pair.voices();
        FingerPair.Voice top = voices.get(voices.size() - 1);
        return top.lowerFinger() == 4 && top.higherFinger() == 5 ? Math.max(0, top.span() - FREE_SEMITONES) : 0;
    }
}
