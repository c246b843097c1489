package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.mantice.rule.Fact;
import org.mantice.rule.GiveWay;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.RightHandStep;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** What the rules of the model share: points, and facts that name the keys and fingers they count for. */
abstract class PublishedRule<S extends RightHandStep> implements Rule<S> {
    private static final String SOURCE =
            "Parncutt, Sloboda, Clarke, Raekallio and Desain, \"An Ergonomic Model of Keyboard "
                    + "Fingering for Melodic Fragments\", Music Perception 14(4), 1997; from memory";

    /** Millipoints of one point of the model. */
    private static final long POINT = 1_000;

    private final RuleInfo info;
    private final Class<S> reach;

    PublishedRule(String name, Class<S> reach, Optional<GiveWay> banGivesWay) {
        this.info = new RuleInfo("ergonomic-1997." + name, RuleSet.FINGERING_SPAN, SOURCE, banGivesWay);
        this.reach = reach;
    }

    PublishedRule(String name, Class<S> reach) {
        this(name, reach, Optional.empty());
    }

    /** Points of the model, or {@link Rule#BAN}. */
    abstract long points(S step);

    /** Keys and fingers of a step. */
    abstract List<Tone> tones(S step);

    @Override
    public final RuleInfo info() {
        return info;
    }

    @Override
    public final Class<S> reach() {
        return reach;
    }

    @Override
    public final long cost(S step) {
        long points = points(step);
        return points == BAN ? BAN : points * POINT;
    }

    @Override
    public final Reasons explain(S step) {
        long cost = cost(step);
        if (cost == 0) return Reasons.NOTHING;
        Object[] keysAndFingers = tones(step).stream()
                .flatMap(tone -> Stream.of(HandPlaces.name(tone.key()), tone.finger()))
                .toArray();
        return Reasons.of(cost, Fact.of(info.id() + ".fact", keysAndFingers));
    }
}
