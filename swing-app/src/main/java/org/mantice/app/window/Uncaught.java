package org.mantice.app.window;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * What nobody caught. First the work is copied, then the player is told, once at a time: a fault that comes back with
 * every repaint must not bury the window under dialogs.
 */
final class Uncaught implements Thread.UncaughtExceptionHandler {
    private volatile Runnable saveWork = () -> {};
    private volatile Consumer<String> tell;
    private final AtomicBoolean telling = new AtomicBoolean();

    /** @param tell takes the report, on any thread, and comes back when the player has put it away */
    Uncaught(Consumer<String> tell) {
        this.tell = tell;
    }

    /** From now on work can be saved and the player told in the window. */
    void use(Runnable save, Consumer<String> howToTell) {
        saveWork = save;
        tell = howToTell;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable cause) {
        try {
            saveWork.run();
        } catch (RuntimeException | Error e) {
            cause.addSuppressed(e);
        }
        if (!telling.compareAndSet(false, true)) return;
        try {
            tell.accept(report(thread, cause));
        } finally {
            telling.set(false);
        }
    }

    /** What helps to find the fault, and nothing about the player or the files. */
    static String report(Thread thread, Throwable cause) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        out.println("Mantice " + AppMain.VERSION);
        out.println("Java " + System.getProperty("java.version") + ", " + System.getProperty("java.vendor"));
        out.println(System.getProperty("os.name") + " " + System.getProperty("os.version") + ", "
                + System.getProperty("os.arch"));
        out.println("Thread " + thread.getName());
        out.println();
        cause.printStackTrace(out);
        out.flush();
        return text.toString();
    }
}
