package org.mantice.app.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.mantice.app.files.PlanFiles;
import org.mantice.app.files.Profiles;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.performance.TuneException;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.Leaning;
import org.mantice.rule.RuleSet;

/**
 * The planner without a window: holds the one state and changes it. Used by one thread; slow work goes to the {@link
 * Background}, and its results come back on this thread.
 */
public final class PlannerModel {
    /** How long a rule from a jar is waited for, in seconds, where nobody says otherwise. */
    public static final int USUAL_PATIENCE = 60;

    private static final int MOST_COMPARED = 4;

    private final Packs packs;
    private final Board board;
    private final PlanningDesk desk;
    private final Answering answering;
    private final Undoing undoing;
    private final Looking looking;

    public PlannerModel(Packs packs, Background background, Setup setup) {
        this(packs, background, setup, USUAL_PATIENCE);
    }

    /**
     * @param patienceSeconds how long a rule from a jar is waited for; after that its pack is off until the program
     *     starts again, and the answer is a failure with a {@link RuleStuckException}
     */
    public PlannerModel(Packs packs, Background background, Setup setup, int patienceSeconds) {
        this.packs = packs;
        this.board = new Board(setup);
        this.undoing = new Undoing(board);
        this.answering = new Answering(board, this::settled);
        this.desk = new PlanningDesk(packs, background, patienceSeconds, answering);
        this.looking = new Looking(board, desk);
    }

    private void settled() {
        looking.inquire();
    }

    public PlannerState state() {
        return board.state();
    }

    public Packs packs() {
        return packs;
    }

    /** Told of every change, after it. */
    public void addListener(Consumer<PlannerState> listener) {
        board.addListener(listener);
    }

    public void removeListener(Consumer<PlannerState> listener) {
        board.removeListener(listener);
    }

    /**
     * Plans a tune from scratch: locks, history and choice of the tune before are gone, and so is what was wished for
     * it; only how many plans to find stays.
     */
    public void open(OpenTune tune) {
        Setup before = state().setup();
        Wishes wishes =
                state().tune().isEmpty() ? before.wishes() : Wishes.NONE.withPlans(before.wishes().plans());
        begin(tune, new Setup(before.accordion(), before.player(), wishes, List.of()), Set.of());
        plan(List.of(), Optional.empty());
    }

    private void begin(OpenTune tune, Setup setup, Set<String> leftOut) {
        desk.stopSearch();
        board.change(draft -> {
            draft.tune = Optional.of(tune);
            draft.setup = setup;
            draft.answer = new Answer.Working(List.of(), 0, setup.wishes().plans());
            draft.performance = Optional.empty();
            draft.selection = Optional.empty();
            draft.insight = Optional.empty();
            draft.reading = new Reading.AsWritten();
            draft.leftOut = leftOut;
            draft.picks = Picks.NONE;
            draft.made = Optional.empty();
            draft.pick();
            undoing.forget(draft);
        });
    }

    /**
     * Goes on with a saved plan: its profiles, settings, locks and rules; the saved plan is shown and chosen first. If it
     * does not fit the tune, or a rule that it was made with is not here, the answer is a failure.
     */
    public void reopen(OpenTune tune, PlanDocument saved) {
        Wishes wishes = Wishes.NONE.withPlans(state().setup().wishes().plans());
        try {
            if (!tune.read().fingerprint().equals(saved.tune().sha256()))
                throw new IllegalArgumentException("the tune " + tune.fileName()
                        + " is not as it was when it was planned: its fingerprint differs");
            Setup setup = new Setup(
                    saved.accordion(),
                    saved.player(),
                    SavedPlan.wishes(tune.read().tune(), saved.settings(), wishes.plans()),
                    saved.locks());
            begin(tune, setup, desk.rules().missingIn(Profiles.rulesOf(saved, packs)));
        } catch (TuneException | IllegalArgumentException e) {
            begin(tune, new Setup(saved.accordion(), saved.player(), wishes, saved.locks()), Set.of());
            answering.failed(e);
            return;
        }
        plan(List.of(), Optional.of(saved.plan()));
    }

    public void setAccordion(Accordion accordion) {
        Setup s = state().setup();
        decide("model.did.accordion", new Setup(accordion, s.player(), s.wishes(), s.locks()));
    }

    /** The player with the weights of the profile. */
    public void setPlayer(Player player) {
        Setup s = state().setup();
        decide("model.did.player", new Setup(s.accordion(), player, s.wishes(), s.locks()));
    }

