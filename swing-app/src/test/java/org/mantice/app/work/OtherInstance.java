package org.mantice.app.work;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

/** The app's recovery in a process of its own. */
final class OtherInstance implements AutoCloseable {
    private final Process process;
    private final BufferedReader out;

    private OtherInstance(Path state, String job) throws IOException {
        process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        OtherInstance.class.getName(),
                        state.toString(),
                        job)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** An instance that has written a copy and goes on living. */
    static OtherInstance writing(Path state) throws IOException {
        OtherInstance other = new OtherInstance(state, "write");
        String line = other.out.readLine();
        if (!"written".equals(line)) throw new IllegalStateException("the other instance says " + line);
        return other;
    }

    /** How many abandoned copies another process sees. */
    static int seenFromOutside(Path state) throws IOException {
        try (OtherInstance other = new OtherInstance(state, "count")) {
            return Integer.parseInt(other.out.readLine());
        }
    }

    /** Ends the process without asking it. */
    void crash() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    public static void main(String[] args) throws IOException {
        Path state = Path.of(args[0]);
        AppFolder folder = new AppFolder(state, state, notice -> System.err.println(notice.key()));
        RecoveryCopy copy = new RecoveryCopy(folder, Clock.systemUTC());
        if (args[1].equals("count")) {
            List<AbandonedCopy> found = copy.findAbandoned();
            System.out.println(found.size());
            return;
        }
        copy.write(Works.unplanned());
        System.out.println("written");
        System.in.read();
    }
}
