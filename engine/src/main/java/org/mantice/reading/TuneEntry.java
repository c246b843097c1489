package org.mantice.reading;

import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;

/**
 * A tune of a file that may hold several.
 *
 * @param place in the file, from 1
 * @param number as written; may be empty, and two tunes may share one
 * @param title may be empty
 * @param key it begins in, where its head names one
 * @param meter it begins in, where its head or that of the file names one
 * @param line where it begins in the text of the file
 */
public record TuneEntry(
        int place, String number, String title, Optional<Key> key, Optional<Meter> meter, OptionalInt line) {
    /** What {@link ReadOptions#withTune} calls this tune and no other: {@code "#3"}. */
    public String handle() {
        return handle(place);
    }

    static String handle(int place) {
        return "#" + place;
    }

    /** As {@code "12 Title"}. */
    public String label() {
        return (number.isEmpty() ? handle() : number) + (title.isEmpty() ? "" : " " + title);
    }
}
