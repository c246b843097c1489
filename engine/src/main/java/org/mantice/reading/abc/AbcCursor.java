package org.mantice.reading.abc;

import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.TextPlace;

/** A position in one line. */
final class AbcCursor {
    /** How far a closing sign may be away, so that work stays linear; estimate. */
    private static final int FARTHEST = 2000;

    private final String text;
    private final int line;
    private final int offset;
    private int at;

    /**
     * @param line number of the line
     * @param offset characters of the line before the text
     */
    AbcCursor(String text, int line, int offset) {
        this.text = text;
        this.line = line;
        this.offset = offset;
    }

    boolean hasMore() {
        return at < text.length();
    }

    /** The next character, 0 at the end. */
    char peek() {
        return peek(0);
    }

    char peek(int ahead) {
        return at + ahead < text.length() ? text.charAt(at + ahead) : 0;
    }

    char next() {
        return text.charAt(at++);
    }

    boolean take(char wanted) {
        if (peek() != wanted || !hasMore()) return false;
        at++;
        return true;
    }

    String takeWhile(IntPredicate wanted) {
        int from = at;
        while (hasMore() && wanted.test(peek())) at++;
        return text.substring(from, at);
    }

    String takeDigits() {
        return takeWhile(c -> c >= '0' && c <= '9');
    }

    /**
     * What lies before the next such character that no backslash precedes, which is taken too; empty if there is none
     * near by.
     */
    Optional<String> takeUntil(char end) {
        int last = Math.min(text.length(), at + FARTHEST);
        for (int found = at; found < last; found++) {
            if (text.charAt(found) != end || found > at && text.charAt(found - 1) == '\\') continue;
            String taken = text.substring(at, found);
            at = found + 1;
            return Optional.of(taken);
        }
        return Optional.empty();
    }

    /** So many of the next characters, or all. */
    String ahead(int most) {
        return text.substring(at, Math.min(text.length(), at + most));
    }

    /** Looks from here on. */
    Matcher matcher(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length());
    }

    int position() {
        return at;
    }

    void moveTo(int position) {
        at = position;
    }

    String since(int position) {
        return text.substring(position, at);
    }

    TextPlace place() {
        return new TextPlace(line, offset + at + 1);
    }
}
