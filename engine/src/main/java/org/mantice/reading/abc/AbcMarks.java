package org.mantice.reading.abc;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.mantice.fault.TextPlace;
import org.mantice.reading.abc.AbcElement.Flaw;

/** Decorations and texts at notes, with the signs that stand for them and may be redefined. */
final class AbcMarks {
    /** Between plus signs, as older versions have it; anything else there is an old chord or nothing. */
    private static final Set<String> OLD = Set.of(
            "trill",
            "fermata",
            "accent",
            "segno",
            "coda",
            "fine",
            "breath",
            "D.C.",
            "D.S.",
            "p",
            "pp",
            "ppp",
            "mp",
            "mf",
            "f",
            "ff",
            "fff",
            "sfz",
            "roll",
            "turn",
            "tenuto",
            "mordent",
            "lowermordent",
            "uppermordent",
            "pralltriller",
            "upbow",
            "downbow",
            "emphasis",
            "0",
            "1",
            "2",
            "3",
            "4",
            "5",
            "crescendo(",
            "crescendo)",
            "diminuendo(",
            "diminuendo)",
            "shortphrase",
            "mediumphrase",
            "longphrase",
            "plus",
            "slide",
            "wedge");

    private static final Pattern NAME = Pattern.compile("[^\\s!|\"\\[\\]]{1,40}|(?i:d\\.[cs]\\.|da|to)[ \\w.]{1,30}");
    private static final Pattern DEFINITION =
            Pattern.compile("([H-Wh-w~])\\s*=\\s*(?:!([^!]*)!|\"([^\"]*)\"|\\+([^+]*)\\+)\\s*");
    private static final String NOTHING = "nil|none|nothing";

    private final Map<Character, String> signs = new HashMap<>();
    private boolean exclamationEndsLine;

    AbcMarks() {
        signs.put('.', "staccato");
        signs.put('~', "roll");
        signs.put('H', "fermata");
        signs.put('L', "accent");
        signs.put('M', "lowermordent");
        signs.put('O', "coda");
        signs.put('P', "uppermordent");
        signs.put('S', "segno");
        signs.put('T', "trill");
        signs.put('u', "upbow");
        signs.put('v', "downbow");
    }

    /** An instruction about line breaks. */
    void lineBreak(String text) {
        exclamationEndsLine = text.contains("!");
    }

    /** A U: field. @return whether it could be read */
    boolean define(String text) {
        var matcher = DEFINITION.matcher(text);
        if (!matcher.matches()) return false;
        char sign = matcher.group(1).charAt(0);
        String name = matcher.group(2) != null ? matcher.group(2) : matcher.group(4);
        if (matcher.group(3) != null) signs.put(sign, "\"" + matcher.group(3));
        else if (name.isBlank() || name.matches(NOTHING)) signs.put(sign, "");
        else signs.put(sign, name);
        return true;
    }

    /** Reads a decoration or a text if one stands here. */
    boolean read(AbcCursor cursor, List<AbcElement> into) {
        char c = cursor.peek();
        if (c == '"') return readText(cursor, into);
        if (c == '!') return readNamed(cursor, into);
        if (c == '+') return readOld(cursor, into);
        String meaning = signs.get(c);
        if (meaning == null) return false;
        TextPlace place = cursor.place();
        cursor.next();
        if (meaning.startsWith("\"")) into.add(new AbcElement.Quoted(place, meaning.substring(1)));
        else if (!meaning.isEmpty()) into.add(new AbcElement.Decoration(place, meaning));
        return true;
    }

    private static boolean readText(AbcCursor cursor, List<AbcElement> into) {
        TextPlace place = cursor.place();
        cursor.next();
        Optional<String> closed = cursor.takeUntil('"');
        if (closed.isEmpty()) into.add(new Flaw(place, Flaw.Kind.UNCLOSED, "\""));
        String text = closed.orElseGet(() -> cursor.takeWhile(c -> c != '|'));
        into.add(new AbcElement.Quoted(place, AbcEscapes.read(text)));
        return true;
    }

    /** An exclamation mark without a partner was a line break in older versions. */
    private boolean readNamed(AbcCursor cursor, List<AbcElement> into) {
        TextPlace place = cursor.place();
        int from = cursor.position();
        cursor.next();
        Optional<String> name = cursor.takeUntil('!').map(String::strip);
        if (name.isPresent() && NAME.matcher(name.get()).matches()) {
            into.add(new AbcElement.Decoration(place, name.get()));
            return true;
        }
        cursor.moveTo(from + 1);
        if (!exclamationEndsLine) into.add(new Flaw(place, Flaw.Kind.OLD_STYLE, "!"));
        return true;
    }

    private static boolean readOld(AbcCursor cursor, List<AbcElement> into) {
        TextPlace place = cursor.place();
        int from = cursor.position();
        cursor.next();
        Optional<String> name = cursor.takeUntil('+').map(String::strip);
        if (name.isPresent() && OLD.contains(name.get())) {
            into.add(new Flaw(place, Flaw.Kind.OLD_STYLE, "+" + name.get() + "+"));
            into.add(new AbcElement.Decoration(place, name.get()));
            return true;
        }
        cursor.moveTo(from);
        return false;
    }
}
