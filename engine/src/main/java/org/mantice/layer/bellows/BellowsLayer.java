package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.layer.bellows.StrokeSolver.Solution;
import org.mantice.layer.bellows.StrokeSolver.Strokes;
import org.mantice.layer.bellows.StrokeSolver.Task;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;
import org.mantice.search.Contradiction;
import org.mantice.search.StrokeQuery;
import org.mantice.tune.WrittenPlace;

/**
 * The layer of the bellows: which strokes, over all places where they may turn. Exact on whole millilitres: the opening
 * after any strokes is start plus and minus whole stretches, never below closed nor above full.
 *
 * <p>The first stroke goes out. The bellows start where told, or, left free, at the best of five openings from a
 * twentieth to half of the comfortable air; among equal plans the least opening.
 *
 * <p>Bans give way as few as possible, what gives way last counting most: see {@link org.mantice.rule.GiveWay}. The air
 * button is not used yet.
 */
public final class BellowsLayer implements Layer<BellowsPlan> {
    /** Where a free start may be, in twentieths of the comfortable air. */
    private static final int[] FREE_STARTS = {1, 2, 3, 5, 7, 10};

    /** Plans looked at for each earlier plan when several must differ. */
    private static final int LOOK = 24;

    /** Rewards for leaving earlier turns are tried from here, doubled so many times; micropoints. */
    private static final long FIRST_REWARD = 250_000;

    private static final int REWARDS = 9;

    private final Ground ground;
    private final StrokePrices prices;
    private final StrokeFigures figures;
    private final int[] starts;

    private BellowsLayer(Ground ground, RuleBook book, OptionalInt startMillilitres) {
        this.ground = ground;
        this.prices = new StrokePrices(ground, book);
        this.figures = new StrokeFigures(ground, prices);
        this.starts = starts(startMillilitres);
    }

    /**
     * With a free start. Calls every rule once for every context; every question but {@link #explain} is then answered
     * without.
     *
     * @throws org.mantice.layer.RuleFailureException if a rule misbehaves
     */
    public static BellowsLayer of(
            Performance performance,
            VariationPlan variation,
            LeftHandPlan leftHand,
            Accordion accordion,
            Player player,
            RuleBook book) {
        return new BellowsLayer(
                new Ground(performance, variation, leftHand, accordion, player), book, OptionalInt.empty());
    }

    /** The same with so much air in the bellows before the first note: 0 to the full opening in millilitres. */
    public static BellowsLayer startingAt(
            int startMillilitres,
            Performance performance,
            VariationPlan variation,
            LeftHandPlan leftHand,
            Accordion accordion,
            Player player,
            RuleBook book) {
        return new BellowsLayer(
                new Ground(performance, variation, leftHand, accordion, player),
                book,
                OptionalInt.of(startMillilitres));
    }

    private int[] starts(OptionalInt fixed) {
        if (fixed.isPresent()) {
            int start = fixed.getAsInt();
            if (start < 0 || start > ground.full())
                throw new IllegalArgumentException("startMillilitres is " + start + "; allowed: 0 to " + ground.full());
            return new int[] {start};
        }
        int comfortable = ground.bellows().comfortableMillilitres();
        return java.util.stream.IntStream.of(FREE_STARTS)
                .map(twentieths -> (int) ((long) comfortable * twentieths / 20))
                .distinct()
                .toArray();
    }

    @Override
    public RuleSet ruleSet() {
        return RuleSet.BELLOWS_POLICY;
    }

    @Override
    public Outcome<BellowsPlan> best(Question question) {
        return best(question, StrokeQuery.DEFAULT_LABEL_BUDGET);
    }

    /** @param labelBudget of the exact search, see {@link StrokeQuery} */
    Outcome<BellowsPlan> best(Question question, int labelBudget) {
        Task task = new Task(question.count(), 0, (from, to, direction) -> 0, labelBudget, question.cancelled());
        Solution solution = solver(question.taste()).solve(locks(question.locks()), task);
        return solution.plans().isEmpty() ? impossible(question) : found(solution);
    }

    private StrokeSolver solver(Taste taste) {
        return new StrokeSolver(ground, prices, new WeightedPrices(prices, ground, taste), starts);
    }

    private TurnLocks locks(List<? extends Lock> locks) {
        return new TurnLocks(ground, locks);
    }

