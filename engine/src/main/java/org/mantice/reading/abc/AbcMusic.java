package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.fault.TextPlace;
import org.mantice.reading.abc.AbcElement.Flaw;

/** Reads one line of music, sign by sign; never looks back over more than it has taken. */
final class AbcMusic {
    private static final String RESERVED = "#*;?@";

    private final AbcCursor cursor;
    private final AbcMarks marks;
    private final List<AbcElement> elements = new ArrayList<>();
    private final AbcNotes notes;

    AbcMusic(AbcCursor cursor, AbcMarks marks) {
        this.cursor = cursor;
        this.marks = marks;
        this.notes = new AbcNotes(cursor, marks, elements);
    }

    List<AbcElement> read() {
        while (cursor.hasMore()) readNext();
        return elements;
    }

    private void readNext() {
        TextPlace place = cursor.place();
        char c = cursor.peek();
        if (c == ' ' || c == '\t' || c == '`' || c == '$') cursor.next();
        else if (AbcNotes.mayStart(c) && notes.readNote(elements)) return;
        else if (isBarLine()) readBar(place);
        else
            switch (c) {
                case '[' -> readBracket(place);
                case '{' -> notes.readGrace();
                case '(' -> readRound(place);
                case ')', '-' -> {
                    cursor.next();
                    elements.add(c == '-' ? new AbcElement.Tie(place) : new AbcElement.Slur(place, false));
                }
                case '&' -> {
                    cursor.next();
                    if (!cursor.take(')')) elements.add(new AbcElement.Overlay(place));
                }
                case '<', '>' -> {
                    int dots = cursor.takeWhile(sign -> sign == c).length();
                    elements.add(new AbcElement.Broken(place, c == '>' ? dots : -dots));
                }
                case 'z', 'x', 'Z', 'X', 'y' -> readRest(place);
                default -> readOther(place);
            }
    }

    private boolean isBarLine() {
        char c = cursor.peek();
        char then = cursor.peek(1);
        return c == '|'
                || c == ':' && (then == '|' || then == ':')
                || c == '[' && (then == '|' || then == ']')
                || c == '.' && then == '|';
    }

