package org.mantice.app.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.editing.Edits;
import org.mantice.file.PlanDocument;
import org.mantice.performance.Places;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Finds the tune of a plan file again and sets up the planning as it was. */
public final class PlannedTune {
    private PlannedTune() {}

    /** The tune's file: as the plan names it, or so from the plan's folder or one above it; empty if it is not there. */
    public static Optional<Path> find(Path planFile, PlanDocument document) {
        Path named;
        try {
            named = Path.of(document.tune().file());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
        if (Files.isRegularFile(named)) return Optional.of(named);
        for (Path folder = planFile.toAbsolutePath().getParent(); folder != null; folder = folder.getParent()) {
            Path there = folder.resolve(named);
            if (Files.isRegularFile(there)) return Optional.of(there);
        }
        return Optional.empty();
    }

    /** Written places in words as the reader counts them; by index where the tune is not there any more. */
    public static Function<WrittenPlace, String> places(Path planFile, PlanDocument document) {
        Optional<Tune> planned = find(planFile, document)
                .map(file -> read(file, document))
                .filter(tune -> tune.fingerprint().equals(document.tune().sha256()))
                .map(tune -> edited(tune, document));
        return planned.<Function<WrittenPlace, String>>map(tune -> place -> Places.words(tune, place))
                .orElse(place -> "written measure " + (place.measure() + 1) + ", offset " + place.offset());
    }

    /**
     * The tune as it was planned: with the edits that the plan keeps.
     *
     * @throws IllegalArgumentException if the file is no longer what was planned
     * @throws org.mantice.editing.TuneEditException if an edit does not fit it
     */
    public static Tune tune(Path file, PlanDocument document) {
        ReadTune read = read(file, document);
        if (!read.fingerprint().equals(document.tune().sha256()))
            throw new IllegalArgumentException(
                    "the tune " + file + " is not as it was when it was planned: its fingerprint differs");
        return edited(read, document);
    }

    private static Tune edited(ReadTune read, PlanDocument document) {
        return Edits.apply(read.tune(), document.tune().edits()).tune();
    }

    private static ReadTune read(Path tune, PlanDocument document) {
        String part = document.tune().part();
        String entry = document.tune().entry();
        ReadOptions options = part.isEmpty() ? ReadOptions.DEFAULT : ReadOptions.ofPart(part);
        return new TuneReader().read(tune, entry.isEmpty() ? options : options.withTune(entry));
    }

    /**
     * @throws IllegalArgumentException if the file is no longer what was planned, or a rule that the plan was made with
     *     is not here
     */
    public static Planning planning(Path tune, PlanDocument document, Packs packs) {
        return new Planner(Profiles.rulesOf(document, packs))
                .prepare(new PlanRequest(
                        tune(tune, document),
                        document.accordion(),
                        document.player(),
                        document.settings(),
                        document.locks(),
                        1));
    }
}
