package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.Step;

/**
 * What stands after the key in K: or after the name in V: (ABC 2.1, sections 4.6 and 7).
 *
 * @param values by name in lower case
 * @param words what has no equals sign, in order
 */
public record AbcProperties(Map<String, String> values, List<String> words) {
    private static final Pattern ITEM =
            Pattern.compile("([A-Za-z][\\w-]*)\\s*=\\s*(\"[^\"]*\"|[^\\s\"]+)|(\"[^\"]*\"|\\S+)");
    private static final Pattern CLEF = Pattern.compile("(treble|bass|alto|tenor|perc|none|auto|[GFCP])[1-5]?([+-]8)?");
    private static final Pattern MIDDLE = Pattern.compile("([A-Ga-g])([,']{0,6})");

    public AbcProperties {
        values = Map.copyOf(values);
        words = List.copyOf(words);
    }

    public static AbcProperties read(String text) {
        Map<String, String> values = new LinkedHashMap<>();
        List<String> words = new ArrayList<>();
        Matcher matcher = ITEM.matcher(text);
        while (matcher.find()) {
            if (matcher.group(1) != null)
                values.put(matcher.group(1).toLowerCase(Locale.ROOT), unquoted(matcher.group(2)));
            else if (CLEF.matcher(matcher.group(3)).matches()) values.putIfAbsent("clef", matcher.group(3));
            else words.add(unquoted(matcher.group(3)));
        }
        return new AbcProperties(values, words);
    }

    private static String unquoted(String text) {
        boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? AbcEscapes.read(text.substring(1, text.length() - 1)) : text;
    }

    public Optional<String> value(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** A whole number of up to two digits. */
    public OptionalInt number(String name) {
        String text = values.getOrDefault(name, "");
        return text.matches("[+-]?\\d{1,2}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    /** The sign of the clef: G, F, C, percussion or none; empty where no clef is named. */
    public Optional<String> clef() {
        String name = values.getOrDefault("clef", "");
        if (!CLEF.matcher(name).matches()) return Optional.empty();
        return Optional.of(
                switch (name.charAt(0)) {
                    case 'b', 'F' -> "F";
                    case 'a', 'C' -> name.startsWith("auto") ? "G" : "C";
                    case 'p', 'P' -> "percussion";
                    default -> name.startsWith("tenor") ? "C" : "G";
                });
    }

    /** Octaves that the clef moves what is written: by its 8, or because another note stands on the middle line. */
    public int clefOctaves() {
        String name = values.getOrDefault("clef", "");
        int eight = name.endsWith("+8") ? 1 : name.endsWith("-8") ? -1 : 0;
        Matcher middle = MIDDLE.matcher(values.getOrDefault("middle", values.getOrDefault("m", "")));
        if (!middle.matches()) return eight;
        int written = steps(middle.group(1))
                + 7 * middle.group(2).chars().map(c -> c == ',' ? -1 : 1).sum();
        int usual =
                switch (name.isEmpty() ? "treble" : name.replaceAll("[1-5]?([+-]8)?$", "")) {
                    case "bass", "F" -> 1 - 7; // D,
                    case "alto", "C" -> 0; // C
                    case "tenor" -> 5 - 7; // A,
                    default -> 6; // B
                };
        int apart = usual - written;
        return apart % 7 == 0 ? eight + apart / 7 : eight;
    }

    /** Above C; a small letter is an octave higher. */
    private static int steps(String letter) {
        int step = Step.valueOf(letter.toUpperCase(Locale.ROOT)).ordinal();
        return Character.isLowerCase(letter.charAt(0)) ? step + 7 : step;
    }
}
