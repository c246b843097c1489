package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.TextPlace;
import org.mantice.reading.abc.AbcElement.Field;
import org.mantice.reading.abc.AbcElement.Flaw;

/** Sorts the lines of a tune into fields, instructions and music. */
final class AbcTuneParser {
    private static final Pattern FIELD = Pattern.compile("([A-Za-z+]):(.*)", Pattern.DOTALL);
    /** A letter and a colon that begin a line of music rather than a field. */
    private static final Pattern MUSIC = Pattern.compile("[A-Ga-gxyz]:[|:].*", Pattern.DOTALL);

    private final List<AbcElement> head = new ArrayList<>();
    private final List<AbcElement> body = new ArrayList<>();
    private final AbcMarks marks;
    private final AbcMacros macros = new AbcMacros();
    private final TextPlace start;
    private List<AbcElement> into = head;
    private String skippedUntil = "";
    private char lastField = 0;

    AbcTuneParser(TextPlace start, AbcMarks marks) {
        this.start = start;
        this.marks = marks;
    }

    /** Reads the lines of the file's head, which count for every tune. */
    void readFileHead(List<AbcLine> lines) {
        for (AbcLine line : lines) if (isHeadLine(line.text())) read(line);
        lastField = 0;
    }

    private static boolean isHeadLine(String text) {
        return text.startsWith("%") || FIELD.matcher(text).matches();
    }

    AbcTune read(List<AbcLine> lines) {
        lines.forEach(this::read);
        if (into == head) head.add(new Flaw(start, Flaw.Kind.HEAD, "K:"));
        return new AbcTune(start, head, new AbcSymbols(marks).laid(body));
    }

    private void read(AbcLine line) {
        String text = line.text();
        if (!skippedUntil.isEmpty()) {
            if (text.startsWith("%%" + skippedUntil)) skippedUntil = "";
            return;
        }
        if (text.startsWith("%%")) readDirective(line);
        else if (text.startsWith("%")) return;
        else if (text.isBlank()) into.add(new Flaw(line.place(), Flaw.Kind.EMPTY_LINE, ""));
        else {
            AbcLine plain = line.withoutComment();
            Matcher field = FIELD.matcher(plain.text());
            boolean music = into == body && MUSIC.matcher(plain.text()).matches();
            if (field.matches() && !music)
                readField(plain, field.group(1).charAt(0), field.group(2).strip());
            else readMusic(plain);
        }
    }

    private void readDirective(AbcLine line) {
        AbcElement.Directive directive =
                directive(line.place(), line.text().substring(2).strip());
        if (directive.name().matches("begin(text|ps|svg|js|ml)"))
            skippedUntil = "end" + directive.name().substring(5);
        into.add(directive);
        settle(directive);
    }

    static AbcElement.Directive directive(TextPlace place, String text) {
        String[] words = text.split("[\\s=]+", 2);
        return new AbcElement.Directive(place, words[0], words.length > 1 ? words[1].strip() : "");
    }

    private void settle(AbcElement.Directive directive) {
        if (directive.name().equals("linebreak")) marks.lineBreak(directive.text());
    }

    private void readField(AbcLine line, char letter, String text) {
        switch (letter) {
            case '+' -> continueField(line, text);
            case 'U' -> {
                if (!marks.define(text)) into.add(new Flaw(line.place(), Flaw.Kind.FIELD, "U:" + text));
            }
            case 'm' -> readMacro(line, text);
            case 'I' -> {
                AbcElement.Directive directive = directive(line.place(), text);
                into.add(directive);
                settle(directive);
            }
            default -> into.add(new Field(line.place(), letter, text));
        }
        if (letter != '+') lastField = letter;
        if (letter == 'K') into = body;
    }

    private void continueField(AbcLine line, String text) {
        int last = into.size() - 1;
        if (last >= 0 && into.get(last) instanceof Field field && field.letter() == lastField)
            into.set(last, new Field(field.place(), lastField, field.text() + " " + text));
        else into.add(new Flaw(line.place(), Flaw.Kind.FIELD, "+:"));
    }

    private void readMacro(AbcLine line, String text) {
        if (!macros.define(text)) into.add(new Flaw(line.place(), Flaw.Kind.FIELD, "m:" + text));
    }

    private void readMusic(AbcLine line) {
        if (into == head) {
            if (line.text().indexOf('|') < 0) {
                head.add(new Flaw(line.place(), Flaw.Kind.UNKNOWN, line.text()));
                return;
            }
            head.add(new Flaw(line.place(), Flaw.Kind.HEAD, "K:"));
            into = body;
        }
        lastField = 0;
        Optional<String> expanded = macros.expand(line.text());
        if (expanded.isEmpty()) into.add(new Flaw(line.place(), Flaw.Kind.FIELD, "m:"));
        String text = expanded.orElse(line.text());
        boolean continued = text.stripTrailing().endsWith("\\");
        String music = continued ? text.substring(0, text.lastIndexOf('\\')) : text;
        into.addAll(new AbcMusic(new AbcCursor(music, line.number(), 0), marks).read());
        if (!continued)
            into.add(new AbcElement.LineEnd(
                    new TextPlace(line.number(), line.text().length() + 1)));
    }
}
