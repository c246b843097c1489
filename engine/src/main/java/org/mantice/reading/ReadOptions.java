package org.mantice.reading;

import java.util.Optional;

/**
 * What the caller wants read.
 *
 * @param part the part that holds the melody: its id, its name in any case, or its place from 1; empty to choose by
 *     rule
 */
public record ReadOptions(Optional<String> part) {
    public static final ReadOptions DEFAULT = new ReadOptions(Optional.empty());

    public ReadOptions {
        if (part.isPresent() && part.get().isBlank())
            throw new IllegalArgumentException("part is blank; allowed: an id, a name or a number from 1");
    }

    public static ReadOptions ofPart(String part) {
        return new ReadOptions(Optional.of(part));
    }
}
