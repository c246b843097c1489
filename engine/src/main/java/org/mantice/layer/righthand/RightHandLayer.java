package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.layer.GraphByTaste;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.Sentence;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;
import org.mantice.search.BestThrough;
import org.mantice.search.Contradiction;
import org.mantice.search.DifferentPath;
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
public final class RightHandLayer implements Layer<RightHandPlan> {
    private final HandMusic music;
    private final HandCharges charges;
    private final List<Obstacle> obstacles;
    /** Empty where there are obstacles. */
    private final Optional<HandLattice> lattice;

    private final GraphByTaste graphs;

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
        this.graphs = new GraphByTaste(taste -> lattice.orElseThrow().graph(taste));
    }

    @Override
    public RuleSet ruleSet() {
        return RuleSet.FINGERING_SPAN;
    }

    @Override
    public Outcome<RightHandPlan> best(Question question) {
        if (lattice.isEmpty()) return new Outcome.Impossible<>(obstacles);
        List<Lock.Finger> locks = FingerLocks.of(question.locks());
        Optional<Obstacle> lost = fingerLocks().lost(locks);
        if (lost.isPresent()) return impossible(lost.get());
        ShortestPaths paths = paths(question, locks);
        if (!paths.feasible()) return contradiction(question.taste(), locks);
        List<RightHandPlan> plans = new ArrayList<>();
        for (Path path : paths.best(question.count())) plans.add(charges.kept(lattice.orElseThrow(), path));
        return new Outcome.Found<>(plans, true);
    }

    /**
     * Further plans, one after the other, each apart from all given and found before it. A difference is a moment with
     * another finger, or a change of hand place in one plan that the other does not make there.
     */
    @Override
    public Outcome<RightHandPlan> apart(Question question, List<RightHandPlan> from, int decisions) {
        if (lattice.isEmpty()) return new Outcome.Impossible<>(obstacles);
        List<Lock.Finger> locks = FingerLocks.of(question.locks());
        ShortestPaths paths = paths(question, locks);
        if (!paths.feasible()) return best(question);
        List<DifferentPath.Requirement> requirements = new ArrayList<>();
        for (RightHandPlan plan : from) requirements.add(apartFrom(plan, decisions));
        List<RightHandPlan> found = new ArrayList<>();
        boolean proven = true;
        while (found.size() < question.count()) {
            DifferentPath.Answer answer =
                    DifferentPath.best(paths, requirements, LayeredGraph.LARGEST_TOTAL, question.cancelled());
            proven &= answer.proven();
            if (answer.path().isEmpty()) break;
            RightHandPlan plan =
                    charges.kept(lattice.orElseThrow(), answer.path().get());
            found.add(plan);
            requirements.add(apartFrom(plan, decisions));
        }
        return found.isEmpty()
                ? impossible(new Obstacle(
                        "no-other-plan",
                        Sentence.of(
                                "no-other-fingering",
                                "No other fingering differs in {0} decisions or more.",
                                decisions),
                        List.of(Sentence.of("free-a-lock", "Free a lock."))))
                : new Outcome.Found<>(found, proven);
    }

    private DifferentPath.Requirement apartFrom(RightHandPlan plan, int decisions) {
        return new DifferentPath.Requirement(new HandDifference(lattice.orElseThrow(), plan), decisions);
    }

    /** Where the place is played several times in the pass, each choice is meant for every time. */
    @Override
    public List<Choice> choicesAt(Question question, int pass, WrittenPlace place) {
        if (lattice.isEmpty()) return List.of();
        ShortestPaths paths = paths(question, FingerLocks.of(question.locks()));
        Optional<Path> best = paths.best();
        if (best.isEmpty()) return List.of();
        HandChoices choices = new HandChoices(lattice.orElseThrow(), best.get(), pass, place);
        List<Integer> stages = fingerLocks().stages(OptionalInt.of(pass), place);
        if (stages.size() == 1) choices.add(stages.get(0), BestThrough.of(paths, question.cancelled()));
        else choices.add(stages, paths, question.cancelled());
        return choices.bestFirst();
    }

    @Override
    public Explanation explain(RightHandPlan plan, Taste taste) {
        return charges.explain(postures(plan), taste);
    }

    @Override
    public RightHandPlan rescore(RightHandPlan plan) {
        return charges.priced(postures(plan));
    }

    private Outcome<RightHandPlan> contradiction(Taste taste, List<Lock.Finger> locks) {
        LayeredGraph graph = graphs.of(taste);
        List<Lock.Finger> core = Contradiction.among(
                        locks, some -> graph.hasPath(fingerLocks().restriction(some)))
                .orElseThrow()
                .demands();
        String words = String.join(
                " and ", core.stream().map(lock -> lock.words(music::words)).toList());
        return impossible(new Obstacle(
                "locks-contradict",
                core.size() == 1
                        ? Sentence.of("no-hand-can-meet-lock", "This lock cannot be met by any hand: {0}.", words)
                        : Sentence.of("locks-contradict", "These locks contradict each other: {0}.", words),
                List.of(Sentence.of("free-one-lock", "Free one of them."))));
    }

    private static Outcome<RightHandPlan> impossible(Obstacle obstacle) {
        return new Outcome.Impossible<>(List.of(obstacle));
    }

    private FingerLocks fingerLocks() {
        return new FingerLocks(music, lattice.orElseThrow());
    }

    private ShortestPaths paths(Question question, List<Lock.Finger> locks) {
        return ShortestPaths.of(graphs.of(question.taste()), fingerLocks().restriction(locks), question.cancelled());
    }

    private List<Posture> postures(RightHandPlan plan) {
        if (plan.events().size() != music.size())
            throw new IllegalArgumentException("plan has " + plan.events().size() + " events; allowed: one for each of "
                    + music.size() + " moments");
        List<Posture> postures = new ArrayList<>();
        for (RightHandPlan.Event event : plan.events()) {
            if (event.moment() != postures.size())
                throw new IllegalArgumentException("moment of event " + postures.size() + " is " + event.moment()
                        + "; allowed: " + postures.size());
            List<Integer> keys = music.moment(event.moment()).keys();
            if (!event.keys().equals(keys))
                throw new IllegalArgumentException(
                        "keys of event " + event.moment() + " are " + event.keys() + "; allowed: " + keys);
            postures.add(new Posture(event.fingers(), event.handPlace(), true));
        }
        return postures;
    }
}
