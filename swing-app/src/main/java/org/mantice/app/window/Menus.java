package org.mantice.app.window;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.view.MarkedLabel;
import org.mantice.app.words.Words;
import org.mantice.app.work.Remembered;

/** The menu bar: a menu for each group of commands. */
final class Menus {
    private final Words words;
    private final Actions actions;
    private final Recent recent;
    private final JMenuBar bar = new JMenuBar();

    /** The recent files: where they are listed, and how one is opened. */
    record Recent(Supplier<Remembered> remembered, Consumer<Path> open) {}

    Menus(Words words, Actions actions, Recent recent) {
        this.words = words;
        this.actions = actions;
        this.recent = recent;
    }

    /** With its menus still empty. */
    JMenuBar bar() {
        for (Command.Group group : Command.Group.values()) {
            JMenu menu = new JMenu();
            label(menu, words.of("commands", group));
            bar.add(menu);
        }
        bar.getAccessibleContext().setAccessibleName(words.text("window.menus"));
        return bar;
    }

    /** Puts the commands into the menus. */
    void fill() {
        for (Command.Group group : Command.Group.values()) fill(bar.getMenu(group.ordinal()), group);
    }

    private void fill(JMenu menu, Command.Group group) {
        for (Command command : Command.values()) {
            if (command.group() != group) continue;
            if (startsSection(command)) menu.addSeparator();
            menu.add(item(command));
            if (command == Command.OPEN_PLAN) menu.add(recentMenu());
        }
    }

    private static boolean startsSection(Command command) {
        return switch (command) {
            case ANOTHER_TUNE,
                    SAVE,
                    EXPORT_JSON,
                    QUIT,
                    LOCK,
                    PROPOSE_CHORDS,
                    PHRASE_BEGINS,
                    TIMES_THROUGH,
                    CHOOSE_SELECTED,
                    NEXT_DIFFERENCE,
                    SHOW_SETUP,
                    LARGER,
                    LIGHT,
                    ENGLISH -> true;
            default -> false;
        };
    }

    private JMenuItem item(Command command) {
        return actions.isSwitch(command)
                ? new JCheckBoxMenuItem(actions.get(command))
                : new JMenuItem(actions.get(command));
    }

    private static void label(AbstractButton item, String marked) {
        MarkedLabel label = MarkedLabel.of(marked);
        item.setText(label.text());
        label.mnemonic().ifPresent(item::setMnemonic);
    }

    /** Listed anew whenever it is opened. */
    private JMenu recentMenu() {
        JMenu menu = new JMenu();
        label(menu, words.text("commands.recent"));
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                fill(menu);
            }

            @Override
            public void menuDeselected(MenuEvent event) {}

            @Override
            public void menuCanceled(MenuEvent event) {}
        });
        fill(menu);
        return menu;
    }

    private void fill(JMenu menu) {
        menu.removeAll();
        for (Remembered.Recent file : recent.remembered().get().recent()) {
            String name = String.valueOf(file.file().getFileName());
            JMenuItem item = new JMenuItem(file.missing() ? words.text("window.recent.missing", name) : name);
            item.setToolTipText(file.file().toString());
            item.addActionListener(event -> recent.open().accept(file.file()));
            menu.add(item);
        }
        if (menu.getItemCount() == 0) {
            JMenuItem none = new JMenuItem(words.text("window.recent.none"));
            none.setEnabled(false);
            menu.add(none);
        }
    }
}
