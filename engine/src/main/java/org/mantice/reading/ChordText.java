package org.mantice.reading;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.Step;

/**
 * Chord symbols as people write them. What is not wholly understood is no chord: fingers, orders of play, ornaments and
 * prose never become one. Spellings after ABC 2.1, section 4.18, and common practice.
 */
public final class ChordText {
    /** What letters mean. */
    public enum Letters {
        /** A to G; B is the semitone below C. */
        INTERNATIONAL,
        /** H is the semitone below C, and B the one below that. */
        GERMAN
    }

    /**
     * A chord symbol that was read.
     *
     * @param symbol the chord
     * @param optional written in brackets: may be left out
     * @param alternate a second chord written in brackets behind the first, for a later time through
     */
    public record Written(ChordSymbol symbol, boolean optional, Optional<ChordSymbol> alternate) {}

    /** Longer texts are prose. */
    private static final int LONGEST = 40;

    private static final Pattern SILENT = Pattern.compile("(?i)n\\.? ?c\\.?|no ?chord|tacet");
    private static final Pattern WHOLE_IN_BRACKETS = Pattern.compile("\\((.+)\\)|\\[(.+)]");
    private static final Pattern WITH_ALTERNATE = Pattern.compile("(.+?)\\s*\\(([A-H][^()]*)\\)");
    private static final Pattern SYMBOL =
            Pattern.compile("([A-H])(bb|##|x|[b#])?(.*?)(?:\\s*/\\s*([A-Ha-h])(bb|##|[b#+-])?)?");

    /** English words that would read as a diminished triad. */
    private static final Pattern WORD = Pattern.compile("Do|Go");

    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("\u266d", "b"),
            Map.entry("\u266f", "#"),
            Map.entry("\u266e", ""),
            Map.entry("\uD834\uDD2B", "bb"),
            Map.entry("\uD834\uDD2A", "##"),
            Map.entry("\u2212", "-"),
            Map.entry("\u2013", "-"),
            Map.entry("\u00b0", "o"),
            Map.entry("\u00ba", "o"),
            Map.entry("\u00d8", "\u00f8"),
            Map.entry("\u2205", "\u00f8"),
            Map.entry("\u2206", "\u0394"),
            Map.entry("\u25b3", "\u0394"));

    private final Letters letters;

    public ChordText(Letters letters) {
        this.letters = letters;
    }

    /** Empty if the text is no chord symbol, or more than one that is. */
    public Optional<Written> read(String text) {
        if (text.length() > LONGEST) return Optional.empty();
        String plain = plain(text);
        if (SILENT.matcher(plain).matches())
            return Optional.of(
                    new Written(ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.NONE), false, Optional.empty()));
        Optional<ChordSymbol> one = symbol(plain);
        if (one.isPresent()) return Optional.of(new Written(one.get(), false, Optional.empty()));
        Matcher bracketed = WHOLE_IN_BRACKETS.matcher(plain);
        if (bracketed.matches()) {
            String inside = bracketed.group(1) != null ? bracketed.group(1) : bracketed.group(2);
            return symbol(inside.strip()).map(symbol -> new Written(symbol, true, Optional.empty()));
        }
        Matcher two = WITH_ALTERNATE.matcher(plain);
        if (!two.matches()) return Optional.empty();
        Optional<ChordSymbol> second = symbol(two.group(2).strip());
        return symbol(two.group(1)).filter(first -> second.isPresent()).map(first -> new Written(first, false, second));
    }

    /** One chord symbol without brackets around it. */
    public Optional<ChordSymbol> symbol(String text) {
        String plain = plain(text);
        Matcher matcher = SYMBOL.matcher(plain);
        if (plain.length() > LONGEST
                || !matcher.matches()
                || WORD.matcher(plain).matches()) return Optional.empty();
        Optional<NoteName> root = note(matcher.group(1), matcher.group(2));
        Optional<ChordQuality> quality = ChordQuality.read(matcher.group(3));
        if (root.isEmpty() || quality.isEmpty()) return Optional.empty();
        Optional<NoteName> bass = Optional.empty();
        if (matcher.group(4) != null) {
            bass = note(matcher.group(4), matcher.group(5));
            if (bass.isEmpty()) return Optional.empty();
        }
        return Optional.of(new ChordSymbol(
                root.get(),
                quality.get().kind(),
                quality.get().degrees(),
                bass.filter(note -> !note.equals(root.get())),
                matcher.group(3).strip()));
    }

    private static String plain(String text) {
        String plain = text.strip();
        for (Map.Entry<String, String> one : SAME.entrySet()) plain = plain.replace(one.getKey(), one.getValue());
        return plain;
    }

    /** A slash bass also takes plus and minus for sharp and flat, as collections of folk tunes write it. */
    private Optional<NoteName> note(String letter, String accidental) {
        int alter = accidental == null
                ? 0
                : switch (accidental) {
                    case "b", "-" -> -1;
                    case "bb" -> -2;
                    case "#", "+" -> 1;
                    default -> 2;
                };
        String upper = letter.toUpperCase(java.util.Locale.ROOT);
        if (upper.equals("H")) {
            if (letters != Letters.GERMAN) return Optional.empty();
            upper = "B";
        } else if (upper.equals("B") && letters == Letters.GERMAN && alter == 0) alter = -1;
        return Optional.of(new NoteName(Step.valueOf(upper), alter));
    }
}
