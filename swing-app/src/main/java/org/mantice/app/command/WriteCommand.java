package org.mantice.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.mantice.app.files.FileKind;
import org.mantice.app.files.PlannedTune;
import org.mantice.app.files.PlayedScore;
import org.mantice.app.files.ScoreFormat;
import org.mantice.fault.ManticeException;
import org.mantice.file.AtomicFile;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.reading.ReadOptions;
import org.mantice.tune.Tune;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes tunes as MusicXML; a plan's tune is unrolled, with register and octave of each pass. */
@Command(
        name = "write",
        mixinStandardHelpOptions = true,
        description =
                "Writes tunes as MusicXML 4.0, each whole or not at all. Of a plan, its tune is written with every "
                        + "pass written out in the plan's register and octave; with --bass-staff also what its left "
                        + "hand plays.")
final class WriteCommand implements Callable<Integer> {
    @Parameters(paramLabel = "TUNE|PLAN|FOLDER", arity = "1..*", description = "tunes, plans, or folders of tunes")
    private List<Path> given = new ArrayList<>();

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "the folder to write into")
    private Path out;

    @Option(
            names = "--as",
            paramLabel = "FORMAT",
            defaultValue = "musicxml",
            description = "${COMPLETION-CANDIDATES}: as text or compressed (${DEFAULT-VALUE})")
    private ScoreFormat format;

    @Option(names = "--unrolled", description = "writes every time through out, without repeats and jumps")
    private boolean unrolled;

    @Option(
            names = "--times",
            paramLabel = "N",
            defaultValue = "1",
            description = "with --unrolled: times through the whole tune, 1 to 20 (${DEFAULT-VALUE})")
    private int times;

    @Option(
            names = "--bass-staff",
            description = "of a plan: writes its left hand as a bass staff, bass notes and chord letters M, m, 7, d, "
                    + "a counterbass underlined, with fingers")
    private boolean bassStaff;

    @Option(names = "--tune", paramLabel = "N|TITLE|all", defaultValue = TuneJob.ALL, description = TuneJob.HELP)
    private String tune;

    @Option(names = "--part", paramLabel = "PART", description = "the part with the melody: its id, name or number")
    private String part;

    @Mixin
    private Proposing proposing = new Proposing();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (times < 1 || times > 20) throw new IllegalArgumentException("times is " + times + "; allowed: 1 to 20");
        PlanCommand.makeFolder(out);
        Set<Path> written = new LinkedHashSet<>();
        int failed = 0;
        TuneFiles files = TuneFiles.in(given);
        files.tellOthers(spec.commandLine().getErr());
        for (TuneJob job : TuneJob.of(files.files(), tune)) {
            try {
                Path target = target(job, written);
                AtomicFile.write(target, format.bytes(tune(job)));
                written.add(target);
                spec.commandLine().getOut().println(target);
            } catch (ManticeException e) {
                spec.commandLine().getErr().println(ManticeCommand.oneLine(e));
                failed++;
            } catch (IllegalArgumentException e) {
                spec.commandLine().getErr().println(job.name() + ": " + ManticeCommand.oneLine(e));
                failed++;
            }
        }
        spec.commandLine().getOut().flush();
        return failed > 0 ? ManticeCommand.SOME_FAILED : ManticeCommand.DONE;
    }

    /** A name that no other tune of this call got, and never that of the tune itself. */
    private Path target(TuneJob job, Set<Path> written) throws IOException {
        Path file = job.file();
        String name = file.getFileName().toString();
        String base = name.endsWith(PlanFile.SUFFIX)
                ? name.substring(0, name.length() - PlanFile.SUFFIX.length())
                : job.output();
        Path target = out.resolve(base + "." + format);
        for (int copy = 2; written.contains(target); copy++) target = out.resolve(base + "-" + copy + "." + format);
        if (Files.exists(target) && Files.exists(file) && Files.isSameFile(target, file))
            throw new IllegalArgumentException("out is the tune's own folder; allowed: another one");
        return target;
    }

    private Tune tune(TuneJob job) {
        if (FileKind.of(job.file()) == FileKind.PLAN) return planned(job.file());
        if (bassStaff) throw new IllegalArgumentException("--bass-staff is given for a tune; allowed: for plans");
        ReadOptions options = part == null ? ReadOptions.DEFAULT : ReadOptions.ofPart(part);
        Tune read = proposing.of(job.read(options).tune()).tune();
        if (!unrolled) return read;
        Performance performance = Performer.perform(
                read, SettingsBuilder.of(read).timesThrough(times).build());
        return PlayedScore.of(performance).tune();
    }

    private Tune planned(Path file) {
        PlanDocument document = PlanFile.read(file).document();
        Optional<Path> found = PlannedTune.find(file, document);
        if (found.isEmpty())
            throw new IllegalArgumentException(
                    "its tune " + document.tune().file() + " is not there; allowed: at its place or beside the plan");
        Tune tune = PlannedTune.tune(found.get(), document);
        Performance performance = Performer.perform(tune, document.settings());
        return PlayedScore.of(performance, document.plan(), document.accordion(), bassStaff)
                .tune();
    }
}
