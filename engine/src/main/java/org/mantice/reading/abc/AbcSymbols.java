package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.reading.abc.AbcElement.Field;
import org.mantice.reading.abc.AbcElement.Flaw;

/**
 * Puts what stands in symbol lines (s:; ABC 2.1, section 4.15) before the notes that it belongs to: decorations, chord
 * symbols and annotations, laid under the line of music before as words are: one a note, {@code *} for a note without,
 * {@code |} for the next measure.
 */
final class AbcSymbols {
    private final AbcMarks marks;
    private final Map<Integer, List<AbcElement>> before = new HashMap<>();

    AbcSymbols(AbcMarks marks) {
        this.marks = marks;
    }

    /** The body with its symbol lines carried out; what finds no note is a flaw in their place. */
    List<AbcElement> laid(List<AbcElement> body) {
        int lineStart = 0;
        int lineEnd = 0;
        for (int i = 0; i < body.size(); i++) {
            if (body.get(i) instanceof AbcElement.LineEnd) {
                lineStart = lineEnd;
                lineEnd = i + 1;
            }
            if (body.get(i) instanceof Field field && field.letter() == 's') lay(field, body, lineStart, lineEnd, i);
        }
        List<AbcElement> laid = new ArrayList<>();
        for (int i = 0; i < body.size(); i++) {
            laid.addAll(before.getOrDefault(i, List.of()));
            if (!(body.get(i) instanceof Field field && field.letter() == 's')) laid.add(body.get(i));
        }
        return laid;
    }

    private void lay(Field field, List<AbcElement> body, int from, int to, int index) {
        AbcCursor cursor = new AbcCursor(field.text(), field.place().line(), 2);
        int at = from;
        while (cursor.hasMore()) {
            if (cursor.take(' ') || cursor.take('\t')) continue;
            if (cursor.take('|')) {
                while (at < to && !(body.get(at) instanceof AbcElement.Bar)) at++;
                at++;
                continue;
            }
            while (at < to && !isNote(body.get(at))) at++;
            if (!cursor.take('*')) readSymbols(cursor, at < to ? at : index, at < to);
            at++;
        }
    }

    private static boolean isNote(AbcElement element) {
        return element instanceof AbcElement.Note || element instanceof AbcElement.Chord;
    }

    /** Those that stand together belong to one note. */
    private void readSymbols(AbcCursor cursor, int index, boolean found) {
        List<AbcElement> symbols = new ArrayList<>();
        int from = cursor.position();
        while (cursor.hasMore() && " \t|*".indexOf(cursor.peek()) < 0) {
            AbcElement stray = new Flaw(cursor.place(), Flaw.Kind.UNKNOWN, String.valueOf(cursor.peek()));
            if (!marks.read(cursor, symbols)) {
                symbols.add(stray);
                cursor.next();
            }
        }
        List<AbcElement> into = before.computeIfAbsent(index, i -> new ArrayList<>());
        if (found) into.addAll(symbols);
        else into.add(new Flaw(cursor.place(), Flaw.Kind.FIELD, "s:" + cursor.since(from)));
    }
}
