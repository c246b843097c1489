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
import org.mantice.app.sheet.PlanBand;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.Spot;
import org.mantice.app.words.PlanWords;
import org.mantice.performance.Performance;

/** What the sheet shows of the planner's state. */
final class SheetContents {
    private final PlanWords names;

    SheetContents(PlanWords names) {
        this.names = names;
    }

    /** Empty until the tune is known as played. */
    Optional<SheetContent> of(PlannerState state) {
        return state.performance()
                .map(performance -> new SheetContent(
                        performance,
                        state.setup().accordion(),
                        state.reading().cells(performance),
                        bands(state),
                        state.strips(),
                        selectedBand(state),
                        selected(state),
                        current(state)));
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

    /** Index among the plans compared; -1 if nothing in one of them is selected. */
    static int selectedBand(PlannerState state) {
        return state.selection()
                .map(selection -> state.compared().indexOf(selection.offer()))
                .orElse(-1);
    }

    static Optional<Spot> selected(PlannerState state) {
        return selectedBand(state) < 0 ? Optional.empty() : state.selection().map(Selection::spot);
    }

    /** The place of the difference stepped to. */
    static Optional<Spot> current(PlannerState state) {
        return state.differenceAt().isPresent()
                        && state.differenceAt().getAsInt() < state.differences().size()
                ? Optional.of(
                        state.differences().get(state.differenceAt().getAsInt()).spot())
                : Optional.empty();
    }

    /** Whether two states look the same on the sheet but for what is selected or stepped to. */
    static boolean isLaidOutAlike(PlannerState one, PlannerState other) {
        return isSame(one.performance(), other.performance())
                && one.setup().accordion().equals(other.setup().accordion())
                && one.setup().locks().equals(other.setup().locks())
                && one.reading().equals(other.reading())
                && one.strips().equals(other.strips())
                && one.chosen() == other.chosen()
                && areSame(shown(one), shown(other))
                && one.differences().equals(other.differences());
    }

    private static List<Offer> shown(PlannerState state) {
        return state.compared().stream().map(state.offers()::get).toList();
    }

    /** Plans and performances are large and never changed: the same ones are compared, not their contents. */
    private static boolean areSame(List<Offer> one, List<Offer> other) {
        if (one.size() != other.size()) return false;
        for (int i = 0; i < one.size(); i++)
            if (one.get(i).plan() != other.get(i).plan()
                    || !one.get(i).letter().equals(other.get(i).letter())) return false;
        return true;
    }

    private static boolean isSame(Optional<Performance> one, Optional<Performance> other) {
        return one.orElse(null) == other.orElse(null);
    }
}
