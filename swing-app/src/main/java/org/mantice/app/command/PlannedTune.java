package org.mantice.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.file.PlanDocument;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneReader;

/** Finds the tune of a plan file again and sets up the planning as it was. */
final class PlannedTune {
    private PlannedTune() {}

    /** The tune's file: as the plan names it, or so from the plan's folder or one above it. */
    static Optional<Path> find(Path planFile, PlanDocument document) {
        Path named = Path.of(document.tune().file());
        if (Files.isRegularFile(named)) return Optional.of(named);
        for (Path folder = planFile.toAbsolutePath().getParent(); folder != null; folder = folder.getParent()) {
            Path there = folder.resolve(named);
            if (Files.isRegularFile(there)) return Optional.of(there);
        }
        return Optional.empty();
    }

    /** @throws IllegalArgumentException if the file is no longer what was planned, or a rule it was planned with is not here */
    static Planning planning(Path tune, PlanDocument document, Packs packs) {
        String part = document.tune().part();
        ReadTune read =
                new TuneReader().read(tune, part.isEmpty() ? ReadOptions.DEFAULT : ReadOptions.ofPart(part));
        if (!read.fingerprint().equals(document.tune().sha256()))
            throw new IllegalArgumentException(
                    "the tune " + tune + " is not as it was when it was planned: its fingerprint differs");
        return new Planner(Profiles.rulesOf(document, packs))
                .prepare(new PlanRequest(
                        read.tune(),
                        document.accordion(),
                        document.player(),
                        document.settings(),
                        document.locks(),
                        1));
    }
}
