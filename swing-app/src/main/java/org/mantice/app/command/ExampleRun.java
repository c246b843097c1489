package org.mantice.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import org.mantice.plugin.Packs;
import picocli.CommandLine;

/** Plans a shipped example, so that a first start shows what the program does. */
final class ExampleRun {
    static final String TUNE = "/examples/tunes/lanterns-at-the-weir.musicxml";

    private final PrintWriter out;

    ExampleRun(PrintWriter out) {
        this.out = out;
    }

    int run() throws IOException {
        PlanOptions options = new PlanOptions();
        new CommandLine(options).parseArgs();
        byte[] bytes;
        try (InputStream in = ExampleRun.class.getResourceAsStream(TUNE)) {
            if (in == null) throw new IOException("the shipped example " + TUNE + " is missing");
            bytes = in.readAllBytes();
        }
        OnePlanning job = OnePlanning.of(TUNE.substring(1), bytes, options, Packs.ofClassPath(), 3);
        out.print(new PlanText(job).text(true));
        out.println();
        out.println(
                "More: mantice plan TUNE, mantice explain PLAN, mantice compare PLAN PLAN, mantice check FILE; --help tells all.");
        return ManticeCommand.DONE;
    }
}
