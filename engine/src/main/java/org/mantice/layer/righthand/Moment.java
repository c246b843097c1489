package org.mantice.layer.righthand;

import java.util.List;

/**
 * All that the lattice knows of a moment; equal moments share their tables.
 *
 * @param keys MIDI numbers as played, ascending
 * @param held for each key, whether it sounds on from the moment before
 * @param printed for each key, the finger in the source, or 0
 * @param durationMillis in steps of ten
 */
record Moment(List<Integer> keys, List<Boolean> held, List<Integer> printed, long durationMillis) {
    Moment {
        keys = List.copyOf(keys);
        held = List.copyOf(held);
        printed = List.copyOf(printed);
    }
}
