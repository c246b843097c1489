package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.TextPlace;
import org.mantice.reading.abc.AbcElement.Flaw;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Step;

/** Reads notes, chords and grace notes. */
final class AbcNotes {
    private static final Pattern NOTE =
            Pattern.compile("(\\^{1,2}|_{1,2}|=)?(\\d{0,3}/?\\d{0,3}(?=[A-Ga-g]))?([A-Ga-g])([,']*)");
    /** Beyond this no instrument has a key. */
    private static final int MOST_MARKS = 12;

    private final AbcCursor cursor;
    private final AbcMarks marks;
    private final List<AbcElement> elements;

    AbcNotes(AbcCursor cursor, AbcMarks marks, List<AbcElement> elements) {
        this.cursor = cursor;
        this.marks = marks;
        this.elements = elements;
    }

    static boolean mayStart(char c) {
        return c >= 'A' && c <= 'G' || c >= 'a' && c <= 'g' || c == '^' || c == '_' || c == '=';
    }

    /** Reads a note if one stands here. */
    boolean readNote(List<AbcElement> into) {
        Matcher matcher = cursor.matcher(NOTE);
        if (!matcher.lookingAt()) return false;
        boolean fraction = matcher.group(2) != null && !matcher.group(2).isEmpty();
        if (fraction && !("^".equals(matcher.group(1)) || "_".equals(matcher.group(1)))) return false;
        TextPlace place = cursor.place();
        cursor.moveTo(matcher.end());
        char letter = matcher.group(3).charAt(0);
        String octaves = matcher.group(4);
        if (octaves.length() > MOST_MARKS) into.add(new Flaw(place, Flaw.Kind.UNKNOWN, octaves));
        int shift = octaves.length() > MOST_MARKS
                ? 0
                : octaves.chars().map(mark -> mark == ',' ? -1 : 1).sum();
        List<AbcElement> flaws = new ArrayList<>();
        MusicalTime length = AbcLength.read(cursor, flaws);
        into.addAll(flaws);
        into.add(new AbcElement.Note(
                place,
                Step.valueOf(String.valueOf(Character.toUpperCase(letter))),
                fraction ? OptionalInt.empty() : accidental(matcher.group(1)),
                fraction ? Optional.of(matcher.group(1) + matcher.group(2)) : Optional.empty(),
                (Character.isLowerCase(letter) ? 5 : 4) + shift,
                length));
        return true;
    }

    private static OptionalInt accidental(String signs) {
        if (signs == null) return OptionalInt.empty();
        return switch (signs) {
            case "^" -> OptionalInt.of(1);
            case "^^" -> OptionalInt.of(2);
            case "_" -> OptionalInt.of(-1);
            case "__" -> OptionalInt.of(-2);
            default -> OptionalInt.of(0);
        };
    }

    /** Reads a chord whose bracket stands here. */
    void readChord() {
        TextPlace place = cursor.place();
        cursor.next();
        List<AbcElement> members = members(place, "[", ']');
        MusicalTime length = AbcLength.read(cursor, elements);
        elements.add(new AbcElement.Chord(place, members, length));
    }

    void readGrace() {
        TextPlace place = cursor.place();
        cursor.next();
        cursor.take('/');
        elements.add(new AbcElement.Grace(place, members(place, "{", '}')));
    }

    private List<AbcElement> members(TextPlace place, String open, char close) {
        List<AbcElement> members = new ArrayList<>();
        while (cursor.hasMore()) {
            if (cursor.take(close)) return members;
            if (cursor.peek() == '|' || startsTuplet()) break;
            readMember(members);
        }
        elements.add(new Flaw(place, Flaw.Kind.UNCLOSED, open));
        return members;
    }

    /** A tuplet inside means that the closing bracket was forgotten. */
    private boolean startsTuplet() {
        return cursor.peek() == '(' && cursor.peek(1) >= '0' && cursor.peek(1) <= '9';
    }

    private void readMember(List<AbcElement> members) {
        TextPlace here = cursor.place();
        char c = cursor.peek();
        if (mayStart(c) && readNote(members)) return;
        if (c == 'z' || c == 'x') {
            cursor.next();
            members.add(new AbcElement.Rest(here, AbcLength.read(cursor, elements)));
        } else if (c == '[') readInner(members);
        else if (c == '-') {
            cursor.next();
            members.add(new AbcElement.Tie(here));
        } else if (c == '(' || c == ')') {
            cursor.next();
            members.add(new AbcElement.Slur(here, c == '('));
        } else if (c == ' ' || c == '\t' || c == '`' || c == '/') cursor.next();
        else if (!marks.read(cursor, members)) {
            members.add(new Flaw(here, Flaw.Kind.UNKNOWN, String.valueOf(cursor.next())));
        }
    }

    /** A chord among grace notes. */
    private void readInner(List<AbcElement> members) {
        TextPlace place = cursor.place();
        cursor.next();
        List<AbcElement> inner = new ArrayList<>();
        while (cursor.hasMore() && cursor.peek() != ']' && cursor.peek() != '}' && cursor.peek() != '|')
            if (!mayStart(cursor.peek()) || !readNote(inner))
                inner.add(new Flaw(cursor.place(), Flaw.Kind.UNKNOWN, String.valueOf(cursor.next())));
        if (!cursor.take(']')) members.add(new Flaw(place, Flaw.Kind.UNCLOSED, "["));
        members.add(new AbcElement.Chord(place, inner, AbcLength.read(cursor, elements)));
    }
}
