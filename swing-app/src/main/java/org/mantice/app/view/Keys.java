package org.mantice.app.view;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.KeyStroke;

/**
 * Keys as the bundle writes them: several parted by commas, the first shown in the menu; each as {@link
 * KeyStroke#getKeyStroke(String)} reads it, with {@code menu} in front for the platform's own key of menus.
 */
final class Keys {
    private static final String MENU = "menu ";

    private Keys() {}

    /**
     * The keys, in order; none for an empty text.
     *
     * @throws IllegalArgumentException if one of them is no key
     */
    static List<KeyStroke> of(String text) {
        return of(text, menuMask());
    }

    static List<KeyStroke> of(String text, int menuMask) {
        List<KeyStroke> keys = new ArrayList<>();
        for (String one : text.split(",")) if (!one.isBlank()) keys.add(key(one.strip(), menuMask));
        return List.copyOf(keys);
    }

    private static KeyStroke key(String text, int menuMask) {
        boolean menu = text.startsWith(MENU);
        KeyStroke plain = KeyStroke.getKeyStroke(menu ? text.substring(MENU.length()) : text);
        if (plain == null)
            throw new IllegalArgumentException(
                    "key is " + text + "; allowed: as \"F3\", \"shift F3\", \"menu shift S\"");
        return menu ? KeyStroke.getKeyStroke(plain.getKeyCode(), plain.getModifiers() | menuMask) : plain;
    }

    /** In words, as the platform writes keys. */
    static String words(KeyStroke key) {
        String held = InputEvent.getModifiersExText(key.getModifiers());
        return (held.isEmpty() ? "" : held + "+") + KeyEvent.getKeyText(key.getKeyCode());
    }

    private static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}
