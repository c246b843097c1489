package org.mantice.player;

/**
 * A player profile.
 *
 * @param id lower case letters, digits and hyphens
 * @param name for people
 * @param handSpanTenths tenths of a white key from thumb to little finger, stretched comfortably, measured on the
 *     player's own instrument: 50 to 140 (an octave is 80: eight keys)
 * @param mayTurnInHeldNote allows a turn of the bellows inside a held melody note when nothing else is left
 */
public record Player(
        String id,
        String name,
        int handSpanTenths,
        BassMethod bassMethod,
        Jumps jumps,
        boolean mayTurnInHeldNote,
        Taste taste) {
    public Player {
        if (handSpanTenths < 50 || handSpanTenths > 140)
            throw new IllegalArgumentException("handSpanTenths is " + handSpanTenths + "; allowed: 50 to 140");
    }
}
