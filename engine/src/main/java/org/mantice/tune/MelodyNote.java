package org.mantice.tune;

import java.util.List;

/**
 * One pitch of a melody event.
 *
 * @param tiedBack held over from the same pitch before
 * @param tiedForward held into the same pitch after
 * @param fingers fingerings already written, 1 to 5; several mean a substitution on the held key
 */
public record MelodyNote(Pitch pitch, boolean tiedBack, boolean tiedForward, List<Integer> fingers) {
    public MelodyNote {
        fingers = List.copyOf(fingers);
        for (int finger : fingers)
            if (finger < 1 || finger > 5)
                throw new IllegalArgumentException("finger is " + finger + "; allowed: 1 to 5");
    }

    public static MelodyNote of(Pitch pitch) {
        return new MelodyNote(pitch, false, false, List.of());
    }
}
