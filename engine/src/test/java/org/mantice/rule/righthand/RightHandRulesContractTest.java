package org.mantice.rule.righthand;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Step;
import static org.assertj.core.api.Assertions.assertThat;

/** Every rule of the pack keeps the published contract. */
class RightHandRulesContractTest {
    private abstract static class Contract<S extends Step> extends RuleContract<S> {
        @Override
        protected RuleProvider provider() {
            return new RightHandRules();
        }
    }

    @Nested
    class OfSpanOfFingers extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new SpanOfFingers();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(60, 2, 67, 3),
                    Steps.pair(60, 1, 62, 5),
                    Steps.pair(64, 3, 65, 1));
        }
    }

    @Nested
    class OfSpanInChord extends Contract<FingerMoment> {
        @Override
        protected Rule<FingerMoment> rule() {
            return new SpanInChord();
        }

        @Override
        protected List<FingerMoment> steps() {
            return List.of(
                    Steps.moment(28, 60, 1, 64, 3, 67, 5),
                    Steps.moment(28, 60, 1, 64, 2, 72, 3),
                    Steps.moment(28, 60, 3, 72, 4));
        }
    }

    @Nested
    class OfReachFromPlace extends Contract<FingerMoment> {
        @Override
        protected Rule<FingerMoment> rule() {
            return new ReachFromPlace();
        }

        @Override
        protected List<FingerMoment> steps() {
            return List.of(
                    Steps.moment(28, 60, 1),
                    Steps.moment(28, 69, 5),
                    Steps.moment(28, 66, 4),
                    Steps.moment(29, 60, 1, 64, 2, 72, 5));
        }
    }

    @Nested
    class OfChangeOfPlace extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new ChangeOfPlace();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(HandMove.THUMB_UNDER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                    Steps.pair(HandMove.FINGER_OVER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                    Steps.pair(HandMove.STRETCH, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                    Steps.pair(HandMove.SHIFT_AT_GAP, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 300, false),
                    Steps.pair(HandMove.REPEATED_NOTE, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                    Steps.pair(HandMove.GLIDE, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                    Steps.pair(HandMove.LIFT, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false));
        }
    }

    @Nested
    class OfThumbPassing extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new ThumbPassing();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(HandMove.THUMB_UNDER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1)),
                    Steps.pair(HandMove.FINGER_OVER, Steps.moment(31, 66, 1), Steps.moment(28, 62, 4)));
        }
    }

    @Nested
    class OfThumbAndFiveOnBlack extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new ThumbAndFiveOnBlack();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(60, 1, 62, 2),
                    Steps.pair(61, 1, 62, 2),
                    Steps.pair(61, 1, 63, 2),
                    Steps.pair(65, 4, 66, 5),
                    Steps.pair(66, 4, 68, 5));
        }
    }

    @Nested
    class OfWeakFinger extends Contract<FingerMoment> {
        @Override
        protected Rule<FingerMoment> rule() {
            return new WeakFinger();
        }

        @Override
        protected List<FingerMoment> steps() {
            return List.of(
                    Steps.moment(28, 60, 1),
                    Steps.moment(28, 65, 4),
                    Steps.moment(28, 60, 1, 67, 5));
        }
    }

    @Nested
    class OfThreeFourFive extends Contract<FingerTriple> {
        @Override
        protected Rule<FingerTriple> rule() {
            return new ThreeFourFive();
        }

        @Override
        protected List<FingerTriple> steps() {
            return List.of(
                    Steps.triple(60, 1, 62, 2, 64, 3),
                    Steps.triple(64, 3, 65, 4, 67, 5),
                    Steps.triple(64, 3, 67, 5, 65, 4));
        }
    }

    @Nested
    class OfFourOnBlack extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new FourOnBlack();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(64, 3, 65, 4),
                    Steps.pair(64, 3, 66, 4),
                    Steps.pair(70, 4, 69, 3));
        }
    }

    @Nested
    class OfFingersOnOneKey extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new FingersOnOneKey();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(64, 3, 64, 3),
                    Steps.pair(64, 3, 64, 2),
                    Steps.pair(HandMove.STAY, Steps.moment(28, 64, 3), Steps.moment(28, 64, 3), 100, 0, false),
                    Steps.pair(HandMove.REPEATED_NOTE, Steps.moment(28, 64, 2), Steps.moment(28, 64, 3), 100, 0, false));
        }
    }

    @Nested
    class OfSlideOrLift extends Contract<FingerPair> {
        @Override
        protected Rule<FingerPair> rule() {
            return new SlideOrLift();
        }

        @Override
        protected List<FingerPair> steps() {
            return List.of(
                    Steps.pair(64, 3, 65, 4),
                    Steps.pair(HandMove.GLIDE, Steps.moment(28, 66, 3), Steps.moment(28, 67, 3)),
                    Steps.pair(HandMove.GLIDE, Steps.moment(28, 65, 3), Steps.moment(28, 67, 3)),
                    Steps.pair(HandMove.LIFT, Steps.moment(28, 60, 1), Steps.moment(42, 84, 1)),
                    Steps.pair(HandMove.LIFT, Steps.moment(28, 60, 1), Steps.moment(42, 84, 1), 300, 0, true),
                    Steps.pair(HandMove.SHIFT_AT_GAP, Steps.moment(28, 60, 1), Steps.moment(30, 64, 1), 300, 100, false));
        }
    }

    @Nested
    class OfRestlessHand extends Contract<FingerTriple> {
        @Override
        protected Rule<FingerTriple> rule() {
            return new RestlessHand();
        }

        @Override
        protected List<FingerTriple> steps() {
            return List.of(
                    Steps.triple(60, 1, 62, 2, 64, 3),
                    Steps.triple(HandMove.THUMB_UNDER, HandMove.FINGER_OVER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), Steps.moment(28, 64, 3)),
                    Steps.triple(HandMove.THUMB_UNDER, HandMove.STRETCH, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), Steps.moment(33, 69, 2)));
        }
    }

    @Nested
    class OfAsPrinted extends Contract<FingerMoment> {
        @Override
        protected Rule<FingerMoment> rule() {
            return new AsPrinted();
        }

        @Override
        protected List<FingerMoment> steps() {
            return List.of(
                    Steps.moment(28, 60, 1),
                    new FingerMoment(List.of(60), List.of(1), List.of(false), List.of(2), 28, 300, 95),
                    new FingerMoment(List.of(60), List.of(2), List.of(false), List.of(2), 27, 300, 95));
        }
    }

    @Test
    void everyRuleOfThePackIsHere() {
        List<String> here = Arrays.stream(RightHandRulesContractTest.class.getDeclaredClasses())
                .map(Class::getSimpleName)
                .filter(name -> name.startsWith("Of"))
                .map(name -> name.substring(2))
                .toList();

        assertThat(new RightHandRules().rules()).extracting(rule -> rule.getClass().getSimpleName()).containsExactlyInAnyOrderElementsOf(here);
    }
}
