package org.mantice.app;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.mantice.app.command.ManticeCommand;
import picocli.CommandLine;

/** The one launcher. Without arguments it plans a shipped example and prints the comparison. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(run(
                args,
                new PrintStream(System.out, true, StandardCharsets.UTF_8),
                new PrintStream(System.err, true, StandardCharsets.UTF_8)));
    }

    /**
     * Runs one command.
     *
     * @return the exit code: see {@link ManticeCommand}
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        PrintWriter plain = new PrintWriter(out, true, StandardCharsets.UTF_8);
        PrintWriter errors = new PrintWriter(err, true, StandardCharsets.UTF_8);
        CommandLine line = ManticeCommand.commandLine(plain, errors);
        int code = line.execute(args);
        plain.flush();
        errors.flush();
        return code;
    }
}
