package org.mantice.app.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;

/**
 * Something that the player should be told, without anything having stopped.
 *
 * @param key of the words
 * @param arguments of the text, in its order
 * @param cause comes behind the arguments, in words
 */
public record Notice(String key, List<String> arguments, Optional<Throwable> cause) {
    public Notice {
        arguments = List.copyOf(arguments);
    }

    static Notice of(String key, Object... arguments) {
        return new Notice(key, texts(arguments), Optional.empty());
    }

    static Notice causedBy(Throwable cause, String key, Object... arguments) {
        return new Notice(key, texts(arguments), Optional.of(cause));
    }

    private static List<String> texts(Object... arguments) {
        List<String> texts = new ArrayList<>();
        for (Object argument : arguments) texts.add(String.valueOf(argument));
        return texts;
    }

    /** The notice in the player's language. */
    public String text(Words words) {
        List<Object> all = new ArrayList<>(arguments);
        cause.map(new MusicWords(words)::trouble).ifPresent(all::add);
        return words.text(key, all.toArray());
    }
}
