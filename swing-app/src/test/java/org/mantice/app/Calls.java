package org.mantice.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Runs the launcher inside the test's JVM and keeps what it printed. */
public final class Calls {
    /** What one call gave. */
    public record Answer(int code, String out, String err) {}

    private Calls() {}

    public static Answer call(Object... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = new String[args.length];
        for (int i = 0; i < args.length; i++) words[i] = String.valueOf(args[i]);
        int code = Main.run(
                words,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The examples of the checkout. */
    static Path examples() {
        return Path.of(System.getProperty("mantice.root", "..")).resolve("examples");
    }

    public static Path tune(String name) {
        return examples().resolve("tunes").resolve(name + ".musicxml");
    }
}
