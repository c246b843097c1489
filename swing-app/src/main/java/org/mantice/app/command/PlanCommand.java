package org.mantice.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.mantice.Alternatives;
import org.mantice.fault.ManticeException;
import org.mantice.file.PlanFile;
import org.mantice.layer.RuleFailureException;
import org.mantice.plan.Plan;
import org.mantice.plugin.Packs;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans tunes, several at once on all cores; one bad file never stops the rest. */
@Command(name = "plan", mixinStandardHelpOptions = true, description = "Plans tunes and compares the best plans.")
final class PlanCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "TUNE|FOLDER",
            arity = "1..*",
            description = "MusicXML, ABC or MIDI files, or folders of them")
    private List<Path> given = new ArrayList<>();

    @Mixin
    private PlanOptions options;

    @Option(
            names = "--alternatives",
            paramLabel = "N",
            defaultValue = "3",
            description = "how many plans to compare, 1 to 12 (${DEFAULT-VALUE})")
    private int alternatives;

    @Option(
            names = "--patience",
            paramLabel = "SECONDS",
            defaultValue = "60",
            description = "how long a tune may take when rules come from --packs, 1 to 3600 (${DEFAULT-VALUE})")
    private int patience;

    @Option(names = "--tune", paramLabel = "N|TITLE|all", defaultValue = TuneJob.ALL, description = TuneJob.HELP)
    private String tune;

    @Option(names = "--out", paramLabel = "DIR", description = "writes each plan as a file into this folder")
    private Path out;

    @Option(names = "--json", description = "prints the best plan of each tune as JSON, one document after the other")
    private boolean json;

    @Option(names = "--details", description = "also prints the best plan measure by measure")
    private boolean details;

    @Spec
    private CommandSpec spec;

    /** What became of one tune. */
    private record Result(String text, String problem, boolean playable) {}

    @Override
    public Integer call() throws Exception {
        if (alternatives < 1 || alternatives > 12)
            throw new IllegalArgumentException("alternatives is " + alternatives + "; allowed: 1 to 12");
        if (patience < 1 || patience > 3600)
            throw new IllegalArgumentException("patience is " + patience + "; allowed: 1 to 3600");
        Packs packs = options.foundPacks();
        options.check(packs);
        TuneFiles files = TuneFiles.in(given);
        List<TuneJob> jobs = TuneJob.of(files.files(), tune);
        PrintWriter err = spec.commandLine().getErr();
        files.tellOthers(err);
        for (Packs.Problem problem : packs.problems()) err.println(problem.origin() + ": " + problem.message());
        if (out != null) makeFolder(out);
        return report(planAll(jobs, packs));
    }

    static void makeFolder(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new IllegalArgumentException("out is " + folder + "; allowed: a folder that is there or can be made");
        }
        if (!Files.isWritable(folder))
            throw new IllegalArgumentException("out is " + folder + "; allowed: a folder that can be written to");
    }

    private Map<TuneJob, Result> planAll(List<TuneJob> jobs, Packs packs) throws InterruptedException {
        ProgressLine progress = new ProgressLine(jobs.size(), spec.commandLine().getErr());
        AtomicInteger done = new AtomicInteger();
        ExecutorService workers = Executors.newFixedThreadPool(
                Math.max(1, Math.min(jobs.size(), Runtime.getRuntime().availableProcessors())), PlanCommand::daemon);
        RuleWatch watch = new RuleWatch(packs, patience);
        try {
            Map<TuneJob, Future<Result>> futures = new LinkedHashMap<>();
            for (TuneJob job : jobs)
                futures.put(job, workers.submit(() -> {
                    watch.begins(job);
                    Result result = plan(job, packs);
                    progress.show(done.incrementAndGet());
                    return result;
                }));
            Map<TuneJob, Result> results = new LinkedHashMap<>();
            for (Map.Entry<TuneJob, Future<Result>> future : futures.entrySet())
                results.put(future.getKey(), resultOf(future.getKey(), future.getValue(), watch));
            return results;
        } finally {
            workers.shutdownNow();
            progress.clear();
        }
    }

    /** A rule that never comes back must not keep the program from ending. */
    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "planning");
        thread.setDaemon(true);
        return thread;
    }

    private static Result resultOf(TuneJob job, Future<Result> future, RuleWatch watch) throws InterruptedException {
        try {
            return watch.await(future);
        } catch (TimeoutException e) {
            return new Result("", job.name() + ": " + watch.verdict(job), false);
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            if (cause instanceof VirtualMachineError error
                    && !(error instanceof OutOfMemoryError)
                    && !(error instanceof StackOverflowError)) throw error;
            return new Result(
                    "", job.name() + ": the program failed: " + ManticeCommand.oneLine(String.valueOf(cause)), false);
        }
    }

    private Result plan(TuneJob job, Packs packs) {
        try {
            OnePlanning done = OnePlanning.of(job, options, packs, alternatives);
            if (!(done.alternatives() instanceof Alternatives.Found found))
                return new Result(new PlanText(done).text(details), "", false);
            if (out != null) write(done, job.output(), found.plans());
            return new Result(json ? done.file(found.best()).json() : new PlanText(done).text(details), "", true);
        } catch (ManticeException e) {
            return new Result("", ManticeCommand.oneLine(e), false);
        } catch (RuleFailureException e) {
            return new Result(
                    "",
                    job.name() + ": " + ManticeCommand.oneLine(e) + "; --without " + e.ruleId() + " goes on without it",
                    false);
        } catch (IllegalArgumentException e) {
            return new Result("", job.name() + ": " + ManticeCommand.oneLine(e), false);
        } catch (IOException e) {
            return new Result(
                    "", job.name() + ": cannot be written: " + ManticeCommand.oneLine(String.valueOf(e)), false);
        }
    }

    private void write(OnePlanning job, String name, List<Plan> plans) throws IOException {
        for (int i = 0; i < plans.size(); i++) {
            String ending = plans.size() == 1 ? "" : "-" + (i + 1);
            job.file(plans.get(i)).write(out.resolve(name + ending + PlanFile.SUFFIX));
        }
    }

    private int report(Map<TuneJob, Result> results) {
        PrintWriter plain = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        int failed = 0;
        int unplayable = 0;
        boolean first = true;
        for (Result result : results.values()) {
            if (!result.problem().isEmpty()) {
                err.println(result.problem());
                failed++;
                continue;
            }
            if (!result.playable()) unplayable++;
            if (json && !result.playable()) {
                err.print(result.text());
                continue;
            }
            if (!first && !json) plain.println();
            plain.print(result.text());
            first = false;
        }
        plain.flush();
        if (results.size() > 1)
            err.println(results.size() + " tunes: " + (results.size() - failed - unplayable) + " planned, " + unplayable
                    + " not playable as asked, " + failed + " could not be read or planned");
        return failed + unplayable > 0 ? ManticeCommand.SOME_FAILED : ManticeCommand.DONE;
    }
}
