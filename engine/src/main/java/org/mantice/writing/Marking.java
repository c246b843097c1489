package org.mantice.writing;

import org.mantice.performance.PlayedMeasure;
import org.mantice.tune.Measure;

/**
 * Adds to a measure that is written out for each time it is played: what differs from pass to pass, which one written
 * repeat could not carry.
 */
@FunctionalInterface
public interface Marking {
    Marking NONE = (played, measure) -> measure;

    /** The measure with more in it, of the same length. Ties that no longer meet a note of the same key are undone later. */
    Measure mark(PlayedMeasure played, Measure measure);
}
