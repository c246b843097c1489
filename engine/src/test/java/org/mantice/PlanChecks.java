package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Concession;
import org.mantice.plan.Explanation;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Taste;
import org.mantice.rule.GiveWay;

/** What must be true of every plan, worked out from the tune as played and the plan alone, without the layers. */
final class PlanChecks {
    private final Planning planning;
    private final Performance performance;
    private final Accordion accordion;

    PlanChecks(Planning planning) {
        this.planning = planning;
        this.performance = planning.performance();
        this.accordion = planning.request().accordion();
    }

    void check(Plan plan, Taste taste) {
        fingers(plan);
        buttons(plan.leftHand());
        turnsInHeldNotes(plan.bellows());
        air(plan.bellows());
        comfortableOpening(plan.bellows());
        explanation(plan, taste);
        rescored(plan, taste);
    }

    /** Every note as played has a finger, none twice at once, and no two crossed. */
    private void fingers(Plan plan) {
        List<RightHandPlan.Event> events = plan.rightHand().events();
        assertThat(events).hasSameSizeAs(performance.treble());
        for (int i = 0; i < events.size(); i++) {
            TrebleMoment moment = performance.treble().get(i);
            RightHandPlan.Event event = events.get(i);
            int octave = plan.variation().pass(performance.passOf(moment)).octave();
            assertThat(event.keys())
                    .isEqualTo(moment.notes().stream()
                            .map(note -> note.midi() + 12 * octave)
                            .toList())
                    .allMatch(key -> key >= accordion.treble().lowestMidi()
                            && key <= accordion.treble().highestMidi());
            assertThat(event.place()).isEqualTo(moment.place());
            assertThat(event.fingers())
                    .as("fingers at %s", event)
                    .hasSameSizeAs(event.keys())
                    .allMatch(finger -> finger >= 1 && finger <= 5)
                    .isEqualTo(List.copyOf(new TreeSet<>(event.fingers())));
        }
    }

    /** Every button exists, has a finger, and no finger presses two. */
    private void buttons(LeftHandPlan plan) {
        for (LeftHandPlan.Event event : plan.events()) {
            assertThat(event.fingers()).hasSameSizeAs(event.buttons()).doesNotHaveDuplicates();
            assertThat(event.buttons()).allMatch(accordion.bass()::has);
        }
    }

    /**
     * O47: no change of direction strictly inside a sounding treble note, unless flagged; every flag is of a turn that
     * the player allowed. Common practice (checks of the bellows: do not turn in a held note).
     */
    private void turnsInHeldNotes(BellowsPlan bellows) {
        List<String> inside = new ArrayList<>();
        List<BellowsPlan.Stroke> strokes = bellows.strokes();
        for (int i = 1; i < strokes.size(); i++) {
            long turn = strokes.get(i).startMicros();
            if (sounds().stream().anyMatch(sound -> sound.from() < turn && turn < sound.to()))
                inside.add(
                        "pass " + strokes.get(i).pass() + " " + strokes.get(i).place());
        }
        List<String> flagged = new ArrayList<>();
        for (Concession concession : bellows.concessions())
            if (concession.what() == GiveWay.TURN_IN_HELD_NOTE)
                flagged.add("pass " + concession.pass() + " " + concession.place());
        Collections.sort(inside);
        Collections.sort(flagged);
        assertThat(inside).as("turns inside held notes").isEqualTo(flagged);
        if (!inside.isEmpty())
            assertThat(planning.request().player().mayTurnInHeldNote()).isTrue();
    }

    /** A key from its onset until it is let go, however many moments it is held through. */
    private record Sound(long from, long to) {}

    private List<Sound> kept = List.of();

