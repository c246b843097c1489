package org.mantice.app.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.mantice.fault.Cause;
import org.mantice.fault.ManticeException;
import org.mantice.layer.RuleFailureException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The command line. Exit codes: 0, all done; 1, some of the files could not be read, planned, written or agreed with;
 * 2, the call itself is wrong; 3, the program failed.
 */
@Command(
        name = "mantice",
        version = "mantice 0.1.0",
        mixinStandardHelpOptions = true,
        description = "Decides bellows, fingers, buttons and registers for a tune on the piano accordion.",
        subcommands = {
            PlanCommand.class,
            ExplainCommand.class,
            CompareCommand.class,
            CheckCommand.class,
            WriteCommand.class,
            PatternsCommand.class,
            ChordsCommand.class
        },
        footerHeading = "%nExit codes:%n",
        footer = {
            "  0  all done",
            "  1  some files could not be read, planned, written or agreed with; the rest is done",
            "  2  the call is wrong: an unknown verb, option, profile or place",
            "  3  the program itself failed"
        })
public final class ManticeCommand implements Callable<Integer> {
    static final int DONE = 0;
    static final int SOME_FAILED = 1;
    static final int WRONG_CALL = 2;
    static final int PROGRAM_FAILED = 3;

    @Spec
    private CommandSpec spec;

    /** @param more verbs that are made elsewhere, as the window's */
    public static CommandLine commandLine(PrintWriter out, PrintWriter err, Object... more) {
        CommandLine line = new CommandLine(new ManticeCommand());
        for (Object verb : more) line.addSubcommand(verb);
        line.setOut(out);
        line.setErr(err);
        line.setExecutionExceptionHandler((e, failed, parsed) -> report(e, err));
        line.setParameterExceptionHandler((e, args) -> {
            err.println(oneLine(e) + " (--help shows what is allowed)");
            return WRONG_CALL;
        });
        return line;
    }

    /** Says what went wrong. @return the exit code */
    public static int report(Exception e, PrintWriter err) {
        if (e instanceof ManticeException || e instanceof RuleFailureException) {
            err.println(oneLine(e));
            return SOME_FAILED;
        }
        if (e instanceof IllegalArgumentException) {
            err.println(oneLine(e));
            return WRONG_CALL;
        }
        err.println("the program failed: " + oneLine(String.valueOf(e)));
        return PROGRAM_FAILED;
    }

    static String oneLine(String message) {
        return message.replaceAll("\\s*\\R\\s*", "; ");
    }

    static String oneLine(Throwable cause) {
        return oneLine(Cause.words(cause));
    }

    /** Without a verb: the shipped example. */
    @Override
    public Integer call() throws Exception {
        return new ExampleRun(spec.commandLine().getOut()).run();
    }
}
