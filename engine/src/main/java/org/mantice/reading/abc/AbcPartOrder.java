package org.mantice.reading.abc;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * An order of parts (ABC 2.1, section 3.1.9): letters, numbers behind them or behind brackets for repetition, dots for
 * the eye.
 *
 * @param letters one for each time through a part
 */
public record AbcPartOrder(List<String> letters) {
    /** Longer orders are slips of the pen. */
    private static final int MOST = 200;

    public AbcPartOrder {
        letters = List.copyOf(letters);
    }

    /** Empty if it cannot be read. */
    public static Optional<AbcPartOrder> read(String text) {
        Deque<List<String>> open = new ArrayDeque<>(List.of(new ArrayList<>()));
        List<String> last = List.of();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '(') {
                open.push(new ArrayList<>());
                last = List.of();
            } else if (c == ')') {
                if (open.size() < 2) return Optional.empty();
                last = open.pop();
                open.peek().addAll(last);
            } else if (c >= 'A' && c <= 'Z') {
                last = List.of(String.valueOf(c));
                open.peek().addAll(last);
            } else if (c >= '0' && c <= '9') {
                int from = i;
                while (i + 1 < text.length() && Character.isDigit(text.charAt(i + 1))) i++;
                int times = i - from > 1 ? MOST : Integer.parseInt(text.substring(from, i + 1));
                if (last.isEmpty() || times == 0 || (long) times * last.size() > MOST) return Optional.empty();
                for (int more = 1; more < times; more++) open.peek().addAll(last);
                last = List.of();
            } else if (c != '.' && c != ' ' && c != '*' && c != '+' && c != ',') return Optional.empty();
            if (open.size() > MOST || open.peek().size() > MOST) return Optional.empty();
        }
        return open.size() == 1 ? Optional.of(new AbcPartOrder(open.pop())) : Optional.empty();
    }
}
