package org.mantice.reading.abc;

import org.mantice.fault.TextPlace;

/**
 * A line of the file.
 *
 * @param number from 1
 */
record AbcLine(int number, String text) {
    TextPlace place() {
        return new TextPlace(number, 1);
    }

    /** Up to a percent sign that no backslash precedes. */
    AbcLine withoutComment() {
        for (int at = text.indexOf('%'); at >= 0; at = text.indexOf('%', at + 1))
            if (at == 0 || text.charAt(at - 1) != '\\')
                return new AbcLine(number, text.substring(0, at).stripTrailing());
        return this;
    }

    boolean isBlank() {
        return text.isBlank();
    }
}
