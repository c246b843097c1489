package org.mantice.rule.righthand.ergonomic1997;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Step;
import org.mantice.rule.righthand.Steps;
import static org.assertj.core.api.Assertions.assertThat;

/** Every rule of the pack keeps the published contract. */
class Ergonomic1997ContractTest {
    private abstract static class Contract<S extends Step> extends RuleContract<S> {
        @Override
        protected RuleProvider provider() {
            return new Ergonomic1997Rules();
        }
    }

    @Nested
    class OfPracticalSpan extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new PracticalSpan();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(60, 1, 76, 5),
                    Steps.pair(60, 2, 62, 2));
        }
    }

    @Nested
    class OfStretch extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new Stretch();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(60, 2, 65, 3));
        }
    }

    @Nested
    class OfSmallSpan extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new SmallSpan();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(64, 3, 65, 1));
        }
    }

    @Nested
    class OfLargeSpan extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new LargeSpan();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(60, 2, 64, 3));
        }
    }

    @Nested
    class OfPositionChangeCount extends Contract<FingerTriple> {
        @Override
        protected Rule<FingerTriple> rule() {
            return new PositionChangeCount();
        }

        @Override
        protected List<FingerTriple> steps() {
            return List.of(
                    Steps.triple(60, 1, 62, 2, 64, 3),
                    Steps.triple(64, 3, 65, 1, 67, 2),
                    Steps.triple(64, 3, 65, 4, 67, 3));
        }
    }

    @Nested
    class OfPositionChangeSize extends Contract<FingerTriple> {
        @Override
        protected Rule<FingerTriple> rule() {
            return new PositionChangeSize();
        }

        @Override
        protected List<FingerTriple> steps() {
            return List.of(
                    Steps.triple(60, 1, 62, 2, 64, 3),
                    Steps.triple(64, 3, 65, 1, 67, 2));
        }
    }

    @Nested
    class OfWeakFingers extends Contract<FingerMoment> {
        @Override
        protected Rule<FingerMoment> rule() {
            return new WeakFingers();
        }

        @Override
        protected List<FingerMoment> steps() {
            return List.of(
                    Steps.moment(28, 60, 1),
                    Steps.moment(28, 65, 4));
        }
    }

    @Nested
    class OfThreeFourFiveInARow extends Contract<FingerTriple> {
        @Override
        protected Rule<FingerTriple> rule() {
            return new ThreeFourFiveInARow();
        }

        @Override
        protected List<FingerTriple> steps() {
            return List.of(
                    Steps.triple(60, 1, 62, 2, 64, 3),
                    Steps.triple(64, 3, 67, 5, 65, 4));
        }
    }

    @Nested
    class OfThreeToFour extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new ThreeToFour();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(65, 4, 64, 3),
                    Steps.pair(64, 3, 65, 4));
        }
    }

    @Nested
    class OfFourOnBlackBesideThree extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new FourOnBlackBesideThree();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(64, 3, 65, 4),
                    Steps.pair(66, 4, 64, 3));
        }
    }

    @Nested
    class OfThumbOnBlack extends Contract<FingerMoment> {
        @Override
        protected Rule<FingerMoment> rule() {
            return new ThumbOnBlack();
        }

        @Override
        protected List<FingerMoment> steps() {
            return List.of(
                    Steps.moment(28, 60, 1),
                    Steps.moment(28, 61, 1));
        }
    }

    @Nested
    class OfThumbOnBlackBesideWhite extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new ThumbOnBlackBesideWhite();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(61, 1, 63, 2),
                    Steps.pair(61, 1, 62, 2));
        }
    }

    @Nested
    class OfFiveOnBlack extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new FiveOnBlack();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(61, 4, 63, 5),
                    Steps.pair(62, 4, 63, 5));
        }
    }

    @Nested
    class OfThumbPass extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new ThumbPass();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(64, 3, 65, 1),
                    Steps.pair(64, 3, 66, 1),
                    Steps.pair(66, 3, 67, 1));
        }
    }

    @Test
    void everyRuleOfThePackIsHere() {
        List<String> here = Arrays.stream(Ergonomic1997ContractTest.class.getDeclaredClasses())
                .map(Class::getSimpleName)
                .filter(name -> name.startsWith("Of"))
                .map(name -> name.substring(2))
                .toList();

        assertThat(new Ergonomic1997Rules().rules()).extracting(rule -> rule.getClass().getSimpleName()).containsExactlyInAnyOrderElementsOf(here);
    }
}
