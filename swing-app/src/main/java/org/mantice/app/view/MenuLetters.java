package org.mantice.app.view;

import javax.swing.AbstractButton;

/** Leaves the marked letters of commands to the menus: a button outside them would take a menu's letter for itself. */
final class MenuLetters {
    private static final int NONE = 0;

    private MenuLetters() {}

    /** The button without a marked letter. */
    static <B extends AbstractButton> B leave(B button) {
        button.setMnemonic(NONE);
        return button;
    }
}
