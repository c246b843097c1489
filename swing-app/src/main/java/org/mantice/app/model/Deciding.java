package org.mantice.app.model;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.FallenLock;
import org.mantice.app.files.Profiles;
import org.mantice.app.sheet.Reading;
import org.mantice.editing.EditedTune;
import org.mantice.editing.Edits;
import org.mantice.editing.TuneEdit;
import org.mantice.editing.TuneEditException;
import org.mantice.file.PlanDocument;
import org.mantice.performance.TuneException;
import org.mantice.plan.Plan;
import org.mantice.plugin.Packs;
import org.mantice.rule.RuleSet;

/** What the player decides: each decision can be undone, and has the plans searched for that follow from it. */
final class Deciding {
    private final Packs packs;
    private final Board board;
    private final PlanningDesk desk;
    private final Answering answering;
    private final Looking looking;
    private final Undoing undoing;

    Deciding(Packs packs, Board board, PlanningDesk desk, Answering answering, Looking looking) {
        this.packs = packs;
        this.board = board;
        this.desk = desk;
        this.answering = answering;
        this.looking = looking;
        this.undoing = new Undoing(board);
    }

    private PlannerState state() {
        return board.state();
    }

    void open(OpenTune tune) {
        Setup before = state().setup();
        Wishes wishes = state().tune().isEmpty()
                ? before.wishes()
                : Wishes.NONE.withPlans(before.wishes().plans());
        begin(
                tune,
                EditedTune.unedited(tune.read().tune()),
                new Setup(before.accordion(), before.player(), wishes, List.of()),
                Set.of());
        plan(Optional.empty());
    }

    private void begin(OpenTune tune, EditedTune edited, Setup setup, Set<String> leftOut) {
        desk.stopSearch();
        board.change(draft -> {
            draft.tune = Optional.of(tune);
            draft.edited = Optional.of(edited);
            draft.setup = setup;
            draft.fallen = List.of();
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

    void reopen(OpenTune tune, PlanDocument saved) {
        Wishes wishes = Wishes.NONE.withPlans(state().setup().wishes().plans());
        try {
            if (!tune.read().fingerprint().equals(saved.tune().sha256()))
                throw new IllegalArgumentException("the tune " + tune.fileName()
                        + " is not as it was when it was planned: its fingerprint differs");
            EditedTune edited = Edits.apply(tune.read().tune(), saved.tune().edits());
            Setup setup = new Setup(
                    saved.accordion(),
                    saved.player(),
                    SavedPlan.wishes(edited.tune(), saved.settings(), wishes.plans()),
                    saved.locks(),
                    saved.tune().edits());
            begin(tune, edited, setup, desk.rules().missingIn(Profiles.rulesOf(saved, packs)));
        } catch (TuneException | TuneEditException | IllegalArgumentException e) {
            begin(
                    tune,
                    EditedTune.unedited(tune.read().tune()),
                    new Setup(saved.accordion(), saved.player(), wishes, saved.locks()),
                    Set.of());
            answering.failed(e);
            return;
        }
        plan(Optional.of(saved.plan()));
    }

    void decide(String key, Setup setup) {
        decide(key, "", setup);
    }

    void decide(String key, String gesture, Setup setup) {
        decide(key, gesture, setup, board.inside().leftOut());
    }

    /** What is decided next can be undone by itself. */
    void endGesture() {
        undoing.endGesture();
    }

    void without(String ruleId) {
        Set<String> leftOut = new HashSet<>(board.inside().leftOut());
        leftOut.add(ruleId);
        decide("model.did.without", "", state().setup(), leftOut);
    }

    private void decide(String key, String gesture, Setup setup, Set<String> leftOut) {
        PlannerState before = state();
        if (setup.equals(before.setup()) && leftOut.equals(board.inside().leftOut())) return;
        if (before.tune().isEmpty()) {
            board.change(draft -> draft.setup = setup);
            return;
        }
        take(new Step(key, gesture, setup, leftOut, before.edited(), List.of()));
    }

    /** @throws TuneEditException if one of the edits does not fit; nothing is changed then */
    void edit(List<TuneEdit> edits) {
        if (edits.isEmpty()) return;
        Editing editing = Editing.of(state(), edits);
        take(new Step(
                Editing.key(edits.get(0)),
                "",
                editing.setup(),
                board.inside().leftOut(),
                Optional.of(editing.edited()),
                editing.fallen()));
    }

    /** @throws TuneEditException if one of the edits does not fit; nothing is changed then */
    void goOn(Setup earlier) {
        if (earlier.equals(state().setup())) return;
        Optional<EditedTune> edited =
                state().tune().map(tune -> Edits.apply(tune.read().tune(), earlier.edits()));
        take(new Step("model.did.goOn", "", earlier, board.inside().leftOut(), edited, List.of()));
    }

    /** What a decision leads to. */
    private record Step(
            String key,
            String gesture,
            Setup setup,
            Set<String> leftOut,
            Optional<EditedTune> edited,
            List<FallenLock> fallen) {}

    private void take(Step step) {
        Setup setup = step.setup();
        undoing.decide(step.key(), step.gesture());
        board.change(draft -> {
            draft.setup = setup;
            draft.edited = step.edited();
            draft.fallen = step.fallen();
            draft.leftOut = step.leftOut();
            draft.insight = draft.insight.map(known -> known.under(setup.locks()));
            undoing.decided(draft);
        });
        plan(Optional.empty());
    }

    /** @param saved a plan to begin with */
    private void plan(Optional<Plan> saved) {
        PlannerState state = state();
        if (state.tune().isEmpty()) return;
        OpenTune tune = state.tune().get();
        Setup setup = state.setup();
        Made made;
        try {
            Basis basis = Basis.of(
                    state.editedTune().orElseThrow(), setup, board.inside().leftOut());
            made = new Made(tune, setup, basis);
        } catch (TuneException | IllegalArgumentException e) {
            desk.stopSearch();
            answering.failed(e);
            return;
        }
        looking.giveWay();
        List<RuleSet> touched = touched(made);
        Optional<Plan> retouch =
                touched.isEmpty() ? Optional.empty() : state.chosenOffer().map(Offer::plan);
        board.change(draft -> answering.begin(draft, made));
        desk.search(new Order(
                made.basis(),
                setup.player().taste(),
                setup.locks(),
                setup.wishes().plans(),
                retouch,
                touched,
                saved));
    }

    /** The layers in which weights and locks differ from those of the offers in view; none if more than these differ. */
    private List<RuleSet> touched(Made made) {
        return board.inside()
                .made()
                .filter(before -> before.basis().equals(made.basis()))
                .map(before -> Touched.layers(before.setup(), made.setup(), desk.rules()))
                .orElse(List.of());
    }

    void planAgain() {
        plan(Optional.empty());
    }

    void stop() {
        if (!state().isWorking()) return;
        desk.stopSearch();
        answering.stopped();
    }

    void choose(int offer, Plan plan) {
        undoing.decide("model.did.choose", "");
        board.change(draft -> {
            draft.fallen = List.of();
            draft.chosen = offer;
            draft.picks = draft.picks.choosing(plan);
            undoing.decided(draft);
        });
    }

    /** Whether there is an answer now that nothing is searched for. */
    boolean undo() {
        return turned(undoing.undo());
    }

    boolean redo() {
        return turned(undoing.redo());
    }

    private boolean turned(boolean planAnew) {
        if (planAnew) planAgain();
        boolean answered = !state().isWorking();
        if (answered) desk.stopSearch();
        return answered;
    }

    void saved() {
        board.change(undoing::saved);
    }
}
