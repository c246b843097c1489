package org.mantice.app.view;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.mantice.app.model.Insight;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Selection;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;

/** What the commands do that need nothing but the planner. */
final class PlannerCommands {
    private final PlannerModel model;
    private final Words words;
    private final Actions actions;

    private PlannerCommands(PlannerModel model, Words words, Actions actions) {
        this.model = model;
        this.words = words;
        this.actions = actions;
    }

    /** Binds them and has them follow the model. */
    static void bind(PlannerModel model, Words words, Actions actions) {
        PlannerCommands commands = new PlannerCommands(model, words, actions);
        commands.bindChanges();
        commands.bindChoosing();
        commands.bindStrips();
        model.addListener(commands::follow);
        commands.follow(model.state());
    }

    private void follow(PlannerState state) {
        actions.specify(Command.UNDO, state.undo().map(words::text));
        actions.specify(Command.REDO, state.redo().map(words::text));
        actions.follow(state);
    }

    private void bindChanges() {
        actions.bind(Command.UNDO, model::undo, state -> state.undo().isPresent());
        actions.bind(Command.REDO, model::redo, state -> state.redo().isPresent());
        actions.bind(Command.LOCK, () -> model.lockSelected(false), PlannerCommands::somethingSelected);
        actions.bind(Command.LOCK_EVERY_TIME, () -> model.lockSelected(true), PlannerCommands::somethingSelected);
        actions.bind(Command.FREE, model::freeSelected, state -> state.insight()
                .map(Insight::locks)
                .filter(locks -> !locks.isEmpty())
                .isPresent());
        actions.bind(Command.FREE_ALL, model::freeAll, state -> !state.setup()
                .locks()
                .isEmpty());
        actions.bind(Command.PLAN_AGAIN, model::planAgain, state -> state.tune().isPresent() && !state.isWorking());
        actions.bind(Command.STOP, model::stop, PlannerState::isWorking);
    }

    private static boolean somethingSelected(PlannerState state) {
        return state.selection().isPresent();
    }

    private void bindChoosing() {
        actions.bind(
                Command.CHOOSE_SELECTED,
                () -> model.state().selection().map(Selection::offer).ifPresent(model::choose),
                PlannerCommands::somethingSelected);
        List<Command> letters = List.of(Command.CHOOSE_A, Command.CHOOSE_B, Command.CHOOSE_C, Command.CHOOSE_D);
        for (int i = 0; i < letters.size(); i++) {
            String letter = String.valueOf((char) ('A' + i));
            actions.bind(letters.get(i), () -> offer(letter, model.state()).ifPresent(model::choose), state -> offer(
                            letter, state)
                    .isPresent());
        }
        actions.bind(Command.NEXT_DIFFERENCE, model::nextDifference, state -> !state.differences()
                .isEmpty());
        actions.bind(Command.PREVIOUS_DIFFERENCE, model::previousDifference, state -> !state.differences()
                .isEmpty());
    }

    private static Optional<Integer> offer(String letter, PlannerState state) {
        return IntStream.range(0, state.offers().size())
                .boxed()
                .filter(i -> state.offers().get(i).letter().equals(letter))
                .findFirst();
    }

    private void bindStrips() {
        strip(Command.SHOW_FINGERS, Strip.FINGERS);
        strip(Command.SHOW_REGISTERS, Strip.REGISTERS);
        strip(Command.SHOW_BELLOWS, Strip.BELLOWS);
        strip(Command.SHOW_BUTTONS, Strip.BUTTONS);
    }

    private void strip(Command command, Strip strip) {
        actions.bindSwitch(
                command,
                () -> model.show(strip, !model.state().strips().contains(strip)),
                state -> true,
                state -> state.strips().contains(strip));
    }
}