    private Outcome<BellowsPlan> found(Solution solution) {
        return new Outcome.Found<>(
                solution.plans().stream().map(plan -> plan(plan, solution)).toList(), solution.proven());
    }

    private BellowsPlan plan(Strokes strokes, Solution solution) {
        long gap = solution.proven() ? 0 : Math.max(0, strokes.cost() - solution.lowerBound());
        return figures.plan(strokes.places(), strokes.startMillilitres(), solution.proven(), gap);
    }

    private Outcome<BellowsPlan> impossible(Question question) {
        List<Lock.Turn> turns = question.locks().stream()
                .filter(Lock.Turn.class::isInstance)
                .map(Lock.Turn.class::cast)
                .toList();
        if (turns.isEmpty() || !isPossible(question, List.of()))
            return new Outcome.Impossible<>(new AirObstacles(ground, prices).find());
        List<Lock.Turn> core = Contradiction.among(turns, some -> isPossible(question, some))
                .map(Contradiction::demands)
                .orElse(turns);
        Function<WrittenPlace, String> places = place -> Places.words(ground.performance.tune(), place);
        String words = String.join(
                " and ", core.stream().map(lock -> lock.words(places)).toList());
        return new Outcome.Impossible<>(List.of(new Obstacle(
                "locks-contradict",
                core.size() == 1
                        ? Sentence.of("bellows-cannot-meet-lock", "The bellows cannot meet this lock: {0}.", words)
                        : Sentence.of(
                                "bellows-cannot-meet-locks",
                                "The bellows cannot meet these locks together: {0}.",
                                words),
                List.of(Sentence.of("free-one-lock", "Free one of them.")))));
    }

    private boolean isPossible(Question question, List<Lock.Turn> locks) {
        Solution one = solver(question.taste()).solve(locks(locks), Task.best(1, question.cancelled()));
        return !one.plans().isEmpty();
    }

    @Override
    public Outcome<BellowsPlan> apart(Question question, List<BellowsPlan> from, int decisions) {
        if (decisions < 1 || decisions > StrokeQuery.MOST_DIFFERENCES)
            throw new IllegalArgumentException("decisions is " + decisions + "; allowed: 1 to 8");
        List<TurnDistance> others = from.stream()
                .map(plan -> new TurnDistance(ground, places(plan)))
                .toList();
        Solution exact = apartFrom(question, others, decisions);
        Solution solution =
                exact.plans().isEmpty() && others.size() > 1 ? rewarded(question, others, decisions) : exact;
        if (!solution.plans().isEmpty()) return found(solution);
        return new Outcome.Impossible<>(List.of(new Obstacle(
                "no-other-plan",
                Sentence.of("no-other-strokes", "No other strokes differ in {0} turns or more.", decisions),
                List.of())));
    }

    /** Against each of the others in turn; what comes out is held against all. Exact against one. */
    private Solution apartFrom(Question question, List<TurnDistance> others, int decisions) {
        StrokeSolver solver = solver(question.taste());
        TurnLocks locks = locks(question.locks());
        int count = others.size() == 1 ? question.count() : Math.max(LOOK, question.count());
        List<Strokes> found = new ArrayList<>();
        boolean proven = others.size() == 1;
        boolean complete = true;
        long bound = Long.MAX_VALUE;
        for (TurnDistance other : others)
            for (StrokeQuery.Difference difference : List.<StrokeQuery.Difference>of(
                    (from, to, direction) -> other.added(from, to), (from, to, direction) -> other.dropped(from, to))) {
                Solution one = solver.solve(
                        locks,
                        new Task(count, decisions, difference, StrokeQuery.DEFAULT_LABEL_BUDGET, question.cancelled()));
                found.addAll(one.plans());
                proven &= one.proven();
                complete &= one.complete();
                bound = Math.min(bound, one.lowerBound());
            }
        return new Solution(inOrder(found, others, decisions, question.count()), proven, complete, bound);
    }