    public void setWishes(Wishes wishes) {
        Setup s = state().setup();
        decide("model.did.wishes", new Setup(s.accordion(), s.player(), wishes, s.locks()));
    }

    /** Adds a lock, in place of one on the same decision. */
    public void lock(Lock lock) {
        lock(List.of(lock));
    }

    private void lock(List<Lock> added) {
        int passes = state().performance().map(played -> played.passes().size()).orElse(0);
        List<Lock> locks = state().setup().locks();
        for (Lock lock : added) locks = Locks.with(locks, lock, passes);
        setLocks("model.did.lock", locks);
    }

    private void setLocks(String key, List<Lock> locks) {
        Setup s = state().setup();
        decide(key, new Setup(s.accordion(), s.player(), s.wishes(), locks));
    }

    public void free(Lock lock) {
        free(List.of(lock));
    }

    private void free(List<Lock> freed) {
        setLocks(
                "model.did.free",
                state().setup().locks().stream()
                        .filter(lock -> !freed.contains(lock))
                        .toList());
    }

    public void freeAll() {
        setLocks("model.did.freeAll", List.of());
    }

    /** Locks a choice for the pass it speaks of, or for every pass. */
    public void set(Choice choice, boolean everyPass) {
        lock(Locks.of(choice.decision(), everyPass));
    }

    /** Locks what the plan in which something is selected decides there. */
    public void lockSelected(boolean everyPass) {
        List<Lock> locks = looking.decisionsSelected().stream()
                .flatMap(decision -> Locks.of(decision, everyPass).stream())
                .toList();
        if (!locks.isEmpty()) lock(locks);
    }

    /** Frees every lock that holds what is selected, on every pass if it holds there. */
    public void freeSelected() {
        state().selection()
                .ifPresent(selection -> free(Locks.at(state().setup().locks(), selection.spot())));
    }

    public void setTaste(Taste taste) {
        Taste before = state().setup().player().taste();
        Set<String> changed = new TreeSet<>(before.weights().keySet());
        changed.addAll(taste.weights().keySet());
        changed.removeIf(rule -> before.perMille(rule) == taste.perMille(rule));
        String gesture = changed.size() == 1 ? "weight " + changed : "";
        setTaste("model.did.weight", gesture, taste);
    }

    /** Takes over the weights of a leaning; rules that it does not name keep theirs. */
    public void lean(Leaning leaning) {
        Taste taste = state().setup().player().taste();
        for (Map.Entry<String, Integer> weight : leaning.weights().entrySet())
            taste = taste.with(weight.getKey(), weight.getValue());
        setTaste("model.did.lean", "", taste);
    }

    private void setTaste(String key, String gesture, Taste taste) {
        Setup s = state().setup();
        Player p = s.player();
        Player player = new Player(
                p.id(), p.name(), p.handSpanTenths(), p.bassMethod(), p.jumps(), p.mayTurnInHeldNote(), taste);
        decide(key, gesture, new Setup(s.accordion(), player, s.wishes(), s.locks()), board.inside().leftOut());
    }

    private void decide(String key, Setup setup) {
        decide(key, "", setup, board.inside().leftOut());
    }

    private void decide(String key, String gesture, Setup setup, Set<String> leftOut) {
        PlannerState before = state();
        if (setup.equals(before.setup()) && leftOut.equals(board.inside().leftOut())) return;
        if (before.tune().isEmpty()) {
            board.change(draft -> draft.setup = setup);
            return;
        }
        undoing.decide(key, gesture);
        board.change(draft -> {
            draft.setup = setup;
            draft.leftOut = leftOut;
            undoing.decided(draft);
        });
        plan(Touched.layers(before.setup(), setup, desk.rules()), Optional.empty());
    }

    /** @param touched the layers that a change touches, if it touches weights and locks alone */
    private void plan(List<RuleSet> touched, Optional<Plan> saved) {
        PlannerState state = state();
        if (state.tune().isEmpty()) return;
        OpenTune tune = state.tune().get();
        Optional<Made> before = board.inside().made();
        Made made;
        try {
            made = new Made(
                    tune,
                    state.setup(),
                    Basis.of(tune.read().tune(), state.setup(), board.inside().leftOut()));
        } catch (TuneException | IllegalArgumentException e) {
            desk.stopSearch();
            answering.failed(e);
            return;
        }
        boolean sameBasis = before.filter(one -> one.basis().equals(made.basis())).isPresent();
        Optional<Plan> retouch =
                sameBasis && !touched.isEmpty() ? state.chosenOffer().map(Offer::plan) : Optional.empty();
        board.change(draft -> answering.begin(draft, made));
        desk.search(new Order(
                made.basis(),
                state.setup().player().taste(),
                state.setup().locks(),
                state.setup().wishes().plans(),
                retouch,
                touched,
                saved));
    }

