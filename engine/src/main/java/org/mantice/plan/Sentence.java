package org.mantice.plan;

import java.util.List;
import java.util.stream.Stream;

/**
 * One plain sentence of the engine, which a user interface may say in its own words.
 *
 * @param code stable, of lower-case letters and hyphens
 * @param args what the sentence speaks of, in a fixed order for each code: numbers, notes, places and locks in their one
 *     English form; several of them in one argument are joined by semicolons or "and"
 * @param english the sentence
 */
public record Sentence(String code, List<String> args, String english) {
    public Sentence {
        if (!code.matches("[a-z]+(-[a-z]+)*"))
            throw new IllegalArgumentException("code is \"" + code + "\"; allowed: lower-case letters and hyphens");
        args = List.copyOf(args);
    }

    /** The template with each {@code {0}}, {@code {1}} and so on replaced by its argument. */
    public static Sentence of(String code, String template, Object... args) {
        List<String> words = Stream.of(args).map(String::valueOf).toList();
        StringBuilder english = new StringBuilder();
        String rest = template;
        for (int open = rest.indexOf('{'); open >= 0; open = rest.indexOf('{')) {
            english.append(rest, 0, open).append(words.get(rest.charAt(open + 1) - '0'));
            rest = rest.substring(open + "{0}".length());
        }
        return new Sentence(code, words, english.append(rest).toString());
    }

    /** The English sentence. */
    @Override
    public String toString() {
        return english;
    }
}
