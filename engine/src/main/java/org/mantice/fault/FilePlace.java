package org.mantice.fault;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A place in a file, as exactly as it is known.
 *
 * @param file name as the caller gave it
 * @param measure printed number of the measure
 * @param line in the text of the file, from 1
 * @param column in the line, from 1; empty where the line is
 */
public record FilePlace(String file, Optional<String> measure, OptionalInt line, OptionalInt column) {
    public static FilePlace of(String file) {
        return new FilePlace(file, Optional.empty(), OptionalInt.empty(), OptionalInt.empty());
    }

    public FilePlace atMeasure(String number) {
        return new FilePlace(file, Optional.of(number), line, column);
    }

    public FilePlace atLine(int number) {
        OptionalInt known = number < 1 ? OptionalInt.empty() : OptionalInt.of(number);
        return new FilePlace(file, measure, known, OptionalInt.empty());
    }

    public FilePlace at(TextPlace place) {
        return new FilePlace(file, measure, OptionalInt.of(place.line()), OptionalInt.of(place.column()));
    }

    /** As {@code "waltz.mxl, measure 3, line 120"} or {@code "waltz.abc, line 12, column 7"}. */
    @Override
    public String toString() {
        return file
                + measure.map(number -> ", measure " + number).orElse("")
                + (line.isPresent() ? ", line " + line.getAsInt() : "")
                + (column.isPresent() ? ", column " + column.getAsInt() : "");
    }
}
