package org.mantice.layer.lefthand;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.mantice.performance.Performance;
import org.mantice.tune.WrittenPlace;

/**
 * Where the left hand presses, in each pass, whatever the instrument: at the notes of a written bass staff, else at the
 * beats over chord symbols.
 */
public final class Presses {
    private final List<Set<WrittenPlace>> byPass;

    private Presses(List<Set<WrittenPlace>> byPass) {
        this.byPass = byPass;
    }

    /** Time and memory grow with the number of beats played. */
    public static Presses of(Performance performance) {
        List<Set<WrittenPlace>> byPass = performance.passes().stream()
                .<Set<WrittenPlace>>map(pass -> new TreeSet<>())
                .toList();
        // where an instrument lacks the notes of a run, the plain pattern is played
        for (boolean runs : new boolean[] {true, false})
            for (Beat beat : LeftHandBeats.of(performance, note -> runs))
                byPass.get(beat.pass() - 1).add(beat.place());
        return new Presses(byPass);
    }

    /** @param pass from 1; there need be no such pass */
    public boolean isAt(int pass, WrittenPlace place) {
        return pass >= 1 && pass <= byPass.size() && byPass.get(pass - 1).contains(place);
    }
}
