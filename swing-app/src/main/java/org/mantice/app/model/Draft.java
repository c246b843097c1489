package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.FallenLock;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.editing.EditedTune;
import org.mantice.performance.Performance;

/** A state in the making. */
final class Draft {
    Optional<OpenTune> tune;
    Optional<EditedTune> edited;
    Setup setup;
    Answer answer;
    Optional<Performance> performance;
    List<Integer> compared;
    int chosen;
    List<Difference> differences;
    OptionalInt differenceAt;
    Optional<Selection> selection;
    Optional<Insight> insight;
    Reading reading;
    Set<Strip> strips;
    Optional<String> undo;
    Optional<String> redo;
    boolean unsaved;
    List<FallenLock> fallen;

    Set<String> leftOut;
    Picks picks;
    Optional<Made> made;
    long version;

    Draft(PlannerState state, Inside inside) {
        tune = state.tune();
        edited = state.edited();
        setup = state.setup();
        answer = state.answer();
        performance = state.performance();
        compared = state.compared();
        chosen = state.chosen();
        differences = state.differences();
        differenceAt = state.differenceAt();
        selection = state.selection();
        insight = state.insight();
        reading = state.reading();
        strips = state.strips();
        undo = state.undo();
        redo = state.redo();
        unsaved = state.unsaved();
        fallen = state.fallen();
        leftOut = inside.leftOut();
        picks = inside.picks();
        made = inside.made();
        version = inside.version();
    }

    PlannerState state() {
        return new PlannerState(
                tune,
                edited,
                setup,
                answer,
                performance,
                compared,
                chosen,
                differences,
                differenceAt,
                selection,
                insight,
                reading,
                strips,
                undo,
                redo,
                unsaved,
                fallen);
    }

    Inside inside() {
        return new Inside(leftOut, picks, made, version);
    }

    List<Offer> offers() {
        return answer.offers();
    }

    /** The tune as played belongs to the offers: one with other places leaves nothing to point at. */
    void perform(Performance played) {
        if (performance.isPresent() && !performance.get().equals(played)) {
            if (!ShownTune.haveSamePlaces(performance.get(), played)) selection = Optional.empty();
            insight = Optional.empty();
            differenceAt = OptionalInt.empty();
        }
        performance = Optional.of(played);
    }

    /** Finds what the player picked among the offers there are now. */
    void pick() {
        chosen = picks.chosenAmong(offers());
        compared = picks.comparedAmong(offers());
        selection = selection.flatMap(this::moved);
        insight = insight.flatMap(known -> selection
                .filter(now -> now.spot().equals(known.selection().spot()))
                .map(now -> new Insight(now, known.here(), known.explanation(), known.choices(), known.locks())));
    }

    private Optional<Selection> moved(Selection before) {
        if (offers().isEmpty()) return Optional.empty();
        int offer = picks.selectedAmong(offers()).orElse(compared.get(0));
        return Optional.of(new Selection(offer, before.spot()));
    }
}
