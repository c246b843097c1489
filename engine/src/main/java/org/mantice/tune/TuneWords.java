package org.mantice.tune;

import java.util.List;
import java.util.Locale;

/** Names of dances and the like in titles and headers. */
public final class TuneWords {
    private TuneWords() {}

    /**
     * Whether one of the names stands in a text as whole words.
     *
     * @param names in lower case
     */
    public static boolean name(String text, List<String> names) {
        if (text.isBlank() || names.isEmpty()) return false;
        String words = " " + String.join(" ", text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\-]+")) + " ";
        return names.stream().anyMatch(name -> words.contains(" " + name + " "));
    }
}
