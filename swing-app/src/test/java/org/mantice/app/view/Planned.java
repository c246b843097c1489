package org.mantice.app.view;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Planners;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;

/** A planner for tests of views: everything is done at once, on the thread that asks. */
final class Planned {
    static final Words ENGLISH = Words.of(Locale.ENGLISH);

    private Planned() {}

    static PlannerModel nothing() {
        return Planners.empty();
    }

    static PlannerModel of(String tune) {
        PlannerModel model = nothing();
        model.open(States.open(tune));
        return model;
    }

    /** Commands that the views have buttons for. */
    static Actions actions(PlannerModel model, Words words) {
        Actions actions = new Actions(words);
        actions.bind(Command.STOP, model::stop, PlannerState::isWorking);
        actions.bind(Command.NEXT_DIFFERENCE, model::nextDifference, state -> !state.differences()
                .isEmpty());
        actions.bind(Command.PREVIOUS_DIFFERENCE, model::previousDifference, state -> !state.differences()
                .isEmpty());
        actions.follow(model.state());
        return actions;
    }

    /** All components of a kind inside one, in order. */
    static <T> List<T> all(Container root, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Component child : root.getComponents()) {
            if (kind.isInstance(child)) found.add(kind.cast(child));
            if (child instanceof Container inner) found.addAll(all(inner, kind));
        }
        return found;
    }

    /** The component of a kind with this accessible name. */
    static <T extends Component> T named(Container root, Class<T> kind, String name) {
        return all(root, kind).stream()
                .filter(each -> name.equals(each.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind.getSimpleName() + " named " + name));
    }
}
