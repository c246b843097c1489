package org.mantice.reading.abc;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The macros of a tune (ABC 2.1, section 9): static ones stand for a text (9.1); transposing ones have an n for any note
 * in what they replace, and letters from h to z for the notes around it in what they put there (9.2).
 */
final class AbcMacros {
    private static final Pattern DEFINITION = Pattern.compile("([^=]{1,30})=(.{0,200})", Pattern.DOTALL);
    private static final Pattern TRANSPOSING = Pattern.compile("(.*)n([0-9/]*)");
    /** What stands in a transposed text for itself: decorations, texts, fields. */
    private static final Pattern FIXED =
            Pattern.compile("![^!]*!|\"[^\"]*\"|\\[[A-Za-z]:[^\\]]*]|[h-z]|.", Pattern.DOTALL);

    private static final String LETTERS = "CDEFGAB";
    private static final int MOST = 50;
    /** Characters that a line may grow to. */
    private static final int LONGEST = 100_000;

    private final Map<Pattern, String> macros = new LinkedHashMap<>();

    /**
     * An m: field.
     *
     * @return whether it could be read
     */
    boolean define(String text) {
        Matcher definition = DEFINITION.matcher(text);
        if (!definition.matches() || macros.size() == MOST) return false;
        String target = definition.group(1).strip();
        if (target.isEmpty()) return false;
        Matcher transposing = TRANSPOSING.matcher(target);
        Pattern pattern = transposing.matches()
                ? Pattern.compile(Pattern.quote(transposing.group(1)) + "([A-Ga-g][,']{0,9})"
                        + Pattern.quote(transposing.group(2)) + "(?![0-9/,'])")
                : Pattern.compile(Pattern.quote(target));
        macros.put(pattern, definition.group(2).strip());
        return true;
    }

    /** The line with all macros carried out one after another; empty if it would be too long. */
    Optional<String> expand(String line) {
        String text = line;
        for (Map.Entry<Pattern, String> macro : macros.entrySet()) {
            Matcher matcher = macro.getKey().matcher(text);
            StringBuilder expanded = new StringBuilder();
            while (matcher.find()) {
                String put = matcher.groupCount() == 0 ? macro.getValue() : around(matcher.group(1), macro.getValue());
                matcher.appendReplacement(expanded, Matcher.quoteReplacement(put));
                if (expanded.length() > LONGEST) return Optional.empty();
            }
            text = matcher.appendTail(expanded).toString();
        }
        return Optional.of(text);
    }

    /** The text of a macro with n as this note. */
    private static String around(String note, String text) {
        Matcher parts = FIXED.matcher(text);
        StringBuilder around = new StringBuilder();
        while (parts.find()) {
            String part = parts.group();
            boolean letter = part.length() == 1 && part.charAt(0) >= 'h' && part.charAt(0) <= 'z';
            around.append(letter ? moved(note, part.charAt(0) - 'n') : part);
        }
        return around.toString();
    }

    /** So many letters higher: C, is one octave below C and c one above. */
    private static String moved(String note, int steps) {
        char letter = note.charAt(0);
        int octave = Character.isLowerCase(letter) ? 1 : 0;
        for (char c : note.substring(1).toCharArray()) octave += c == ',' ? -1 : 1;
        int step = LETTERS.indexOf(Character.toUpperCase(letter)) + 7 * octave + steps;
        int high = Math.floorDiv(step, 7);
        String name = LETTERS.substring(Math.floorMod(step, 7), Math.floorMod(step, 7) + 1);
        return high > 0 ? name.toLowerCase(java.util.Locale.ROOT) + "'".repeat(high - 1) : name + ",".repeat(-high);
    }
}
