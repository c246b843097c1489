package org.mantice.layer.variation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.layer.Layer;
import org.mantice.layer.Ledger;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;
import org.mantice.rule.PassChoice;
import org.mantice.rule.RuleSet;
import org.mantice.search.Contradiction;
import org.mantice.search.Path;
import org.mantice.search.Restriction;
import org.mantice.search.ShortestPaths;
import org.mantice.tune.WrittenPlace;

/**
 * The layer of registers and octaves: one stage a pass, one state for each switch that works and octave at which every
 * note has a key. A switch is changed between passes only where a hand has the time to press it.
 */
public final class VariationLayer implements Layer<VariationPlan> {
    /** How many plans are looked through for one that is far enough from others. */
    private static final int LARGEST_LOOK = 200_000;

    private final PassChoices offered;
    private final PassPrices prices;

    /** Calls every rule once for every choice and pair of choices. */
    public VariationLayer(Performance performance, Accordion accordion, RuleBook book) {
        this.offered = new PassChoices(performance, accordion.treble());
        this.prices = new PassPrices(offered, book);
    }

    @Override
    public RuleSet ruleSet() {
        return RuleSet.REPEAT_VARIATION;
    }

    @Override
    public Outcome<VariationPlan> best(Question question) {
        if (offered.obstacle().isPresent()) return impossible(offered.obstacle().get());
        ShortestPaths paths = paths(question, question.locks());
        if (!paths.feasible()) return contradiction(question);
        return new Outcome.Found<>(
                paths.best(question.count()).stream().map(this::plan).toList(), true);
    }

    @Override
    public Outcome<VariationPlan> apart(Question question, List<VariationPlan> from, int decisions) {
        if (offered.obstacle().isPresent()) return impossible(offered.obstacle().get());
        List<VariationPlan> found = new ArrayList<>();
        Iterator<Path> paths = paths(question, question.locks()).iterator();
        int looked = 0;
        while (found.size() < question.count() && paths.hasNext() && looked++ < LARGEST_LOOK) {
            if (question.cancelled().getAsBoolean()) throw new CancellationException("planning was cancelled");
            VariationPlan plan = plan(paths.next());
            if (from.stream().allMatch(other -> differences(plan, other) >= decisions)) found.add(plan);
        }
        if (found.isEmpty())
            return impossible(new Obstacle(
                    "no-other-plan",
                    Sentence.of("no-other-registers", "No other registers differ in {0} decisions or more.", decisions),
                    List.of()));
        return new Outcome.Found<>(found, true);
    }

    private static int differences(VariationPlan one, VariationPlan other) {
        int count = 0;
        for (int i = 0; i < one.passes().size(); i++) {
            if (!one.passes().get(i).switchId().equals(other.passes().get(i).switchId())) count++;
            if (one.passes().get(i).octave() != other.passes().get(i).octave()) count++;
        }
        return count;
    }

    @Override
    public Explanation explain(VariationPlan plan, Taste taste) {
        return prices.explain(states(plan), taste);
    }

    @Override
    public VariationPlan rescore(VariationPlan plan) {
        return plan(states(plan));
    }

    @Override
    public List<Choice> choicesAt(Question question, int pass, WrittenPlace place) {
        ShortestPaths paths = paths(question, question.locks());
        if (!paths.feasible()) return List.of();
        long optimum = paths.best().orElseThrow().cost();
        List<Choice> found = new ArrayList<>();
        List<PassChoice> here = offered.choices().get(pass - 1);
        for (int state = 0; state < here.size(); state++) {
            PassChoice choice = here.get(state);
            String value = choice.register().id() + ", octave " + choice.octave();
            Decision decision = new Decision(Decision.Kind.REGISTER, pass, place, 0, value);
            paths.bestThrough(pass - 1, state)
                    .ifPresent(path -> found.add(new Choice(decision, path.cost() - optimum)));
        }
        found.sort(Comparator.comparingLong(Choice::extraCost));
        return found;
    }

