package org.mantice.app.view;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.app.model.Difference;
import org.mantice.app.model.Offer;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Selection;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.PlanBand;
import org.mantice.app.sheet.Pointing;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.Spot;
import org.mantice.app.words.PlanWords;

/** What the sheet shows: the tune with the edits of now, and below it the plans, unless they are of another order of play. */
final class SheetContents {
    private final PlanWords names;
    private final TuneEditor editor;

    SheetContents(PlanWords names, TuneEditor editor) {
        this.names = names;
        this.editor = editor;
    }

    /** Empty until the tune is known as played. */
    Optional<SheetContent> of(PlannerState state) {
        return editor.shown()
                .map(performance -> new SheetContent(
                        performance,
                        state.setup().accordion(),
                        state.reading().cells(performance),
                        editor.plansFit() ? bands(state) : List.of(),
                        state.strips(),
                        pointing(state)));
    }

    private List<PlanBand> bands(PlannerState state) {
        Set<Spot> differing = new HashSet<>();
        for (Difference difference : state.differences()) differing.add(difference.spot());
        List<PlanBand> bands = new ArrayList<>();
        for (int offer : state.compared()) {
            Offer shown = state.offers().get(offer);
            bands.add(new PlanBand(
                    shown.letter(),
                    shown.letter() + "  " + names.label(shown.plan().label()),
                    bands.size(),
                    offer == state.chosen(),
                    shown.plan(),
                    differing,
                    state.setup().locks()));
        }
        return bands;
    }

    Pointing pointing(PlannerState state) {
        return new Pointing(selectedBand(state), selected(state), current(state), editor.selected());
    }

    /** Index among the plans compared; -1 if nothing in one of them is selected. */
    private int selectedBand(PlannerState state) {
        if (!editor.plansFit()) return -1;
        return state.selection()
                .map(selection -> state.compared().indexOf(selection.offer()))
                .orElse(-1);
    }

    private Optional<Spot> selected(PlannerState state) {
        return selectedBand(state) < 0 ? Optional.empty() : state.selection().map(Selection::spot);
    }

    /** The place of the difference stepped to. */
    private Optional<Spot> current(PlannerState state) {
        return editor.plansFit()
                        && state.differenceAt().isPresent()
                        && state.differenceAt().getAsInt() < state.differences().size()
                ? Optional.of(
                        state.differences().get(state.differenceAt().getAsInt()).spot())
                : Optional.empty();
    }

    /** Whether two contents look the same but for what is pointed at. */
    static boolean areLaidOutAlike(Optional<SheetContent> one, Optional<SheetContent> other) {
        if (one.isEmpty() || other.isEmpty()) return one.isEmpty() && other.isEmpty();
        SheetContent a = one.get();
        SheetContent b = other.get();
        return a.performance() == b.performance()
                && a.accordion().equals(b.accordion())
                && a.strips().equals(b.strips())
                && a.cells().equals(b.cells())
                && areSame(a.bands(), b.bands());
    }

    /** Plans are large and never changed: the same ones are compared, not their contents. */
    private static boolean areSame(List<PlanBand> one, List<PlanBand> other) {
        if (one.size() != other.size()) return false;
        for (int i = 0; i < one.size(); i++) {
            PlanBand a = one.get(i);
            PlanBand b = other.get(i);
            if (a.plan() != b.plan()
                    || a.chosen() != b.chosen()
                    || !a.title().equals(b.title())
                    || !a.differing().equals(b.differing())
                    || !a.locks().equals(b.locks())) return false;
        }
        return true;
    }
}
