package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.layer.SmallestContradiction;
import org.mantice.performance.Performance;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Path;
import org.mantice.search.ShortestPaths;
import org.mantice.tune.WrittenPlace;

/**
 * Fingers and hand places for the treble, given the octave of each pass. The best plans are exact over the stated
 * choices: fingers ascend with the keys of a chord; a hand that moves lands where its fingers rest, and one that stays
 * reaches a stated way; a key held on keeps its finger or pays for a change. Fingers printed in the source are wishes
 * with a price; locks hold.
 *
 * <p>Made once for a piece, which calls the rules; safe for use by several threads.
 */
public final class RightHandLayer {
    private record Weighed(Taste taste, LayeredGraph graph) {}

    private final HandMusic music;
    private final HandCharges charges;
    private final List<Obstacle> obstacles;
    /** Empty where there are obstacles. */
    private final Optional<HandLattice> lattice;
    private final AtomicReference<Optional<Weighed>> lastWeighed = new AtomicReference<>(Optional.empty());

    /**
     * Calls every rule once for every distinct context.
     *
     * @param variation gives the octave of each pass
     * @throws org.mantice.layer.RuleFailureException if a rule throws or gives a number that is not allowed
     */
    public RightHandLayer(
            Performance performance, VariationPlan variation, Accordion accordion, Player player, RuleBook book) {
        this.music = new HandMusic(performance, variation);
        this.charges = new HandCharges(music, player.handSpanTenths(), book);
        this.obstacles = Compass.obstacles(music, accordion.treble());
        this.lattice = obstacles.isEmpty()
                ? Optional.of(new HandLattice(music, player.handSpanTenths(), book))
                : Optional.empty();
    }


    public RuleSet ruleSet() {
        return RuleSet.FINGERING_SPAN;
    }


    public Outcome<RightHandPlan> best(Question question) {
        if (lattice.isEmpty()) return new Outcome.Impossible<>(obstacles);
        List<Lock.Finger> locks = FingerLocks.of(question.locks());
        Optional<Obstacle> lost = fingerLocks().lost(locks);
        if (lost.isPresent()) return new Outcome.Impossible<>(List.of(lost.get()));
        ShortestPaths paths = paths(question, locks);
        if (!paths.feasible()) return contradiction(question, locks);
        List<RightHandPlan> plans = new ArrayList<>();
        for (Path path : paths.best(question.count())) plans.add(charges.plan(postures(path)));
        return new Outcome.Found<>(plans, true);
    }


    public Explanation explain(RightHandPlan plan, Taste taste) {
        return charges.explain(postures(plan), taste);
    }


    public RightHandPlan rescore(RightHandPlan plan) {
        return charges.plan(postures(plan));
    }

    private Outcome<RightHandPlan> contradiction(Question question, List<Lock.Finger> locks) {
        List<Lock.Finger> core =
                SmallestContradiction.among(locks, some -> paths(question, some).feasible());
        String words = String.join(" and ", core.stream().map(Lock::words).toList());
        return new Outcome.Impossible<>(List.of(new Obstacle(
                "locks-contradict",
                core.size() == 1
                        ? "This lock cannot be met by any hand: " + words + "."
                        : "These locks contradict each other: " + words + ".",
                List.of("Free one of them."))));
    }

    private FingerLocks fingerLocks() {
        return new FingerLocks(music, lattice.orElseThrow());
    }

    private ShortestPaths paths(Question question, List<Lock.Finger> locks) {
        return ShortestPaths.of(graph(question.taste()), fingerLocks().restriction(locks), question.cancelled());
    }

    /** The lattice under a taste; the last one is kept, since questions about one taste come in rows. */
    private LayeredGraph graph(Taste taste) {
        Optional<Weighed> last = lastWeighed.get();
        if (last.isPresent() && last.get().taste().equals(taste)) return last.get().graph();
        LayeredGraph graph = lattice.orElseThrow().graph(taste);
        lastWeighed.set(Optional.of(new Weighed(taste, graph)));
        return graph;
    }

    private List<Posture> postures(Path path) {
        List<Posture> postures = new ArrayList<>();
        for (int stage = 0; stage < music.size(); stage++)
            postures.add(lattice.orElseThrow().posture(stage, path.state(stage)));
        return postures;
    }

    private List<Posture> postures(RightHandPlan plan) {
        if (plan.events().size() != music.size())
            throw new IllegalArgumentException(
                    "plan has " + plan.events().size() + " events; allowed: one for each of " + music.size() + " moments");
        List<Posture> postures = new ArrayList<>();
        for (RightHandPlan.Event event : plan.events()) {
            List<Integer> keys = music.moment(event.moment()).keys();
            if (!event.keys().equals(keys))
                throw new IllegalArgumentException(
                        "keys of event " + event.moment() + " are " + event.keys() + "; allowed: " + keys);
            postures.add(new Posture(event.fingers(), event.handPlace(), true));
        }
        return postures;
    }
}
