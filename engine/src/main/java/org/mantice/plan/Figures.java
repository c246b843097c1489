package org.mantice.plan;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.performance.Performance;
import org.mantice.performance.TrebleMoment;
import org.mantice.rule.HandMove;

/**
 * The figures of a plan that a player compares. Times are at the tempo of the performance.
 *
 * @param turns changes of direction of the bellows
 * @param turnsInPhrases turns under a slur or inside a held note
 * @param leastMarginMillilitres smallest stroke margin; 0 without strokes
 * @param planFactorPerMille see {@link BellowsPlan#planFactorPerMille}
 * @param longestStrokeMillis 0 without strokes
 * @param unevenStrokes strokes, but for the first and last, that last neither as long as the one before nor as the one
 *     after
 * @param positionChanges changes of hand place of the right hand
 * @param widestReachSemitones widest interval that two neighbouring fingers span at once or one after the other
 *     without a change of hand place
 * @param awkwardFingers thumb or little finger on a black key
 * @param largeJumps jumps of the left hand graded large
 * @param hardestJump the jump with the least time to spare; empty if the hand never moves
 * @param missingTones chord tones that do not sound, once for each run of presses that lack them
 * @param foreignTones tones that sound and are not in the chord, counted likewise
 * @param marksToWrite the few marks worth pencilling in: the first finger, a finger at every change of hand place, every
 *     turn, every switch
 * @param sounds different sounds over the passes: register and octave
 */
public record Figures(
        int turns,
        int turnsInPhrases,
        int leastMarginMillilitres,
        int planFactorPerMille,
        long longestStrokeMillis,
        int unevenStrokes,
        long positionChanges,
        int widestReachSemitones,
        int awkwardFingers,
        int largeJumps,
        Optional<LeftHandPlan.Event> hardestJump,
        int missingTones,
        int foreignTones,
        long marksToWrite,
        int sounds) {
    public static Figures of(Plan plan, Performance performance) {
        return new Figures(
                plan.bellows().turns(),
                turnsInPhrases(plan.bellows(), performance),
                plan.bellows().strokes().stream()
                        .mapToInt(BellowsPlan.Stroke::marginMillilitres)
                        .min()
                        .orElse(0),
                plan.bellows().planFactorPerMille(),
                plan.bellows().strokes().stream()
                        .mapToLong(stroke -> (stroke.endMicros() - stroke.startMicros()) / 1_000)
                        .max()
                        .orElse(0),
                unevenStrokes(plan.bellows().strokes()),
                plan.rightHand().positionChanges(),
                widestReach(plan.rightHand().events()),
                awkwardFingers(plan.rightHand().events()),
                (int) jumps(plan)
                        .filter(event -> event.jump() == LeftHandPlan.Jump.LARGE)
                        .count(),
                jumps(plan).min(Comparator.comparingLong(event -> event.availableMillis() - event.jumpMillis())),
                onceAChord(plan.leftHand(), LeftHandPlan.Event::missing),
                onceAChord(plan.leftHand(), LeftHandPlan.Event::foreign),
                marksToWrite(plan),
                sounds(plan.variation()));
    }

    /** A run of presses with the same tones counts once: it is one chord. */
    private static int onceAChord(LeftHandPlan plan, Function<LeftHandPlan.Event, SortedSet<Integer>> tones) {
        int count = 0;
        SortedSet<Integer> before = Collections.emptySortedSet();
        for (LeftHandPlan.Event event : plan.events()) {
            SortedSet<Integer> here = tones.apply(event);
            if (!here.equals(before)) count += here.size();
            before = here;
        }
        return count;
    }

    private static Stream<LeftHandPlan.Event> jumps(Plan plan) {
        return plan.leftHand().events().stream().filter(event -> event.jump() != LeftHandPlan.Jump.NONE);
    }

    private static int turnsInPhrases(BellowsPlan bellows, Performance performance) {
        int count = 0;
        int next = 0;
        List<TrebleMoment> treble = performance.treble();
        for (BellowsPlan.Stroke stroke : bellows.strokes()
                .subList(
                        Math.min(1, bellows.strokes().size()), bellows.strokes().size())) {
            while (next < treble.size() && treble.get(next).onset().isBefore(stroke.onset())) next++;
            if (next == 0) continue;
            TrebleMoment before = treble.get(next - 1);
            boolean held = stroke.onset().isBefore(before.onset().plus(before.duration()));
            if (held || before.slurredToNext()) count++;
        }
        return count;
    }

    private static int unevenStrokes(List<BellowsPlan.Stroke> strokes) {
        int count = 0;
        for (int i = 1; i + 1 < strokes.size(); i++) {
            boolean likeBefore =
                    strokes.get(i).length().equals(strokes.get(i - 1).length());
            boolean likeAfter =
                    strokes.get(i).length().equals(strokes.get(i + 1).length());
            if (!likeBefore && !likeAfter) count++;
        }
        return count;
    }

    private static int widestReach(List<RightHandPlan.Event> events) {
        int widest = 0;
        for (int i = 0; i < events.size(); i++) {
            List<Integer> keys = events.get(i).keys();
            widest = Math.max(widest, keys.get(keys.size() - 1) - keys.get(0));
            if (i > 0 && events.get(i).move() == HandMove.STAY) {
                List<Integer> before = events.get(i - 1).keys();
                widest = Math.max(widest, Math.abs(keys.get(keys.size() - 1) - before.get(0)));
                widest = Math.max(widest, Math.abs(before.get(before.size() - 1) - keys.get(0)));
            }
        }
        return widest;
    }

    private static int awkwardFingers(List<RightHandPlan.Event> events) {
        int count = 0;
        for (RightHandPlan.Event event : events)
            for (int note = 0; note < event.keys().size(); note++) {
                int finger = event.fingers().get(note);
                if ((finger == 1 || finger == 5)
                        && TrebleKeyboard.isBlack(event.keys().get(note))) count++;
            }
        return count;
    }

    private static long marksToWrite(Plan plan) {
        long marks = plan.rightHand().events().isEmpty() ? 0 : 1;
        marks += plan.rightHand().positionChanges() + plan.bellows().turns();
        String before = "";
        for (VariationPlan.PassDecision pass : plan.variation().passes()) {
            if (!pass.switchId().equals(before)) marks++;
            before = pass.switchId();
        }
        return marks;
    }

    private static int sounds(VariationPlan variation) {
        Set<String> sounds = new HashSet<>();
        for (VariationPlan.PassDecision pass : variation.passes()) sounds.add(pass.switchId() + " " + pass.octave());
        return sounds.size();
    }
}
