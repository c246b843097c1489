package org.mantice.rule;

import java.util.List;
import java.util.stream.Stream;

/**
 * A fact behind a cost.
 *
 * @param key of its text in the provider's bundle
 * @param arguments what the text names, as plain words and numbers
 */
public record Fact(String key, List<String> arguments) {
    public Fact {
        arguments = List.copyOf(arguments);
    }

    public static Fact of(String key, Object... arguments) {
        return new Fact(key, Stream.of(arguments).map(String::valueOf).toList());
    }
}
