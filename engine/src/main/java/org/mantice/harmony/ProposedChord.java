package org.mantice.harmony;

import java.util.List;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.WrittenPlace;

/**
 * A proposed chord: it holds until the next one.
 *
 * @param degree its name in the key, as {@code "V7"} or {@code "ii"}
 * @param facts in the order of {@link HarmonyReason}, none twice, none of cost 0
 */
public record ProposedChord(WrittenPlace place, ChordSymbol symbol, String degree, List<HarmonyFact> facts) {
    public ProposedChord {
        facts = List.copyOf(facts);
    }

    /** The sum of the facts. */
    public long costMillipoints() {
        long sum = 0;
        for (HarmonyFact fact : facts) sum = Math.addExact(sum, fact.costMillipoints());
        return sum;
    }
}
