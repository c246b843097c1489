package org.mantice.performance;

import java.util.List;

/**
 * A key of the right hand as played, before the pass's octave is applied.
 *
 * @param held sounding on from the moment before, not struck again
 * @param writtenFingers fingerings in the source
 */
public record PlayedNote(int midi, boolean held, List<Integer> writtenFingers) {
    public PlayedNote {
        writtenFingers = List.copyOf(writtenFingers);
    }
}