    /** Makes the turns of the others dearer until enough are left. */
    private Solution rewarded(Question question, List<TurnDistance> others, int decisions) {
        List<Strokes> found = new ArrayList<>();
        WeightedPrices plain = new WeightedPrices(prices, ground, question.taste());
        long reward = FIRST_REWARD;
        for (int i = 0; i < REWARDS && found.isEmpty(); i++, reward *= 2) {
            WeightedPrices dearer = new WeightedPrices(prices, ground, question.taste());
            for (TurnDistance other : others)
                for (int place : other.near()) dearer.turnCost[place] = plain.turnCost[place] + reward;
            Solution one = new StrokeSolver(ground, prices, dearer, starts)
                    .solve(locks(question.locks()), Task.best(LOOK, question.cancelled()));
            long paid = reward;
            for (Strokes plan : one.plans()) found.add(without(plan, others, paid));
            found = new ArrayList<>(inOrder(found, others, decisions, question.count()));
        }
        return new Solution(found, false, false, 0);
    }

    private Strokes without(Strokes plan, List<TurnDistance> others, long reward) {
        long cost = plan.cost();
        for (int place : plan.places().subList(1, plan.places().size() - 1))
            if (others.stream().anyMatch(other -> other.added(0, place) == 0)) cost -= reward;
        return new Strokes(plan.places(), plan.startMillilitres(), cost, plan.concessions());
    }

    private static List<Strokes> inOrder(List<Strokes> plans, List<TurnDistance> others, int decisions, int count) {
        List<Strokes> kept = new ArrayList<>();
        List<Strokes> sorted = plans.stream()
                .filter(plan -> others.stream().allMatch(other -> other.of(plan.places()) >= decisions))
                .sorted(Comparator.comparingLong(Strokes::concessions)
                        .thenComparingLong(Strokes::cost)
                        .thenComparing(BellowsLayer::compareTurns))
                .toList();
        for (Strokes plan : sorted)
            if (kept.size() < count
                    && kept.stream().noneMatch(one -> one.places().equals(plan.places()))) kept.add(plan);
        return kept;
    }

    private static int compareTurns(Strokes one, Strokes other) {
        for (int i = 0; i < Math.min(one.places().size(), other.places().size()); i++) {
            int order = Integer.compare(one.places().get(i), other.places().get(i));
            if (order != 0) return order;
        }
        return 0;
    }

    @Override
    public Explanation explain(BellowsPlan plan, Taste taste) {
        return figures.explain(places(plan), start(plan), taste);
    }

    @Override
    public BellowsPlan rescore(BellowsPlan plan) {
        return figures.plan(places(plan), start(plan), plan.provenBest(), plan.gap());
    }

    private static int start(BellowsPlan plan) {
        return plan.strokes().get(0).startMillilitres();
    }

    /** The places of a plan's strokes in this performance. */
    private List<Integer> places(BellowsPlan plan) {
        List<Integer> places = new ArrayList<>();
        int place = -1;
        for (BellowsPlan.Stroke stroke : plan.strokes()) {
            do place++;
            while (place < ground.last() && !begins(stroke, ground.place(place)));
            if (place >= ground.last())
                throw new IllegalArgumentException("turn of the plan is in pass " + stroke.pass() + " at measure "
                        + (stroke.place().measure() + 1) + ", offset "
                        + stroke.place().offset()
                        + "; allowed: a place where the bellows may turn");
            places.add(place);
        }
        places.add(ground.last());
        return places;
    }

    private static boolean begins(BellowsPlan.Stroke stroke, Candidate at) {
        return stroke.measure() == at.measure() && stroke.place().equals(at.place());
    }

    @Override
    public List<Choice> choicesAt(Question question, int pass, WrittenPlace place) {
        StrokeSolver solver = solver(question.taste());
        BooleanSupplier cancelled = question.cancelled();
        Solution best = solver.solve(locks(question.locks()), Task.best(1, cancelled));
        if (best.plans().isEmpty()) return List.of();
        List<Choice> choices = new ArrayList<>();
        for (boolean turn : new boolean[] {true, false}) {
            List<Lock> locks = new ArrayList<>(question.locks());
            locks.add(new Lock.Turn(OptionalInt.of(pass), place, turn));
            Solution one = solver.solve(locks(locks), Task.best(1, cancelled));
            if (one.plans().isEmpty()) continue;
            long extra = one.plans().get(0).cost() - best.plans().get(0).cost();
            Decision decision = new Decision(Decision.Kind.TURN, pass, place, 0, turn ? "turn" : "no turn");
            choices.add(new Choice(decision, Math.max(0, extra)));
        }
        choices.sort(Comparator.comparingLong(Choice::extraCost));
        return choices;
    }
}
