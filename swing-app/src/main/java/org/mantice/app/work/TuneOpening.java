package org.mantice.app.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.mantice.app.files.PlannedTune;
import org.mantice.app.model.BookLine;
import org.mantice.app.model.OpenTune;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.reading.TuneEntry;

/**
 * Opens whatever a chooser, a drop, the recent files or the command line name: a tune, or a plan together with its tune.
 * What a file is shows from its content; its name decides where the content does not. Reads files, so it belongs off the
 * event thread.
 */
public final class TuneOpening {
    private TuneOpening() {}

    /** Opens a file; of a tune, the melody is chosen by the stated rule. */
    public static Opened open(Path file) {
        return open(file, Optional.empty());
    }

    /**
     * Opens a file.
     *
     * @param part the part of a tune's score with the melody; a plan says its own, and in a book no tune is chosen yet
     * @throws org.mantice.fault.ManticeException if the file is not there, cannot be read, or is neither tune nor plan
     *     that this version reads; with the place
     * @throws IllegalArgumentException if it is not a file, or the part is blank
     */
    public static Opened open(Path file, Optional<String> part) {
        TuneContent content = TuneContent.of(file);
        if (content.beginsAsJson() || (namedAsPlan(file) && !content.beginsAsScore())) return openPlan(file);
        List<TuneEntry> entries = content.entries();
        if (entries.size() > 1) return new Opened.Book(content, BookLine.of(entries));
        return new Opened.Tune(content.open(part), content);
    }

    /** The example that comes with the app. */
    public static Opened.Tune example() {
        TuneContent content = TuneContent.example();
        return new Opened.Tune(content.open(Optional.empty()), content);
    }

    private static boolean namedAsPlan(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(PlanFile.SUFFIX);
    }

    private static Opened openPlan(Path file) {
        PlanDocument plan = PlanFile.read(file).document();
        String wanted = plan.tune().file();
        Optional<Path> there = PlannedTune.find(file, plan);
        if (there.isPresent()) return with(plan, file, TuneContent.named(wanted, there.get()));
        if (wanted.equals(TuneContent.EXAMPLE)) return with(plan, file, TuneContent.example());
        return new Opened.TuneMissing(plan, file, wanted);
    }

    /**
     * Goes on with a plan whose tune was missing.
     *
     * @param file of the plan
     * @param tune where it is now
     * @return {@link Opened.PlanWithTune} or {@link Opened.TuneChanged}
     * @throws org.mantice.fault.ManticeException if the tune cannot be read
     */
    public static Opened open(PlanDocument plan, Path file, Path tune) {
        return with(plan, file, TuneContent.of(tune));
    }

    private static Opened with(PlanDocument plan, Path file, TuneContent content) {
        String part = plan.tune().part();
        Optional<String> asked = part.isBlank() ? Optional.empty() : Optional.of(part);
        if (!content.fingerprint().equals(plan.tune().sha256()))
            return new Opened.TuneChanged(plan, file, nearest(plan.tune(), content), content);
        String entry = plan.tune().entry();
        OpenTune tune = content.open(asked, entry.isEmpty() ? Optional.empty() : Optional.of(entry));
        return new Opened.PlanWithTune(tune, content, plan, file);
    }

    /** The tune of a changed file that a plan was most likely made of: that of its title, else at its place. */
    private static OpenTune nearest(PlanDocument.TuneSource planned, TuneContent content) {
        List<TuneEntry> entries = content.entries();
        Optional<String> handle = entries.stream()
                .filter(entry -> entry.title().equals(planned.title()))
                .findFirst()
                .or(() -> entries.stream()
                        .filter(entry -> entry.handle().equals(planned.entry()))
                        .findFirst())
                .map(TuneEntry::handle);
        return content.open(Optional.empty(), handle.filter(any -> entries.size() > 1));
    }
}
