package org.mantice.app.command;

import java.util.ArrayList;
import java.util.List;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.app.files.PlanFiles;
import org.mantice.file.PlanFile;
import org.mantice.pattern.Accompaniment;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadTune;

/** The main job for one file: read the tune, load accordion and player, collect the rules, plan. */
final class OnePlanning {
    private final String fileName;
    private final ReadTune read;
    private final PlanOptions options;
    private final Packs packs;
    private final Proposing.Proposed tune;
    private final Planning planning;
    private final Alternatives alternatives;

    private OnePlanning(String fileName, ReadTune read, PlanOptions options, Packs packs, int count) {
        this.fileName = fileName;
        this.read = read;
        this.options = options;
        this.packs = packs;
        this.tune = options.proposed(read.tune());
        Planner planner = options.planner(packs);
        List<Lock> locks = new ArrayList<>();
        for (String words : options.locks()) locks.add(LockWords.read(words, tune.tune()));
        PlanRequest request = new PlanRequest(
                tune.tune(), options.accordion(), options.player(), options.settings(tune.tune()), locks, count);
        this.planning = planner.prepare(request);
        int passes = planning.performance().passes().size();
        for (Lock lock : locks)
            if (lock.pass().isPresent()
                    && (lock.pass().getAsInt() < 1 || lock.pass().getAsInt() > passes))
                throw new IllegalArgumentException(
                        "pass in a lock is " + lock.pass().getAsInt() + "; allowed: 1 to " + passes);
        for (Accompaniment.Choice choice : request.settings().leftHand().choices())
            if (choice.pass().orElse(1) > passes)
                throw new IllegalArgumentException(
                        "pass of a pattern is " + choice.pass().orElse(1) + "; allowed: 1 to " + passes);
        this.alternatives =
                planning.alternatives(request.player().taste(), locks, count, plan -> {}, () -> Thread.currentThread()
                        .isInterrupted());
    }

    static OnePlanning of(TuneJob job, PlanOptions options, Packs packs, int count) {
        return of(job.file().toString(), job.read(options.reading()), options, packs, count);
    }

    /** @param fileName of the tune, for messages and plan files */
    static OnePlanning of(String fileName, ReadTune read, PlanOptions options, Packs packs, int count) {
        return new OnePlanning(fileName, read, options, packs, count);
    }

    ReadTune read() {
        return read;
    }

    /** The tune that is planned. */
    Proposing.Proposed tune() {
        return tune;
    }

    Planning planning() {
        return planning;
    }

    Alternatives alternatives() {
        return alternatives;
    }

    PlanFile file(Plan plan) {
        return new PlanFiles(fileName, read, options.part(), packs, tune.edits()).of(planning, plan);
    }
}
