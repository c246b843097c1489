package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/**
 * The published model complete: twelve rules, all of weight one, one point being 1,000 millipoints, and the practical
 * spans as a ban. Rule 10 stands in two classes, since its parts look at one note and at two. It knows no hand place,
 * tempo or chord, and its spans are not scaled to a hand.
 *
 * <p>Not among the rules in force by default; a caller puts it in a book of its own.
 */
public final class Ergonomic1997Rules implements RuleProvider {
    @Override
    public String id() {
        return "mantice.ergonomic-1997";
    }

    @Override
    public String version() {
        return "1.0.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.rule.righthand.ergonomic1997.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(
                new PracticalSpan(),
                new Stretch(),
                new SmallSpan(),
                new LargeSpan(),
                new PositionChangeCount(),
                new PositionChangeSize(),
                new WeakFingers(),
                new ThreeFourFiveInARow(),
                new ThreeToFour(),
                new FourOnBlackBesideThree(),
                new ThumbOnBlack(),
                new ThumbOnBlackBesideWhite(),
                new FiveOnBlack(),
                new ThumbPass());
    }
}
