package org.mantice.plan;

import org.mantice.tune.WrittenPlace;

/**
 * A decision with a name, as players compare them.
 *
 * @param kind what is decided
 * @param pass from 1
 * @param place in the written music
 * @param part 0, or which note of a chord, from the lowest
 * @param value in words: {@code "out"}, {@code "3"}, {@code "C bass + C major"}, {@code "master"}
 */
public record Decision(Kind kind, int pass, WrittenPlace place, int part, String value) {
    /** What can be decided. */
    public enum Kind {
        REGISTER,
        OCTAVE,
        BUTTONS,
        TURN,
        FINGER,
        HAND_PLACE
    }
}
