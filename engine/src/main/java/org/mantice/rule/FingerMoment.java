package org.mantice.rule;

import java.util.List;

/**
 * The right hand at one moment.
 *
 * @param keys MIDI numbers of the keys down, ascending
 * @param fingers for each key, 1 to 5, ascending
 * @param handPlace the key under the thumb at rest, as a count of white keys (C0 = 0, D0 = 1, C4 = 28)
 * @param durationMillis until the next moment
 * @param handSpanTenths the player's span in tenths of a white key
 */
public record FingerMoment(
        List<Integer> keys, List<Integer> fingers, int handPlace, long durationMillis, int handSpanTenths)
        implements RightHandStep {
    public FingerMoment {
        keys = List.copyOf(keys);
        fingers = List.copyOf(fingers);
        if (keys.isEmpty() || keys.size() != fingers.size())
            throw new IllegalArgumentException("fingers is " + fingers + "; allowed: one for each key of " + keys);
    }
}
