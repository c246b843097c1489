package org.mantice.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.mantice.plan.Plan;
import org.mantice.plan.VariationPlan;

/**
 * Passes after one another that are played with the same register and octave.
 *
 * @param length how many, 1 or more
 * @param octave octaves up from the written melody
 */
public record RegisterRun(int length, String switchId, int octave) {
    /** More runs than this do not fit into a column. */
    private static final int MOST_RUNS = 4;

    /** The registers of a plan in order of passes. */
    public static List<RegisterRun> of(Plan plan) {
        List<RegisterRun> runs = new ArrayList<>();
        for (VariationPlan.PassDecision pass : plan.variation().passes()) {
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).isLike(pass))
                runs.set(last, runs.get(last).longer());
            else runs.add(new RegisterRun(1, pass.switchId(), pass.octave()));
        }
        return List.copyOf(runs);
    }

    /** The runs in one line; those that do not fit are left out with three dots. */
    public static String inLine(List<RegisterRun> runs, Function<RegisterRun, String> text) {
        List<String> shown = runs.stream().limit(MOST_RUNS).map(text).toList();
        return String.join(", ", shown) + (runs.size() > MOST_RUNS ? ", …" : "");
    }

    private boolean isLike(VariationPlan.PassDecision pass) {
        return switchId.equals(pass.switchId()) && octave == pass.octave();
    }

    private RegisterRun longer() {
        return new RegisterRun(length + 1, switchId, octave);
    }
}
