package org.mantice.app.view;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.InputMap;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;

/** Walks a tree of components and finds those that take the keyboard's focus and have no name for who cannot see them. */
public final class AccessibleNames {
    private final List<String> nameless = new ArrayList<>();
    private int seen;

    private AccessibleNames() {}

    /** @throws AssertionError if one has no name, or if none was seen at all */
    public static void check(Container root) {
        AccessibleNames walk = new AccessibleNames();
        walk.walk(root, root.getClass().getSimpleName());
        if (walk.seen == 0) throw new AssertionError("nothing in " + root.getClass() + " takes the focus");
        if (!walk.nameless.isEmpty())
            throw new AssertionError("without an accessible name:\n" + String.join("\n", walk.nameless));
    }

    private void walk(Component component, String path) {
        if (takesFocus(component)) {
            seen++;
            String name = component.getAccessibleContext().getAccessibleName();
            if (name == null || name.isBlank()) nameless.add(path);
        }
        if (component instanceof Container container)
            for (Component child : container.getComponents())
                walk(child, path + " > " + child.getClass().getName().replaceAll(".*[.]", ""));
    }

    /**
     * As Swing decides whether Tab stops at a component ({@link javax.swing.LayoutFocusTraversalPolicy}): it can have the
     * focus, and has keys of its own; tables and boxes to choose from always. What is hidden
     * by itself is passed over, what is in a hidden card or box is not.
     */
    private static boolean takesFocus(Component component) {
        if (!component.isVisible() || !component.isFocusable() || !(component instanceof JComponent swing))
            return false;
        if (swing instanceof JTable || swing instanceof JComboBox) return true;
        InputMap keys = swing.getInputMap(JComponent.WHEN_FOCUSED);
        KeyStroke[] all = keys.allKeys();
        return all != null && all.length > 0;
    }
}
