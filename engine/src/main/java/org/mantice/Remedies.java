package org.mantice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Settings;
import org.mantice.plan.Concession;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.Sentence;
import org.mantice.player.Taste;
import org.mantice.rule.GiveWay;
import org.mantice.tune.Loudness;
import org.mantice.tune.Tempo;

/**
 * What would spare a plan the bans that gave way at the bellows: a lighter register, another tempo, softer playing. Each
 * is planned in earnest, and named only if fewer bans then give way.
 */
final class Remedies {
    /** Tempos tried, in per cent of the one asked for; the first that helps is named. */
    private static final int[] FASTER = {105, 110, 120, 135, 150, 175, 200};

    private final Planning planning;
    private final Plan plan;
    private final Taste taste;
    private final List<Lock> locks;

    Remedies(Planning planning, Plan plan, Taste taste, List<Lock> locks) {
        this.planning = planning;
        this.plan = plan;
        this.taste = taste;
        this.locks = locks;
    }

    /** Plain sentences; empty if nothing gave way at the bellows, or if nothing tried helps. */
    List<Sentence> sentences() {
        if (count(plan) == 0) return List.of();
        List<Sentence> sentences = new ArrayList<>();
        for (int pass : passes()) lighterRegister(pass).ifPresent(sentences::add);
        fasterTempo().ifPresent(sentences::add);
        softer().ifPresent(sentences::add);
        return List.copyOf(sentences);
    }

    private static long count(Plan plan) {
        return plan.bellows().concessions().size();
    }

    private SortedSet<Integer> passes() {
        SortedSet<Integer> passes = new TreeSet<>();
        for (Concession concession : plan.bellows().concessions())
            if (concession.what() == GiveWay.COMFORTABLE_OPENING) passes.add(concession.pass());
        return passes;
    }

    private Optional<Sentence> lighterRegister(int pass) {
        List<RegisterSwitch> switches = planning.request().accordion().treble().switches();
        int reeds = switches.stream()
                .filter(register ->
                        register.id().equals(plan.variation().pass(pass).switchId()))
                .mapToInt(RegisterSwitch::reedsPerKey)
                .findFirst()
                .orElse(0);
        for (int fewer = reeds - 1; fewer > 0; fewer--)
            for (RegisterSwitch register : switches) {
                if (!register.works() || register.reedsPerKey() != fewer) continue;
                List<Lock> locked = new ArrayList<>(locks);
                locked.add(new Lock.Register(OptionalInt.of(pass), register.id()));
                Optional<Plan> lighter = best(planning, locked);
                if (lighter.isPresent() && count(lighter.get()) < count(plan))
                    return Optional.of(Sentence.of(
                            "lighter-register",
                            "Take {0} in pass {1}: {2}.",
                            register.name(),
                            pass,
                            left(lighter.get())));
            }
        return Optional.empty();
    }

    private Optional<Sentence> fasterTempo() {
        Tempo asked = planning.request().settings().tempo();
        for (int percent : FASTER) {
            long milli = (long) asked.milliBeatsPerMinute() * percent / 100_000 * 1_000;
            if (milli <= asked.milliBeatsPerMinute() || milli > 1_000_000) continue;
            Settings faster = planning.request().settings().withTempo(new Tempo(asked.beat(), (int) milli));
            Optional<Plan> quick = best(with(faster), locks);
            if (quick.isPresent() && count(quick.get()) < count(plan))
                return Optional.of(Sentence.of(
                        "faster-tempo",
                        "Play at {0} beats a minute: {1}.",
                        BigDecimal.valueOf(milli, 3).stripTrailingZeros().toPlainString(),
                        left(quick.get())));
        }
        return Optional.empty();
    }

    private Optional<Sentence> softer() {
        Settings s = planning.request().settings();
        for (int step = s.loudness().ordinal() - 1;
                step >= 0 && step >= s.loudness().ordinal() - 2;
                step--) {
            Loudness loudness = Loudness.values()[step];
            Optional<Plan> quiet = best(with(s.withLoudness(loudness)), locks);
            if (quiet.isPresent() && count(quiet.get()) < count(plan))
                return Optional.of(Sentence.of(
                        "softer",
                        "Play {0} where nothing is written: {1}.",
                        loudness.name().toLowerCase(java.util.Locale.ROOT),
                        left(quiet.get())));
        }
        return Optional.empty();
    }

    private Planning with(Settings settings) {
        PlanRequest r = planning.request();
        return new Planning(
                new PlanRequest(r.tune(), r.accordion(), r.player(), settings, r.locks(), r.alternatives()),
                planning.rules());
    }

    private Optional<Plan> best(Planning changed, List<Lock> locked) {
        return changed.best(taste, locked) instanceof Alternatives.Found found
                ? Optional.of(found.best())
                : Optional.empty();
    }

    private static String left(Plan better) {
        return count(better) == 0 ? "nothing gives way" : count(better) + " places still give way";
    }
}
