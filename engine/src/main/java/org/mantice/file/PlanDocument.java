package org.mantice.file;

import java.util.List;
import org.mantice.editing.TuneEdit;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Settings;
import org.mantice.plan.Explanation;
import org.mantice.plan.Figures;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Player;

/**
 * A plan with all that it rests on: enough to read it, to compare it, and to plan again.
 *
 * @param engine version of the engine that planned
 * @param settings with what was assumed
 * @param player with the weights
 * @param packs the packs whose rules priced the plan
 * @param explanation why it costs what it costs
 */
public record PlanDocument(
        String engine,
        TuneSource tune,
        Settings settings,
        Accordion accordion,
        Player player,
        List<PackUsed> packs,
        List<Lock> locks,
        Plan plan,
        Figures figures,
        Explanation explanation) {
    /**
     * The tune that was planned.
     *
     * @param file as it was given; may be relative
     * @param sha256 of the file's bytes, in hexadecimal
     * @param part the part of the score that was taken as the melody; empty for the stated rule's own choice
     * @param entry which tune of its file it is, as {@code "#3"}; empty where the file has no other
     * @param edits what was changed in it, in order; the plan is for the tune after these
     */
    public record TuneSource(
            String title, String file, String sha256, String part, String entry, List<TuneEdit> edits) {
        public TuneSource {
            edits = List.copyOf(edits);
        }
    }

    /** A pack and its rules. */
    public record PackUsed(String id, String version, String origin, List<String> rules) {
        public PackUsed {
            rules = List.copyOf(rules);
        }
    }

    public PlanDocument {
        packs = List.copyOf(packs);
        locks = List.copyOf(locks);
    }

    /** Micropoints under the player's weights. */
    public long cost() {
        return plan.cost(player.taste());
    }
}
