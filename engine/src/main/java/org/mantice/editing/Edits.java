package org.mantice.editing;

import java.util.List;
import org.mantice.tune.Tune;

/**
 * Applies edits to a tune, in order and exactly: the same tune and edits give the same tune. Nothing is changed in place.
 * Time grows with the number of edits times measures; a proposal takes what {@link org.mantice.harmony.ChordProposal}
 * does.
 */
public final class Edits {
    private Edits() {}

    /**
     * The tune after all edits.
     *
     * @throws TuneEditException if one of them does not fit what those before it have left
     */
    public static EditedTune apply(Tune written, List<TuneEdit> edits) {
        return apply(EditedTune.unedited(written), edits, 1);
    }

    /**
     * The same from a tune that has been edited before.
     *
     * @param number of the first of these edits, from 1, for messages
     * @throws TuneEditException if one of them does not fit what those before it have left
     */
    public static EditedTune apply(EditedTune before, List<TuneEdit> edits, int number) {
        EditedTune edited = before;
        for (int i = 0; i < edits.size(); i++) edited = apply(edited, edits.get(i), number + i);
        return edited;
    }

    private static EditedTune apply(EditedTune before, TuneEdit edit, int number) {
        Tune tune = before.tune();
        Spot spot = new Spot(tune, number);
        if (edit instanceof TuneEdit.SetChord set) return before.with(ChordEdits.set(spot, set));
        if (edit instanceof TuneEdit.MoveChord move) return before.with(ChordEdits.move(spot, move));
        if (edit instanceof TuneEdit.RemoveChord remove) return before.with(ChordEdits.remove(spot, remove));
        if (edit instanceof TuneEdit.AcceptChord accept) return before.with(ChordEdits.accept(spot, accept));
        if (edit instanceof TuneEdit.AcceptChords) return before.with(Proposals.accepted(spot));
        if (edit instanceof TuneEdit.DismissProposals) return before.with(Proposals.dismissed(spot));
        if (edit instanceof TuneEdit.ProposeChords) return Proposals.proposed(spot);
        if (edit instanceof TuneEdit.SetPhrase phrase) return before.with(MarkEdits.phrase(spot, phrase));
        if (edit instanceof TuneEdit.SetTempo tempo) return before.with(MarkEdits.tempo(spot, tempo));
        if (edit instanceof TuneEdit.SetBarlines barlines) return before.with(MeasureEdits.barlines(spot, barlines));
        if (edit instanceof TuneEdit.SetKey key) return before.with(MeasureEdits.key(spot, key));
        throw new IllegalStateException("no way to apply " + edit);
    }
}