    private List<Sound> sounds() {
        if (!kept.isEmpty()) return kept;
        List<Sound> sounds = new ArrayList<>();
        Map<Integer, Long> down = new HashMap<>();
        List<TrebleMoment> treble = performance.treble();
        for (int i = 0; i < treble.size(); i++) {
            TrebleMoment moment = treble.get(i);
            Map<Integer, Long> still = new HashMap<>();
            for (PlayedNote note : moment.notes()) {
                long from = note.held() ? down.getOrDefault(note.midi(), moment.onsetMicros()) : moment.onsetMicros();
                if (i + 1 < treble.size() && isHeldInto(treble.get(i + 1), note.midi())) still.put(note.midi(), from);
                else sounds.add(new Sound(from, moment.releaseMicros()));
            }
            down = still;
        }
        kept = List.copyOf(sounds);
        return kept;
    }

    private static boolean isHeldInto(TrebleMoment next, int midi) {
        return next.notes().stream().anyMatch(note -> note.held() && note.midi() == midi);
    }

    /** O48: openings stay within closed and full; signed air adds up to end minus start, on whole millilitres. */
    private void air(BellowsPlan bellows) {
        List<BellowsPlan.Stroke> strokes = bellows.strokes();
        int full = accordion.bellows().fullMillilitres();
        long signed = 0;
        for (int i = 0; i < strokes.size(); i++) {
            BellowsPlan.Stroke stroke = strokes.get(i);
            boolean out = stroke.direction() == BellowsPlan.Direction.OUT;
            assertThat(stroke.startMillilitres()).isBetween(0, full);
            assertThat(stroke.endMillilitres()).isBetween(0, full);
            assertThat(stroke.endMillilitres() >= stroke.startMillilitres() || !out)
                    .isTrue();
            assertThat(stroke.endMillilitres() <= stroke.startMillilitres() || out)
                    .isTrue();
            signed += out ? stroke.airMillilitres() : -stroke.airMillilitres();
            if (i > 0) {
                BellowsPlan.Stroke before = strokes.get(i - 1);
                assertThat(stroke.startMillilitres()).isEqualTo(before.endMillilitres());
                assertThat(stroke.startMicros()).isEqualTo(before.endMicros());
                assertThat(stroke.direction()).isEqualTo(before.direction().turned());
            }
        }
        BellowsPlan.Stroke last = strokes.get(strokes.size() - 1);
        assertThat(signed).isEqualTo(last.endMillilitres() - strokes.get(0).startMillilitres());
        assertThat(strokes.get(0).startMicros()).isZero();
        assertThat(last.endMicros()).isEqualTo(performance.endMicros());
    }

    /** Beyond the comfortable opening only with a concession, and no such concession without. */
    private void comfortableOpening(BellowsPlan bellows) {
        int comfortable = accordion.bellows().comfortableMillilitres();
        long wide = bellows.strokes().stream()
                .filter(stroke -> stroke.endMillilitres() > comfortable)
                .count();
        if (bellows.strokes().get(0).startMillilitres() > comfortable) wide++;
        assertThat(bellows.concessions().stream()
                        .filter(concession -> concession.what() == GiveWay.COMFORTABLE_OPENING)
                        .count())
                .isEqualTo(wide);
    }

    private void explanation(Plan plan, Taste taste) {
        Explanation tree = planning.explain(plan, taste);
        assertThat(tree.cost()).isEqualTo(plan.cost(taste));
        assertThat(tree.children()).hasSize(4);
        for (int layer = 0; layer < 4; layer++) {
            Explanation explained = tree.children().get(layer);
            assertThat(explained.cost()).isEqualTo(plan.layers().get(layer).cost(taste));
            for (Explanation rule : explained.children()) {
                long own = plan.layers().get(layer).costByRule().getOrDefault(rule.key(), 0L);
                assertThat(rule.cost()).as(rule.key()).isEqualTo(own * taste.perMille(rule.key()));
            }
        }
        assertSums(tree);
    }

    private static void assertSums(Explanation node) {
        if (node.children().isEmpty()) return;
        assertThat(node.children().stream().mapToLong(Explanation::cost).sum()).isEqualTo(node.cost());
        node.children().forEach(PlanChecks::assertSums);
    }

    private void rescored(Plan plan, Taste taste) {
        Plan again = planning.rescore(plan);
        assertThat(again).isEqualTo(plan);
        assertThat(again.cost(taste)).isEqualTo(plan.cost(taste));
    }
}
