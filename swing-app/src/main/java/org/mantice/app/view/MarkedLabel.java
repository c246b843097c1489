package org.mantice.app.view;

import java.util.Optional;

/**
 * A label in which an ampersand stands before the mnemonic.
 *
 * @param text without the ampersand
 * @param mnemonic the key of the letter, as {@link java.awt.event.KeyEvent} counts keys; empty without an ampersand
 * @param index of the letter in the text; -1 without an ampersand
 */
public record MarkedLabel(String text, Optional<Integer> mnemonic, int index) {
    public static MarkedLabel of(String marked) {
        int mark = marked.indexOf('&');
        if (mark < 0 || mark == marked.length() - 1) return new MarkedLabel(marked, Optional.empty(), -1);
        int key = Character.toUpperCase(marked.charAt(mark + 1));
        return new MarkedLabel(marked.substring(0, mark) + marked.substring(mark + 1), Optional.of(key), mark);
    }
}
