package org.mantice.reading;

import java.util.OptionalInt;

/**
 * A tune of a file that may hold several.
 *
 * @param place in the file, from 1
 * @param number as written; may be empty, and two tunes may share one
 * @param title may be empty
 * @param line where it begins in the text of the file
 */
public record TuneEntry(int place, String number, String title, OptionalInt line) {
    /** What {@link ReadOptions#withTune} calls this tune and no other: {@code "#3"}. */
    public String handle() {
        return "#" + place;
    }

    /** As {@code "12 Title"}. */
    public String label() {
        return (number.isEmpty() ? handle() : number) + (title.isEmpty() ? "" : " " + title);
    }
}
