package org.mantice.app;

import java.io.PrintStream;

/** The one launcher: the command line today. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(run(args, System.out, System.err));
    }

    static int run(String[] args, PrintStream out, PrintStream err) {
        err.println("nothing to do yet");
        return 2;
    }
}
