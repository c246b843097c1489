package org.mantice.reading.midi;

import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * A measure as the time signatures lay it out.
 *
 * @param start from the beginning of the file
 * @param length shorter than the meter's where the next signature comes early
 * @param pickup a short first measure with a signature of its own, counted in the meter that follows
 */
public record Bar(Meter meter, MusicalTime start, MusicalTime length, boolean pickup) {
    public MusicalTime end() {
        return start.plus(length);
    }
}
