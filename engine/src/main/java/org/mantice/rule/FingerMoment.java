package org.mantice.rule;

import java.util.List;

/**
 * The right hand at one moment.
 *
 * @param keys MIDI numbers of the keys down, ascending
 * @param fingers for each key, 1 to 5, ascending: a chord is never played crossed
 * @param held for each key, whether it sounds on from the moment before instead of being struck
 * @param printed for each key, the finger printed in the source, 0 where there is none
 * @param handPlace the key under the thumb at rest, as a count of white keys (C0 = 0, D0 = 1, C4 = 28)
 * @param durationMillis from this onset to the next, in steps of ten; of the last moment, until its release
 * @param handSpanTenths the player's comfortable span in tenths of a white key of the own instrument
 */
public record FingerMoment(
        List<Integer> keys,
        List<Integer> fingers,
        List<Boolean> held,
        List<Integer> printed,
        int handPlace,
        long durationMillis,
        int handSpanTenths)
        implements RightHandStep {
    public FingerMoment {
        keys = List.copyOf(keys);
        fingers = List.copyOf(fingers);
        held = List.copyOf(held);
        printed = List.copyOf(printed);
        if (keys.isEmpty() || keys.size() != fingers.size())
            throw new IllegalArgumentException("fingers is " + fingers + "; allowed: one for each key of " + keys);
        if (held.size() != keys.size() || printed.size() != keys.size())
            throw new IllegalArgumentException(
                    "held and printed are " + held + " and " + printed + "; allowed: one for each key of " + keys);
        for (int note = 1; note < keys.size(); note++)
            if (keys.get(note) <= keys.get(note - 1) || fingers.get(note) <= fingers.get(note - 1))
                throw new IllegalArgumentException(
                        "keys and fingers are " + keys + " and " + fingers + "; allowed: both ascending");
        if (fingers.get(0) < 1 || fingers.get(fingers.size() - 1) > 5)
            throw new IllegalArgumentException("fingers is " + fingers + "; allowed: 1 to 5");
    }

    /** All keys struck, nothing printed: the plain case. */
    public static FingerMoment struck(
            List<Integer> keys, List<Integer> fingers, int handPlace, long durationMillis, int handSpanTenths) {
        return new FingerMoment(
                keys,
                fingers,
                keys.stream().map(key -> false).toList(),
                keys.stream().map(key -> 0).toList(),
                handPlace,
                durationMillis,
                handSpanTenths);
    }

    public int lowestKey() {
        return keys.get(0);
    }

    public int highestKey() {
        return keys.get(keys.size() - 1);
    }

    public int highestFinger() {
        return fingers.get(fingers.size() - 1);
    }

    /** The finger on a key, 0 if the key is not down. */
    public int fingerOn(int key) {
        int note = keys.indexOf(key);
        return note < 0 ? 0 : fingers.get(note);
    }

    /** The key under a finger, or -1. */
    public int keyUnder(int finger) {
        int note = fingers.indexOf(finger);
        return note < 0 ? -1 : keys.get(note);
    }
}
