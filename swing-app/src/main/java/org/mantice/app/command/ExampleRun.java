package org.mantice.app.command;

import java.io.PrintWriter;
import org.mantice.app.work.TuneContent;
import org.mantice.plugin.Packs;
import picocli.CommandLine;

/** Plans a shipped example, so that a first start shows what the program does. */
final class ExampleRun {
    private final PrintWriter out;

    ExampleRun(PrintWriter out) {
        this.out = out;
    }

    int run() {
        PlanOptions options = new PlanOptions();
        new CommandLine(options).parseArgs();
        OnePlanning job = OnePlanning.of(
                TuneContent.EXAMPLE,
                TuneContent.example().open(options.part()).read(),
                options,
                Packs.ofClassPath(),
                3);
        out.print(new PlanText(job).text(true));
        out.println();
        out.println(
                "More: mantice plan TUNE, mantice explain PLAN, mantice compare PLAN PLAN, mantice check FILE; --help tells all.");
        return ManticeCommand.DONE;
    }
}
