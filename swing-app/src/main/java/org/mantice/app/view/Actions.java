package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
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
        return action(command);
    }

    private CommandAction action(Command command) {
        return Objects.requireNonNull(actions.get(command), command.name());
    }

    /** Whether somebody has said what the command does: a host may leave out what it cannot do. */
    public boolean isBound(Command command) {
        return action(command).work.isPresent();
    }

    /** What the command does, and in which states it can be done. */
    public void bind(Command command, Runnable work, Predicate<PlannerState> possible) {
        CommandAction action = action(command);
        action.work = Optional.of(work);
        action.possible = possible;
    }

    /** A command that is on or off, as a tick in the menu shows; on in the states that {@code isOn} names. */
    public void bindSwitch(
            Command command, Runnable work, Predicate<PlannerState> possible, Predicate<PlannerState> isOn) {
        bind(command, work, possible);
        action(command).isOn = Optional.of(isOn);
    }

    /** Whether the command is one that is on or off. */
    public boolean isSwitch(Command command) {
        return action(command).isOn.isPresent();
    }

    /** Enables what is possible in a state, and ticks what is on in it. */
    public void follow(PlannerState state) {
        for (CommandAction action : actions.values()) {
            action.setEnabled(action.work.isPresent() && action.possible.test(state));
            action.isOn.ifPresent(isOn -> action.putValue(Action.SELECTED_KEY, isOn.test(state)));
        }
    }

    /** Says after the label what exactly would be done, as in "Undo: register"; empty for the label alone. */
    public void specify(Command command, Optional<String> what) {
        CommandAction action = action(command);
        action.putValue(
                Action.NAME, action.label.text() + what.map(text -> ": " + text).orElse(""));
    }

    /** The keys of a command, the one shown in the menu first. */
    public List<KeyStroke> keys(Command command) {
        return action(command).keys;
    }

    /** The keys of a command in words, as {@code "Ctrl+Shift+Z, Ctrl+Y"}; empty for none. */
    public String keyWords(Command command) {
        return keys(command).stream().map(Keys::words).collect(Collectors.joining(", "));
    }

    /** A key in words, as {@code "Ctrl+Z"}. */
    public static String words(KeyStroke key) {
        return Keys.words(key);
    }

    /** Makes the keys work wherever the focus is within a component, without any menu. */
    public void installKeys(JComponent component) {
        for (Command command : Command.values()) {
            component.getActionMap().put(command, get(command));
            for (KeyStroke key : keys(command))
                component
                        .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                        .put(key, command);
        }
    }

    private final class CommandAction extends AbstractAction {
        private final transient MarkedLabel label;
        private final transient List<KeyStroke> keys;
        private transient Optional<Runnable> work = Optional.empty();
        private transient Optional<Predicate<PlannerState>> isOn = Optional.empty();
        private transient Predicate<PlannerState> possible = state -> false;

        CommandAction(Command command) {
            label = MarkedLabel.of(words.of("commands", command));
            putValue(NAME, label.text());
            label.mnemonic().ifPresent(key -> {
                putValue(MNEMONIC_KEY, key);
                putValue(DISPLAYED_MNEMONIC_INDEX_KEY, label.index());
            });
            putValue(ACTION_COMMAND_KEY, command.name());
            putValue(SHORT_DESCRIPTION, words.text("commands.hint." + command.name()));
            keys = Keys.of(words.text("commands.key." + command.name()));
            if (!keys.isEmpty()) putValue(ACCELERATOR_KEY, keys.get(0));
            setEnabled(false);
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            work.ifPresent(Runnable::run);
        }
    }
}
