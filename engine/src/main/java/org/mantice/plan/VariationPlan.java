package org.mantice.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** Register and octave of each pass, in order of passes. */
public record VariationPlan(List<PassDecision> passes, SortedMap<String, Long> costByRule, List<Concession> concessions)
        implements LayerPlan {
    /**
     * What one pass is played with.
     *
     * @param pass from 1
     * @param octave octaves up from the written melody
     */
    public record PassDecision(int pass, String switchId, int octave) {}

    public VariationPlan {
        passes = List.copyOf(passes);
        costByRule = Collections.unmodifiableSortedMap(new TreeMap<>(costByRule));
        concessions = List.copyOf(concessions);
    }

    /** @param number from 1 */
    public PassDecision pass(int number) {
        return passes.get(number - 1);
    }

    @Override
    public List<Decision> decisions() {
        WrittenPlace start = new WrittenPlace(0, MusicalTime.ZERO);
        List<Decision> decisions = new ArrayList<>();
        for (PassDecision pass : passes) {
            decisions.add(new Decision(Decision.Kind.REGISTER, pass.pass(), start, 0, pass.switchId()));
            decisions.add(new Decision(Decision.Kind.OCTAVE, pass.pass(), start, 0, Integer.toString(pass.octave())));
        }
        return List.copyOf(decisions);
    }
}