    /** Stops the planning; what was found stays. */
    public void stop() {
        if (!state().isWorking()) return;
        desk.stopSearch();
        answering.stopped();
    }

    public void planAgain() {
        plan(List.of(), Optional.empty());
    }

    /** Goes on without a rule that failed. */
    public void planWithout(String ruleId) {
        Set<String> leftOut = new HashSet<>(board.inside().leftOut());
        leftOut.add(ruleId);
        decide("model.did.without", "", state().setup(), leftOut);
    }

    /** Shows these offers side by side; one to four. */
    public void compare(List<Integer> offers) {
        List<Integer> distinct = offers.stream().distinct().sorted().toList();
        if (distinct.isEmpty() || distinct.size() > MOST_COMPARED)
            throw new IllegalArgumentException("offers compared are " + distinct.size() + "; allowed: 1 to 4");
        List<Plan> plans = new ArrayList<>();
        for (int offer : distinct) plans.add(offer(offer).plan());
        board.change(draft -> {
            draft.compared = distinct;
            draft.picks = draft.picks.comparing(plans);
        });
    }

    private Offer offer(int index) {
        List<Offer> offers = state().offers();
        if (index < 0 || index >= offers.size())
            throw new IllegalArgumentException("offer is " + index + "; allowed: 0 to " + (offers.size() - 1));
        return offers.get(index);
    }

    public void choose(int offer) {
        Plan plan = offer(offer).plan();
        if (offer == state().chosen()) return;
        undoing.decide("model.did.choose", "");
        board.change(draft -> {
            draft.chosen = offer;
            draft.picks = draft.picks.choosing(plan);
            undoing.decided(draft);
        });
    }

    public void select(Optional<Selection> selection) {
        looking.select(selection);
    }

    /** The next difference after the one stepped to, round to the first; selects its place. */
    public void nextDifference() {
        looking.step(1);
    }

    public void previousDifference() {
        looking.step(-1);
    }

    public void stepTo(int difference) {
        looking.stepTo(difference);
    }

    public void setReading(Reading reading) {
        board.change(draft -> draft.reading = reading);
    }

    public void show(Strip strip, boolean shown) {
        Set<Strip> strips = new HashSet<>(state().strips());
        if (shown) strips.add(strip);
        else strips.remove(strip);
        board.change(draft -> draft.strips = strips);
    }

    public void undo() {
        turned(undoing.undo());
    }

    public void redo() {
        turned(undoing.redo());
    }

    private void turned(boolean planAnew) {
        if (planAnew) planAgain();
        else {
            if (!state().isWorking()) desk.stopSearch();
            looking.inquire();
        }
    }

    /** Tells that the present decisions are on disk. */
    public void saved() {
        board.change(undoing::saved);
    }

    /** The whole tree of an offer, in the background. */
    public void explain(int offer, Consumer<Explanation> explained) {
        Plan plan = offer(offer).plan();
        Taste taste = state().setup().player().taste();
        made().ifPresent(made -> desk.ask(made.basis(), planning -> planning.explain(plan, taste), explained));
    }

    /** The tree of one offer minus that of another, in the background. */
    public void explainDifference(int offer, int against, Consumer<Explanation> explained) {
        Plan plan = offer(offer).plan();
        Plan other = offer(against).plan();
        Taste taste = state().setup().player().taste();
        made().ifPresent(made -> desk.ask(
                made.basis(),
                planning -> planning.explain(plan, taste).minus(planning.explain(other, taste)),
                explained));
    }

    private Optional<Made> made() {
        return board.inside().made();
    }

    /** The chosen plan as a file, byte for byte as the command line writes it; in the background. */
    public void planFile(Consumer<PlanFile> file) {
        Optional<Plan> chosen = state().chosenOffer().map(Offer::plan);
        if (chosen.isEmpty() || made().isEmpty()) return;
        Made made = made().get();
        OpenTune tune = made.tune();
        PlanFiles files = new PlanFiles(tune.fileName(), tune.read(), tune.part(), packs);
        Setup setup = made.setup();
        desk.ask(made.basis(), planning -> files.of(planning, chosen.get(), setup.player(), setup.locks()), file);
    }
}
