package org.mantice.reading;

import java.util.Optional;

/**
 * What the caller wants read.
 *
 * @param part the part that holds the melody: its id, its name in any case, or its place from 1; empty to choose by
 *     rule
 * @param tune the tune of a file with several: its number as written, its title in any case, or its place from 1,
 *     which a number sign before it makes certain ("#3"); empty for the first
 * @param strict refuse what the standard of the format does not allow; else it is read as well as may be and listed.
 *     Only ABC makes the difference
 */
public record ReadOptions(Optional<String> part, Optional<String> tune, boolean strict) {
    public static final ReadOptions DEFAULT = new ReadOptions(Optional.empty(), Optional.empty(), false);

    public ReadOptions {
        if (part.isPresent() && part.get().isBlank())
            throw new IllegalArgumentException("part is blank; allowed: an id, a name or a number from 1");
        if (tune.isPresent() && tune.get().isBlank())
            throw new IllegalArgumentException("tune is blank; allowed: a number, a title or # and a place from 1");
    }

    public static ReadOptions ofPart(String part) {
        return new ReadOptions(Optional.of(part), Optional.empty(), false);
    }

    /** The same for one tune of a book. */
    public ReadOptions withTune(String tune) {
        return new ReadOptions(part, Optional.of(tune), strict);
    }

    /** The same, refusing what the standard does not allow. */
    public ReadOptions strictly() {
        return new ReadOptions(part, tune, true);
    }
}
