package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.Words;

/**
 * One {@link Action} per command, shared by menu, button, key and test. A command that nobody has bound is disabled.
 */
public final class Actions {
    private final Words words;
    private final Map<Command, CommandAction> actions = new EnumMap<>(Command.class);

    public Actions(Words words) {
        this.words = words;
        for (Command command : Command.values()) actions.put(command, new CommandAction(command));
    }

    public Action get(Command command) {
        return actions.get(command);
    }

    /** What the command does, and in which states it can be done. */
    public void bind(Command command, Runnable work, Predicate<PlannerState> possible) {
        CommandAction action = actions.get(command);
        action.work = Optional.of(work);
        action.possible = possible;
    }

    /** Enables what is possible in a state. */
    public void follow(PlannerState state) {
        for (CommandAction action : actions.values())
            action.setEnabled(action.work.isPresent() && action.possible.test(state));
    }

    private final class CommandAction extends AbstractAction {
        private Optional<Runnable> work = Optional.empty();
        private Predicate<PlannerState> possible = state -> false;

        CommandAction(Command command) {
            String label = words.of("commands", command);
            int mark = label.indexOf('&');
            putValue(NAME, label.replace("&", ""));
            if (mark >= 0) {
                putValue(MNEMONIC_KEY, (int) Character.toUpperCase(label.charAt(mark + 1)));
                putValue(DISPLAYED_MNEMONIC_INDEX_KEY, mark);
            }
            putValue(ACTION_COMMAND_KEY, command.name());
            putValue(SHORT_DESCRIPTION, words.text("commands.hint." + command.name()));
            String key = words.text("commands.key." + command.name());
            if (!key.isEmpty()) putValue(ACCELERATOR_KEY, KeyStroke.getKeyStroke(key.replace("menu ", "ctrl ")));
            setEnabled(false);
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            work.ifPresent(Runnable::run);
        }
    }
}
