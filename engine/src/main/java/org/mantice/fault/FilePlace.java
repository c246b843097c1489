package org.mantice.fault;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A place in a file, as exactly as it is known.
 *
 * @param file name as the caller gave it
 * @param measure printed number of the measure
 * @param line in the text of the file, from 1
 */
public record FilePlace(String file, Optional<String> measure, OptionalInt line) {
    public static FilePlace of(String file) {
        return new FilePlace(file, Optional.empty(), OptionalInt.empty());
    }

    public FilePlace atMeasure(String number) {
        return new FilePlace(file, Optional.of(number), line);
    }

    public FilePlace atLine(int number) {
        return new FilePlace(file, measure, number < 1 ? OptionalInt.empty() : OptionalInt.of(number));
    }

    /** As {@code "waltz.mxl, measure 3, line 120"}. */
    @Override
    public String toString() {
        return file
                + measure.map(number -> ", measure " + number).orElse("")
                + (line.isPresent() ? ", line " + line.getAsInt() : "");
    }
}