    private void readBar(TextPlace place) {
        cursor.take('.');
        int from = cursor.position();
        char before = 0;
        while (cursor.hasMore()) {
            char c = cursor.peek();
            boolean opens = c == '[' && (cursor.peek(1) == '|' || cursor.peek(1) == ']');
            boolean closes = c == ']' && before != 0;
            if (c != '|' && c != ':' && !opens && !closes) break;
            before = cursor.next();
        }
        elements.add(new AbcElement.Bar(place, cursor.since(from)));
        if (isDigit(cursor.peek())) readEnding();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private void readEnding() {
        TextPlace place = cursor.place();
        int from = cursor.position();
        cursor.takeDigits();
        while ((cursor.peek() == ',' || cursor.peek() == '-') && isDigit(cursor.peek(1))) {
            cursor.next();
            cursor.takeDigits();
        }
        elements.add(new AbcElement.Ending(place, cursor.since(from)));
    }

    private void readBracket(TextPlace place) {
        char then = cursor.peek(1);
        if (isDigit(then)) {
            cursor.next();
            readEnding();
        } else if (then == '"' && !isChordWithText()) {
            cursor.next();
            cursor.next();
            Optional<String> text = cursor.takeUntil('"');
            cursor.take(']');
            if (text.isEmpty()) elements.add(new Flaw(place, Flaw.Kind.UNCLOSED, "\""));
            else elements.add(new AbcElement.Ending(place, AbcEscapes.read(text.get())));
        } else if (Character.isLetter(then) && cursor.peek(2) == ':' && then < 128) readInlineField(place);
        else notes.readChord();
    }

    /** A text behind an opening bracket names an ending, unless a note and the closing bracket follow. */
    private boolean isChordWithText() {
        String ahead = cursor.ahead(200);
        int close = ahead.indexOf('"', 2);
        if (close < 0) return false;
        int end = ahead.indexOf(']', close);
        if (end < 0) return false;
        String between = ahead.substring(close + 1, end);
        return between.indexOf('|') < 0 && between.chars().anyMatch(c -> c >= 'A' && c <= 'G' || c >= 'a' && c <= 'g');
    }

    private void readInlineField(TextPlace place) {
        cursor.next();
        char letter = cursor.next();
        cursor.next();
        Optional<String> text = cursor.takeUntil(']');
        if (text.isEmpty()) elements.add(new Flaw(place, Flaw.Kind.UNCLOSED, "[" + letter + ":"));
        String value = text.orElseGet(() -> cursor.takeWhile(c -> c != '|')).strip();
        if (letter == 'U' && !marks.define(value)) elements.add(new Flaw(place, Flaw.Kind.FIELD, "U:" + value));
        else if (letter == 'I') elements.add(AbcTuneParser.directive(place, value));
        else if (letter != 'r') elements.add(new AbcElement.Field(place, letter, value));
    }

    private void readRound(TextPlace place) {
        cursor.next();
        if (!isDigit(cursor.peek())) {
            if (!cursor.take('&')) elements.add(new AbcElement.Slur(place, true));
            return;
        }
        int count = number(cursor.takeDigits()).orElse(0);
        OptionalInt time = OptionalInt.empty();
        OptionalInt reach = OptionalInt.empty();
        if (cursor.take(':')) {
            time = number(cursor.takeDigits());
            if (cursor.take(':')) reach = number(cursor.takeDigits());
        }
        boolean sound = count >= 2 && count <= 64 && time.orElse(1) >= 1 && reach.orElse(1) >= 1;
        if (sound) elements.add(new AbcElement.Tuplet(place, count, time, reach));
        else elements.add(new Flaw(place, Flaw.Kind.UNKNOWN, "(" + count));
    }

    /** Up to two digits; a larger number is 0, which means nothing anywhere. */
    private static OptionalInt number(String digits) {
        if (digits.isEmpty()) return OptionalInt.empty();
        return OptionalInt.of(digits.length() > 2 ? 0 : Integer.parseInt(digits));
    }

    private void readRest(TextPlace place) {
        char c = cursor.next();
        if (c == 'y') {
            cursor.takeWhile(sign -> isDigit((char) sign) || sign == '/');
            elements.add(new AbcElement.Spacer(place));
        } else if (c == 'z' || c == 'x') elements.add(new AbcElement.Rest(place, AbcLength.read(cursor, elements)));
        else {
            String digits = cursor.takeDigits();
            int measures = digits.isEmpty() ? 1 : digits.length() > 6 ? 0 : Integer.parseInt(digits);
            if (measures == 0) elements.add(new Flaw(place, Flaw.Kind.LENGTH, c + digits));
            elements.add(new AbcElement.MeasureRest(place, Math.max(1, measures)));
        }
    }

    private void readOther(TextPlace place) {
        char c = cursor.peek();
        if (c == '.' && (cursor.peek(1) == '(' || cursor.peek(1) == '-')) cursor.next();
        else if (marks.read(cursor, elements)) return;
        else if (c == '+' && readOldChord(place)) return;
        else if (isDigit(c) && followsBar()) {
            elements.add(new Flaw(place, Flaw.Kind.LOOSE_ENDING, String.valueOf(c)));
            readEnding();
        } else {
            String sign = String.valueOf(cursor.next());
            if (Character.isHighSurrogate(sign.charAt(0)) && cursor.hasMore()) sign += cursor.next();
            Flaw.Kind kind = RESERVED.contains(sign) ? Flaw.Kind.RESERVED : Flaw.Kind.UNKNOWN;
            elements.add(new Flaw(place, kind, sign));
        }
    }

    private boolean followsBar() {
        return !elements.isEmpty() && elements.get(elements.size() - 1) instanceof AbcElement.Bar;
    }

    /** A chord between plus signs, as the oldest versions have it. */
    private boolean readOldChord(TextPlace place) {
        int from = cursor.position();
        cursor.next();
        List<AbcElement> members = new ArrayList<>();
        while (AbcNotes.mayStart(cursor.peek()) && notes.readNote(members)) {} // every round takes a note
        if (members.isEmpty() || !cursor.take('+')) {
            cursor.moveTo(from);
            return false;
        }
        elements.add(new Flaw(place, Flaw.Kind.OLD_STYLE, cursor.since(from)));
        elements.add(new AbcElement.Chord(place, members, AbcLength.read(cursor, elements)));
        return true;
    }
}
