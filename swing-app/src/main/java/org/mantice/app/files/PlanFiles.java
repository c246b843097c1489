package org.mantice.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.PlanRequest;
import org.mantice.Planning;
import org.mantice.editing.TuneEdit;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.layer.RuleBook;
import org.mantice.plan.Figures;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Player;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadTune;

/**
 * Makes plan files of one tune, the same for the command line and the window: the same planning, plan, player and locks
 * give the same bytes.
 */
public final class PlanFiles {
    private static final String ENGINE = "0.1.0";

    private final String fileName;
    private final ReadTune read;
    private final Optional<String> part;
    private final Packs packs;
    private final List<TuneEdit> edits;

    /**
     * @param fileName of the tune, as it was given
     * @param part the part of the score asked for as the melody; empty for the stated rule's own choice
     * @param packs those that the planning's rules come from
     */
    public PlanFiles(String fileName, ReadTune read, Optional<String> part, Packs packs) {
        this(fileName, read, part, packs, List.of());
    }

    /** The same for a tune that was edited; the planning's is the edited one. */
    public PlanFiles(String fileName, ReadTune read, Optional<String> part, Packs packs, List<TuneEdit> edits) {
        this.fileName = fileName;
        this.read = read;
        this.part = part;
        this.packs = packs;
        this.edits = List.copyOf(edits);
    }

    /** A plan under the weights and locks of the planning's own request. */
    public PlanFile of(Planning planning, Plan plan) {
        return of(
                planning, plan, planning.request().player(), planning.request().locks());
    }

    /**
     * A plan under weights and locks that may have changed since the planning was prepared. Explains the whole plan,
     * which takes a while.
     *
     * @param player with the weights
     */
    public PlanFile of(Planning planning, Plan plan, Player player, List<Lock> locks) {
        PlanRequest request = planning.request();
        PlanDocument document = new PlanDocument(
                ENGINE,
                new PlanDocument.TuneSource(
                        read.tune().title(),
                        fileName,
                        read.fingerprint(),
                        part.orElse(""),
                        read.entry().orElse(""),
                        edits),
                request.settings(),
                request.accordion(),
                player,
                packsUsed(planning),
                locks,
                plan,
                Figures.of(plan, planning.performance()),
                planning.explain(plan, player.taste()));
        return PlanFile.of(document, planning.performance());
    }

    private List<PlanDocument.PackUsed> packsUsed(Planning planning) {
        List<PlanDocument.PackUsed> used = new ArrayList<>();
        for (Packs.Pack pack : packs.packs()) {
            List<String> rules = planning.rules().entries().stream()
                    .filter(entry -> entry.provider() == pack.provider())
                    .map(RuleBook.Entry::id)
                    .toList();
            used.add(new PlanDocument.PackUsed(
                    pack.provider().id(), pack.provider().version(), pack.origin(), rules));
        }
        return used;
    }
}
