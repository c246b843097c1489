package org.mantice.player;

import java.util.regex.Pattern;

/**
 * A player profile.
 *
 * @param id 1 to 64 lower case letters, digits and single hyphens between them
 * @param name for people, 1 to 200 characters
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
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public Player {
        if (id.length() > 64 || !ID.matcher(id).matches())
            throw new IllegalArgumentException(
                    "id is '" + id + "'; allowed: up to 64 lower case letters, digits and single hyphens");
        if (name.isBlank() || name.length() > 200)
            throw new IllegalArgumentException("name is '" + name + "'; allowed: 1 to 200 characters, not all blank");
        if (handSpanTenths < 50 || handSpanTenths > 140)
            throw new IllegalArgumentException("handSpanTenths is " + handSpanTenths + "; allowed: 50 to 140");
    }
}
