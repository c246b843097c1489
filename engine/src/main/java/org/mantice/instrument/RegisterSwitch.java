package org.mantice.instrument;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * A treble register switch.
 *
 * @param id unique on the instrument, lower case
 * @param name for people: bassoon, clarinet, master …
 * @param banks the reed banks it selects, one or more
 * @param works false for a broken switch, which no plan uses
 * @param reachMillis how long a free hand needs to press it, 0 to 10,000
 */
public record RegisterSwitch(String id, String name, Set<ReedBank> banks, boolean works, int reachMillis) {
    public RegisterSwitch {
        banks = ordered(banks);
        if (banks.isEmpty()) throw new IllegalArgumentException("banks of switch " + id + " is empty; allowed: one or more");
        if (reachMillis < 0 || reachMillis > 10_000)
            throw new IllegalArgumentException("reachMillis is " + reachMillis + "; allowed: 0 to 10000");
    }

    private static Set<ReedBank> ordered(Collection<ReedBank> banks) {
        EnumSet<ReedBank> copy = EnumSet.noneOf(ReedBank.class);
        copy.addAll(banks);
        return Collections.unmodifiableSet(copy);
    }

    /** Reeds that sound for one key. */
    public int reedsPerKey() {
        return banks.size();
    }
}
