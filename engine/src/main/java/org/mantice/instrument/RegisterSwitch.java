package org.mantice.instrument;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * A treble register switch.
 *
 * @param id unique on the instrument: 1 to 64 lower case letters, digits and single hyphens between them
 * @param name for people: bassoon, clarinet, master …; 1 to 200 characters
 * @param banks the reed banks it selects, one or more
 * @param works false for a broken switch, which no plan uses
 * @param reachMillis how long a free hand needs to press it, 0 to 10,000
 */
public record RegisterSwitch(String id, String name, Set<ReedBank> banks, boolean works, int reachMillis) {
    public RegisterSwitch {
        banks = ordered(banks);
        if (id.length() > 64 || !id.matches("[a-z0-9]+(-[a-z0-9]+)*"))
            throw new IllegalArgumentException(
                    "id is '" + id + "'; allowed: up to 64 lower case letters, digits and single hyphens");
        if (name.isBlank() || name.length() > 200)
            throw new IllegalArgumentException("name is '" + name + "'; allowed: 1 to 200 characters, not all blank");
        if (banks.isEmpty())
            throw new IllegalArgumentException("banks is empty; allowed: one or more for switch " + id);
        if (reachMillis < 0 || reachMillis > 10_000)
            throw new IllegalArgumentException("reachMillis is " + reachMillis + "; allowed: 0 to 10000");
    }

    private static Set<ReedBank> ordered(Collection<ReedBank> banks) {
        EnumSet<ReedBank> copy = EnumSet.noneOf(ReedBank.class);
        copy.addAll(banks);
        return Collections.unmodifiableSet(copy);
    }

    /** The sign to print for it. */
    public RegisterSign sign() {
        return RegisterSign.closest(banks).orElseThrow();
    }

    /** Reeds that sound for one key. */
    public int reedsPerKey() {
        return banks.size();
    }
}
