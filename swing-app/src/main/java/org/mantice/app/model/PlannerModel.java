package org.mantice.app.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.editing.TuneEdit;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.pattern.Accompaniment;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.plugin.RuleStuckException;
import org.mantice.rule.Leaning;

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
    private final Deciding deciding;
    private final Looking looking;
    private final Questions questions;

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
        Answering answering = new Answering(board, this::settled);
        PlanningDesk desk = new PlanningDesk(packs, background, patienceSeconds, answering);
        this.looking = new Looking(board, desk);
        this.deciding = new Deciding(packs, board, desk, answering, looking);
        this.questions = new Questions(packs, board, desk);
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
     * Lets views be hidden and thrown away that listen for as long as they live.
     *
     * @param work makes them
     * @return all that began to listen during the work
     */
    public Listening listeningDuring(Runnable work) {
        return board.listeningDuring(work);
    }

    /**
     * Plans a tune from scratch: locks, history and choice of the tune before are gone, and so is what was wished for
     * it; only how many plans to find stays.
     */
    public void open(OpenTune tune) {
        deciding.open(tune);
    }

    /**
     * Goes on with a saved plan: its profiles, settings, locks and rules; the saved plan is shown and chosen first. If it
     * does not fit the tune, or a rule that it was made with is not here, the answer is a failure.
     */
    public void reopen(OpenTune tune, PlanDocument saved) {
        deciding.reopen(tune, saved);
    }

    public void setAccordion(Accordion accordion) {
        deciding.decide("model.did.accordion", state().setup().withAccordion(accordion));
    }

    /** The player with the weights of the profile. */
    public void setPlayer(Player player) {
        deciding.decide("model.did.player", state().setup().withPlayer(player));
    }

    public void setWishes(Wishes wishes) {
        deciding.decide("model.did.wishes", state().setup().withWishes(wishes));
    }

    /** Which patterns the left hand plays where. */
    public void setLeftHand(Accompaniment asked) {
        Setup s = state().setup();
        deciding.decide("model.did.leftHand", s.withWishes(s.wishes().withLeftHand(asked)));
    }

    /**
     * Goes on where earlier work on the open tune had come to, which is one step to undo.
     *
     * @throws org.mantice.editing.TuneEditException if one of its edits does not fit the tune; nothing is changed then
     */
    public void goOn(Setup earlier) {
        deciding.goOn(earlier);
    }

    /**
     * Edits the tune, which is one step to undo; locks that have no place in it any more go with it, and are told.
     *
     * @throws org.mantice.editing.TuneEditException if one of the edits does not fit the tune; nothing is changed then
     * @throws IllegalStateException if no tune is open
     */
    public void edit(TuneEdit... edits) {
        deciding.edit(List.of(edits));
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
        deciding.decide(key, state().setup().withLocks(locks));
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
        state().selection().ifPresent(selection -> free(Locks.at(state().setup().locks(), selection.spot())));
    }

    /** Each call is a step of its own to undo. */
    public void setTaste(Taste taste) {
        setTaste(taste, false);
    }

    /** @param stillChanging as while a weight is dragged: all its changes up to one that is the last are one step to undo */
    public void setTaste(Taste taste, boolean stillChanging) {
        Taste before = state().setup().player().taste();
        Set<String> changed = new TreeSet<>(before.weights().keySet());
        changed.addAll(taste.weights().keySet());
        changed.removeIf(rule -> before.perMille(rule) == taste.perMille(rule));
        String gesture = changed.size() == 1 ? "weight " + changed : "";
        deciding.decide("model.did.weight", gesture, state().setup().withTaste(taste));
        if (!stillChanging) deciding.endGesture();
    }

    /** Takes over the weights of a leaning; rules that it does not name keep theirs. */
    public void lean(Leaning leaning) {
        Taste taste = state().setup().player().taste();
        for (Map.Entry<String, Integer> weight : leaning.weights().entrySet())
            taste = taste.with(weight.getKey(), weight.getValue());
        deciding.decide("model.did.lean", state().setup().withTaste(taste));
    }

    /** Stops the planning; what was found stays. */
    public void stop() {
        deciding.stop();
    }

    public void planAgain() {
        deciding.planAgain();
    }

    /** Goes on without a rule that failed. */
    public void planWithout(String ruleId) {
        deciding.without(ruleId);
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
        deciding.choose(offer, plan);
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
        if (deciding.undo()) looking.inquire();
    }

    public void redo() {
        if (deciding.redo()) looking.inquire();
    }

    /** Tells that the present decisions are on disk. */
    public void saved() {
        deciding.saved();
    }

    /** The whole tree of an offer, in the background. */
    public void explain(int offer, Consumer<Explanation> explained) {
        questions.explain(offer(offer).plan(), explained);
    }

    /** The tree of one offer minus that of another, in the background. */
    public void explainDifference(int offer, int against, Consumer<Explanation> explained) {
        questions.explainDifference(offer(offer).plan(), offer(against).plan(), explained);
    }

    /** The chosen plan as a file, byte for byte as the command line writes it; in the background. */
    public void planFile(Consumer<PlanFile> file) {
        state().chosenOffer().ifPresent(chosen -> questions.file(chosen.plan(), file));
    }
}
