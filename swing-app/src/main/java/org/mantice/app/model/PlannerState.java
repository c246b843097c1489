package org.mantice.app.model;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.FallenLock;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.editing.EditedTune;
import org.mantice.performance.Performance;
import org.mantice.tune.Tune;

/**
 * Everything that the window shows, at one moment.
 *
 * @param edited the tune after the player's edits, not transposed; there whenever a tune is
 * @param performance the tune as played, once it is known; belongs to the answer's offers
 * @param compared which offers are shown side by side, one to four indexes, ascending; empty without offers
 * @param chosen index of the offer that the player has chosen; -1 without offers
 * @param differences between the plans compared, in order of play
 * @param differenceAt which of them was stepped to
 * @param insight about the selection, once it is known
 * @param undo what would be undone: a key of the words, as {@code "model.did.lock"}; empty if nothing can be
 * @param redo likewise
 * @param unsaved whether something was decided since the plan was opened or saved
 * @param fallen the locks that the last step took away because the edited tune has no place for them
 */
public record PlannerState(
        Optional<OpenTune> tune,
        Optional<EditedTune> edited,
        Setup setup,
        Answer answer,
        Optional<Performance> performance,
        List<Integer> compared,
        int chosen,
        List<Difference> differences,
        OptionalInt differenceAt,
        Optional<Selection> selection,
        Optional<Insight> insight,
        Reading reading,
        Set<Strip> strips,
        Optional<String> undo,
        Optional<String> redo,
        boolean unsaved,
        List<FallenLock> fallen) {
    public PlannerState {
        compared = List.copyOf(compared);
        differences = List.copyOf(differences);
        fallen = List.copyOf(fallen);
        EnumSet<Strip> shown = EnumSet.noneOf(Strip.class);
        shown.addAll(strips);
        strips = Collections.unmodifiableSet(shown);
    }

    /** The tune after the player's edits, not transposed. */
    public Optional<Tune> editedTune() {
        return edited.map(EditedTune::tune);
    }

    public List<Offer> offers() {
        return answer.offers();
    }

    public Optional<Offer> chosenOffer() {
        return chosen >= 0 && chosen < offers().size() ? Optional.of(offers().get(chosen)) : Optional.empty();
    }

    public boolean isWorking() {
        return answer instanceof Answer.Working;
    }
}
