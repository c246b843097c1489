package org.mantice.app;

import java.io.File;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.mantice.app.command.ManticeCommand;
import org.mantice.app.window.Display;
import org.mantice.app.window.EarlyReading;
import org.mantice.app.window.WindowCommand;

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
        int code = args.length == 0 ? withoutArguments(plain, errors) : commandLine(asVerbs(args), plain, errors);
        plain.flush();
        errors.flush();
        return code;
    }

    /** A file alone, as a desktop hands over what is opened with the program, opens the window on it. */
    private static String[] asVerbs(String[] args) {
        boolean fileAlone = args.length == 1 && !args[0].startsWith("-") && new File(args[0]).isFile();
        return fileAlone ? new String[] {"window", args[0]} : args;
    }

    private static int commandLine(String[] args, PrintWriter out, PrintWriter err) {
        return ManticeCommand.commandLine(out, err, new WindowCommand()).execute(args);
    }

    /**
     * The window where one can be shown, without the time that a command line costs which has nothing to read; else what
     * the command line does without arguments.
     */
    private static int withoutArguments(PrintWriter out, PrintWriter err) {
        EarlyReading example = EarlyReading.ofExample();
        Optional<String> problem = Display.problem();
        if (problem.isEmpty()) return WindowCommand.openExample(example, err);
        err.println("There is no display, so here is the command line: " + problem.get());
        return commandLine(new String[0], out, err);
    }
}
