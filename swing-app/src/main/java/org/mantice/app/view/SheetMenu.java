package org.mantice.app.view;

import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** What can be done at the place pointed at on the sheet, in a menu beside it. */
final class SheetMenu {
    private static final List<Command> CHORDS = List.of(
            Command.CHORD_HERE, Command.CHORD_EARLIER, Command.CHORD_LATER, Command.REMOVE_CHORD, Command.ACCEPT_CHORD);
    private static final List<Command> MEASURES =
            List.of(Command.PHRASE_BEGINS, Command.BARLINES, Command.TEMPO_HERE, Command.KEY_FROM_HERE);
    private static final List<Command> DECISIONS =
            List.of(Command.SHOW_WHY, Command.LOCK, Command.LOCK_EVERY_TIME, Command.FREE);

    private final SheetView view;

    SheetMenu(SheetView view) {
        this.view = view;
    }

    /** At the mouse, for what lies there. */
    void showAt(MouseEvent event) {
        view.pointer().pointAt(event);
        menu().show(view, event.getX(), event.getY());
    }

    /** Below what is selected. */
    void showAtSelection() {
        view.pointer().selected().ifPresent(stop -> {
            Rectangle bounds = stop.bounds().getBounds();
            menu().show(view, bounds.x, bounds.y + bounds.height);
        });
    }

    private JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        for (List<Command> section : List.of(CHORDS, MEASURES, DECISIONS)) {
            if (menu.getComponentCount() > 0) menu.addSeparator();
            for (Command command : section) if (view.actions().isBound(command)) menu.add(item(command));
        }
        return menu;
    }

    private JMenuItem item(Command command) {
        return view.actions().isSwitch(command)
                ? new JCheckBoxMenuItem(view.actions().get(command))
                : new JMenuItem(view.actions().get(command));
    }
}
