package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import org.mantice.FallenLock;
import org.mantice.FallenLocks;
import org.mantice.editing.EditedTune;
import org.mantice.editing.Edits;
import org.mantice.editing.TuneEdit;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.TuneException;
import org.mantice.plan.Lock;

/**
 * What edits of the open tune lead to.
 *
 * @param setup without the locks that fell
 * @param fallen locks without a place in the edited tune
 */
record Editing(EditedTune edited, Setup setup, List<FallenLock> fallen) {
    /** @throws org.mantice.editing.TuneEditException if one of the edits does not fit */
    static Editing of(PlannerState state, List<TuneEdit> added) {
        Setup before = state.setup();
        EditedTune edited = Edits.apply(
                state.edited().orElseThrow(() -> new IllegalStateException("no tune is open")),
                added,
                before.edits().size() + 1);
        List<TuneEdit> edits = new ArrayList<>(before.edits());
        edits.addAll(added);
        List<FallenLock> fallen = fallen(edited, before);
        List<Lock> locks = new ArrayList<>(before.locks());
        locks.removeAll(fallen.stream().map(FallenLock::lock).toList());
        return new Editing(edited, before.withLocks(locks).withEdits(edits), fallen);
    }

    /** A tune that cannot be played keeps its locks: the planning says what is wrong with it. */
    private static List<FallenLock> fallen(EditedTune edited, Setup setup) {
        if (setup.locks().isEmpty()) return List.of();
        try {
            Performance performance =
                    Performer.perform(edited.tune(), setup.wishes().settings(edited.tune()));
            return FallenLocks.among(setup.locks(), performance);
        } catch (TuneException | IllegalArgumentException unplayable) {
            return List.of();
        }
    }

    /** Of the words for what an edit does. */
    static String key(TuneEdit edit) {
        if (edit instanceof TuneEdit.SetChord) return "model.did.chord";
        if (edit instanceof TuneEdit.MoveChord) return "model.did.moveChord";
        if (edit instanceof TuneEdit.RemoveChord) return "model.did.removeChord";
        if (edit instanceof TuneEdit.ProposeChords) return "model.did.proposeChords";
        if (edit instanceof TuneEdit.AcceptChord) return "model.did.acceptChord";
        if (edit instanceof TuneEdit.AcceptChords) return "model.did.acceptChords";
        if (edit instanceof TuneEdit.DismissProposals) return "model.did.dismissProposals";
        if (edit instanceof TuneEdit.SetPhrase) return "model.did.phrase";
        if (edit instanceof TuneEdit.SetBarlines) return "model.did.barlines";
        if (edit instanceof TuneEdit.SetTempo) return "model.did.tempoMark";
        if (edit instanceof TuneEdit.SetKey) return "model.did.key";
        throw new IllegalStateException("no words for " + edit);
    }
}