    private Outcome<VariationPlan> contradiction(Question question) {
        List<Lock> own = question.locks().stream()
                .filter(lock -> lock instanceof Lock.Register || lock instanceof Lock.Octave)
                .toList();
        List<Lock> core = Contradiction.among(
                        own, locks -> paths(question, locks).feasible())
                .orElseThrow()
                .demands();
        String locks = String.join(
                " and ",
                core.stream().map(lock -> lock.words(WrittenPlace::toString)).toList());
        return impossible(new Obstacle(
                "locks-contradict",
                core.size() == 1
                        ? Sentence.of(
                                "accordion-cannot-meet-lock", "This lock cannot be met on this accordion: {0}.", locks)
                        : Sentence.of("locks-contradict", "These locks contradict each other: {0}.", locks),
                List.of(Sentence.of("free-one-lock", "Free one of them."))));
    }

    private static Outcome<VariationPlan> impossible(Obstacle obstacle) {
        return new Outcome.Impossible<>(List.of(obstacle));
    }

    private ShortestPaths paths(Question question, List<Lock> locks) {
        Restriction restriction = Restriction.free();
        for (int pass = 0; pass < offered.choices().size(); pass++)
            restriction = restriction.allowing(pass, allowed(pass, locks));
        return ShortestPaths.of(prices.graph(question.taste()), restriction, question.cancelled());
    }

    private BitSet allowed(int pass, List<Lock> locks) {
        BitSet allowed = new BitSet();
        List<PassChoice> here = offered.choices().get(pass);
        for (int state = 0; state < here.size(); state++) {
            PassChoice choice = here.get(state);
            if (locks.stream().allMatch(lock -> meets(choice, lock))) allowed.set(state);
        }
        return allowed;
    }

    private static boolean meets(PassChoice choice, Lock lock) {
        if (!lock.appliesTo(choice.pass())) return true;
        if (lock instanceof Lock.Register register)
            return register.switchId().equals(choice.register().id());
        if (lock instanceof Lock.Octave octave) return octave.octave() == choice.octave();
        return true;
    }

    private VariationPlan plan(Path path) {
        return plan(path.toArray());
    }

    private VariationPlan plan(int[] states) {
        List<VariationPlan.PassDecision> passes = new ArrayList<>();
        for (int pass = 0; pass < states.length; pass++) {
            PassChoice choice = offered.choices().get(pass).get(states[pass]);
            passes.add(
                    new VariationPlan.PassDecision(pass + 1, choice.register().id(), choice.octave()));
        }
        Ledger ledger = prices.ledger(states);
        return new VariationPlan(passes, ledger.costs(), ledger.concessions());
    }

    private int[] states(VariationPlan plan) {
        int passes = offered.choices().size();
        if (plan.passes().size() != passes)
            throw new IllegalArgumentException("plan has " + plan.passes().size() + " passes; allowed: " + passes);
        int[] states = new int[passes];
        for (int pass = 0; pass < passes; pass++) {
            VariationPlan.PassDecision decision = plan.passes().get(pass);
            states[pass] = indexOf(offered.choices().get(pass), decision);
            if (pass > 0 && !offered.canFollow(pass, states[pass - 1], states[pass]))
                throw new IllegalArgumentException("register of pass " + (pass + 1) + " is " + decision.switchId()
                        + "; allowed: one that there is time to press");
        }
        return states;
    }

    private static int indexOf(List<PassChoice> here, VariationPlan.PassDecision decision) {
        for (int state = 0; state < here.size(); state++)
            if (here.get(state).register().id().equals(decision.switchId())
                    && here.get(state).octave() == decision.octave()) return state;
        throw new IllegalArgumentException("register of pass " + decision.pass() + " is " + decision.switchId()
                + " at octave " + decision.octave() + "; allowed: a working switch and an octave on the keyboard");
    }
}
