package org.mantice.instrument;

import java.util.regex.Pattern;

/**
 * An instrument profile.
 *
 * @param id 1 to 64 lower case letters, digits and single hyphens between them
 * @param name for people, 1 to 200 characters
 * @param bellows state an appetite for every bank that a switch selects
 */
public record Accordion(String id, String name, TrebleKeyboard treble, StradellaBass bass, Bellows bellows) {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public Accordion {
        if (id.length() > 64 || !ID.matcher(id).matches())
            throw new IllegalArgumentException(
                    "id is '" + id + "'; allowed: up to 64 lower case letters, digits and single hyphens");
        if (name.isBlank() || name.length() > 200)
            throw new IllegalArgumentException("name is '" + name + "'; allowed: 1 to 200 characters, not all blank");
        for (RegisterSwitch register : treble.switches())
            for (ReedBank bank : register.banks())
                if (!bellows.appetites().banks().containsKey(bank))
                    throw new IllegalArgumentException("appetites.banks lacks " + bank + ", which switch "
                            + register.id() + " selects; allowed: every bank that a switch selects");
    }
}
