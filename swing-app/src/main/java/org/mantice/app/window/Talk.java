package org.mantice.app.window;

import java.util.function.Function;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;

/** How the app speaks with the player: sentences that block nothing, and questions. */
interface Talk {
    /** Says a sentence in the language of the moment. */
    void say(Function<Words, String> sentence);

    /** Says shortly what was done, where it disturbs nobody. */
    void note(Function<Words, String> sentence);

    Dialogs ask();

    /** Says what went wrong. */
    default void trouble(Throwable cause) {
        say(words -> new MusicWords(words).trouble(cause));
    }
}
