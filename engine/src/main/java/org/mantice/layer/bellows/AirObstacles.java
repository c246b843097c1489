package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Performance;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.plan.VariationPlan;
import org.mantice.tune.Loudness;

/** Why there is no plan for the bellows, with numbers, and what would help. */
final class AirObstacles {
    private static final int MOST_STRETCHES = 3;
    private static final String STRETCH =
            "From {0} to {1} the bellows cannot turn, and the music takes {2} ml of {3} ml.";
    private static final int PIANISSIMO = 100 * Loudness.PP.ordinal();

    private final Ground ground;
    private final StrokePrices prices;

    AirObstacles(Ground ground, StrokePrices prices) {
        this.ground = ground;
        this.prices = prices;
    }

    /** The stretches without a place to turn that take the most air; those alone that take too much, if there are any. */
    List<Obstacle> find() {
        List<Integer> stretches = new ArrayList<>();
        for (int place = 0; place < ground.last(); place++) stretches.add(place);
        stretches.sort(Comparator.comparingInt(place -> -ground.air.between(place, place + 1)));
        List<Obstacle> obstacles = new ArrayList<>();
        for (int place : stretches)
            if (ground.air.between(place, place + 1) > ground.full() && obstacles.size() < MOST_STRETCHES)
                obstacles.add(Obstacle.of(sentence("stretch-without-turn", STRETCH, place), remedies(place)));
        if (!obstacles.isEmpty()) return obstacles;
        int longest = stretches.get(0);
        return List.of(Obstacle.of(
                sentence(
                        "no-strokes-fit",
                        "No sequence of strokes stays between closed and fully open. " + STRETCH,
                        longest),
                remedies(longest)));
    }

    private Sentence sentence(String code, String template, int place) {
        return Sentence.of(
                code,
                template,
                prices.words(place),
                prices.words(place + 1),
                ground.air.between(place, place + 1),
                ground.full());
    }

    private List<Sentence> remedies(int place) {
        List<Sentence> remedies = new ArrayList<>();
        long air = ground.air.between(place, place + 1);
        long tempo = ground.performance.settings().tempo().milliBeatsPerMinute();
        long needed = (air * tempo + ground.full() - 1) / ground.full();
        if (needed > tempo)
            remedies.add(Sentence.of(
                    "play-faster-than", "Play at {0} beats a minute or faster; now {1}.", beats(needed), beats(tempo)));
        int pass = ground.place(place).pass();
        fewestReeds().ifPresent(register -> {
            if (!register.id().equals(ground.variation.pass(pass).switchId()))
                remedies.add(Sentence.of(
                        "take-register",
                        "Take the register {0}: it takes {1} ml here.",
                        register.name(),
                        airWith(place, ground.performance, register(register), ground.leftHand)));
        });
        remedies.add(Sentence.of(
                "play-pianissimo",
                "Play pianissimo: it takes {0} ml here.",
                airWith(place, softly(), ground.variation, ground.leftHand)));
        if (!ground.leftHand.events().isEmpty())
            remedies.add(Sentence.of(
                    "leave-out-chord-buttons",
                    "Leave out the chord buttons: it takes {0} ml here.",
                    airWith(place, ground.performance, ground.variation, bassAlone())));
        return remedies;
    }

    private static String beats(long milli) {
        return milli / 1_000
                + (milli % 1_000 == 0 ? "" : "." + String.format(java.util.Locale.ROOT, "%03d", milli % 1_000));
    }

    private int airWith(int place, Performance performance, VariationPlan variation, LeftHandPlan leftHand) {
        long[] micros = ground.places.stream().mapToLong(Candidate::micros).toArray();
        return AirTable.of(performance, variation, leftHand, ground.accordion, micros)
                .between(place, place + 1);
    }

    private Optional<RegisterSwitch> fewestReeds() {
        return ground.accordion.treble().switches().stream()
                .filter(RegisterSwitch::works)
                .min(Comparator.comparingInt(
                        register -> AirTable.appetite(ground.bellows().appetites(), register)));
    }

    private VariationPlan register(RegisterSwitch register) {
        List<VariationPlan.PassDecision> passes = ground.variation.passes().stream()
                .map(pass -> new VariationPlan.PassDecision(pass.pass(), register.id(), pass.octave()))
                .toList();
        return new VariationPlan(passes, ground.variation.costByRule(), List.of());
    }

    private Performance softly() {
        Performance it = ground.performance;
        List<TrebleMoment> soft = it.treble().stream()
                .map(one -> new TrebleMoment(
                        one.index(),
                        one.measure(),
                        one.place(),
                        one.graceIndex(),
                        one.onset(),
                        one.duration(),
                        one.onsetMicros(),
                        one.releaseMicros(),
                        one.notes(),
                        one.articulations(),
                        one.slurredToNext(),
                        one.breathAfter(),
                        one.endsSlur(),
                        one.startsPhrase(),
                        one.punctuation(),
                        Math.min(PIANISSIMO, one.loudness())))
                .toList();
        return new Performance(
                it.tune(), it.settings(), it.passes(), it.measures(), soft, it.harmony(), it.bass(), it.endMicros());
    }

    private LeftHandPlan bassAlone() {
        List<LeftHandPlan.Event> events = ground.leftHand.events().stream()
                .map(one -> new LeftHandPlan.Event(
                        one.index(),
                        one.pass(),
                        one.measure(),
                        one.place(),
                        one.onset(),
                        one.onsetMicros(),
                        one.releaseMicros(),
                        one.buttons().stream()
                                .filter(button -> !button.row().isChord())
                                .toList(),
                        one.fingers(),
                        one.handColumn(),
                        one.sounding(),
                        one.missing(),
                        one.foreign(),
                        one.substitutions(),
                        one.jump(),
                        one.jumpMillis(),
                        one.availableMillis()))
                .toList();
        return new LeftHandPlan(events, ground.leftHand.costByRule(), List.of());
    }
}
