package org.mantice.app;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.mantice.app.command.ManticeCommand;
import org.mantice.app.window.Display;
import org.mantice.app.window.WindowCommand;
import picocli.CommandLine;

/**
 * The one launcher. Without arguments it opens the window with a shipped example; where there is no display it plans the
 * example on the command line.
 */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(run(
                args,
                new PrintStream(System.out, true, StandardCharsets.UTF_8),
                new PrintStream(System.err, true, StandardCharsets.UTF_8)));
    }

    /**
     * Runs one command; the window's ends when it is closed.
     *
     * @return the exit code: see {@link ManticeCommand}
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        PrintWriter plain = new PrintWriter(out, true, StandardCharsets.UTF_8);
        PrintWriter errors = new PrintWriter(err, true, StandardCharsets.UTF_8);
        String[] call = args.length == 0 ? callWithoutArguments(errors) : args;
        CommandLine line = ManticeCommand.commandLine(plain, errors, new WindowCommand());
        int code = line.execute(call);
        plain.flush();
        errors.flush();
        return code;
    }

    /** The window where one can be shown, else what the command line does without arguments. */
    private static String[] callWithoutArguments(PrintWriter err) {
        Optional<String> problem = Display.problem();
        if (problem.isEmpty()) return new String[] {"window"};
        err.println("There is no display, so here is the command line: " + problem.get());
        return new String[0];
    }
}
