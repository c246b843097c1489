package org.mantice.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.mantice.Planning;
import org.mantice.app.files.FileKind;
import org.mantice.app.files.PlannedTune;
import org.mantice.app.files.Profiles;
import org.mantice.app.text.ComparisonText;
import org.mantice.editing.TuneEdit;
import org.mantice.fault.ManticeException;
import org.mantice.file.PatternFile;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.layer.RuleFailureException;
import org.mantice.plan.Plan;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.Skipped;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks files: a plan or profile of ours, or whether a tune can be read and what was skipped. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks plans and profiles, and tells whether a tune can be read and what was skipped.")
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE|FOLDER", arity = "1..*", description = "plans, profiles, tunes, or folders of them")
    private List<Path> given = new ArrayList<>();

    @Option(names = "--part", paramLabel = "PART", description = "the part with the melody: its id, name or number")
    private String part;

    @Option(names = "--tune", paramLabel = "N|TITLE|all", defaultValue = TuneJob.ALL, description = TuneJob.HELP)
    private String tune;

    @Option(names = "--strict", description = "refuses what the standard of ABC does not allow, instead of listing it")
    private boolean strict;

    @Mixin
    private Proposing proposing = new Proposing();

    @Option(names = "--packs", paramLabel = "DIR", description = "folder with jars of more rules")
    private Path packFolder;

    @Spec
    private CommandSpec spec;

    private Packs packs = Packs.ofClassPath();

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        packs = Profiles.packs(Optional.ofNullable(packFolder));
        for (Packs.Problem problem : packs.problems())
            spec.commandLine().getErr().println(problem.origin() + ": " + problem.message());
        int failed = 0;
        TuneFiles files = TuneFiles.withOurs(given);
        files.tellOthers(spec.commandLine().getErr());
        for (Path file : files.files()) {
            try {
                out.println(check(file));
            } catch (CheckFailedException e) {
                e.problems.forEach(spec.commandLine().getErr()::println);
                failed++;
            } catch (ManticeException e) {
                spec.commandLine().getErr().println(ManticeCommand.oneLine(e));
                failed++;
            } catch (RuleFailureException | IllegalArgumentException e) {
                spec.commandLine().getErr().println(file + ": " + ManticeCommand.oneLine(e));
                failed++;
            }
        }
        out.flush();
        return failed > 0 ? ManticeCommand.SOME_FAILED : ManticeCommand.DONE;
    }

    private String check(Path file) {
        return switch (FileKind.of(file)) {
            case PLAN -> checkPlan(file);
            case ACCORDION ->
                file + ": accordion " + Profiles.accordion(file.toString()).name();
            case PLAYER -> file + ": player " + Profiles.player(file.toString()).name();
            case PATTERNS -> file + ": " + PatternFile.read(file).patterns().size() + " patterns of the left hand";
            default -> checkTune(file);
        };
    }

    /** Of a book, every tune on a line of its own; one that cannot be read makes the book fail once all are listed. */
    private String checkTune(Path file) {
        List<String> texts = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (TuneJob job : TuneJob.of(List.of(file), tune)) {
            try {
                texts.add(checkTune(job));
            } catch (ManticeException e) {
                problems.add((job.entry().isPresent() ? job.name() + ": " : "") + ManticeCommand.oneLine(e));
            }
        }
        if (problems.isEmpty()) return String.join(System.lineSeparator(), texts);
        texts.forEach(spec.commandLine().getOut()::println);
        throw new CheckFailedException(problems);
    }

    private String checkTune(TuneJob job) {
        ReadOptions options = part == null ? ReadOptions.DEFAULT : ReadOptions.ofPart(part);
        ReadTune read = job.read(strict ? options.strictly() : options);
        StringBuilder text = new StringBuilder(
                job.name() + ": " + read.tune().measures().size() + " measures, melody " + read.melody());
        for (Skipped skipped : read.skipped())
            text.append(System.lineSeparator()).append("  ").append(skipped);
        String proposed = proposing.of(read.tune()).words();
        if (!proposed.isEmpty())
            text.append(System.lineSeparator()).append("  ").append(proposed);
        return text.toString();
    }

    private String checkPlan(Path file) {
        PlanDocument document = PlanFile.read(file).document();
        String head = file + ": plan \"" + document.plan().label() + "\" of "
                + document.tune().file() + edited(document) + ", cost " + ComparisonText.cost(document.cost());
        if (document.explanation().cost() != document.cost())
            throw new IllegalArgumentException(
                    "the explanation says " + document.explanation().cost() + " and the decisions cost "
                            + document.cost() + " micropoints; allowed: the same");
        Optional<Path> tune = PlannedTune.find(file, document);
        if (tune.isEmpty()) return head + "; its tune is not there to price it anew";
        Planning planning = PlannedTune.planning(tune.get(), document, packs);
        Plan again = planning.rescore(document.plan());
        long cost = again.cost(document.player().taste());
        if (cost != document.cost())
            throw new IllegalArgumentException("the rules of today price it at " + ComparisonText.cost(cost)
                    + " instead of " + ComparisonText.cost(document.cost()));
        return head + "; priced anew: the same";
    }

    private static String edited(PlanDocument document) {
        List<TuneEdit> edits = document.tune().edits();
        if (edits.isEmpty()) return "";
        if (edits.equals(List.of(new TuneEdit.ProposeChords()))) return " with proposed chords";
        return " with " + edits.size() + (edits.size() == 1 ? " edit" : " edits");
    }

    /** Tunes of a book that cannot be read. */
    private static final class CheckFailedException extends RuntimeException {
        private final List<String> problems;

        private CheckFailedException(List<String> problems) {
            super(String.join("; ", problems));
            this.problems = List.copyOf(problems);
        }
    }
}
