package org.mantice.app.window;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * What nobody caught. First the work is copied, then the player is told, once at a time: a fault that comes back with
 * every repaint must not bury the window under dialogs.
 */
final class Uncaught implements Thread.UncaughtExceptionHandler {
    private final AtomicReference<Runnable> saveWork = new AtomicReference<>(() -> {});
    private final AtomicReference<Consumer<String>> tell;
    private final AtomicBoolean telling = new AtomicBoolean();

    /** @param tell takes the report, on any thread, and comes back when the player has put it away */
    Uncaught(Consumer<String> tell) {
        this.tell = new AtomicReference<>(tell);
    }

    /** From now on work can be saved and the player told in the window. */
    void use(Runnable save, Consumer<String> telling) {
        saveWork.set(save);
        tell.set(telling);
    }

    @Override
    public void uncaughtException(Thread thread, Throwable cause) {
        try {
            saveWork.get().run();
        } catch (RuntimeException | Error e) {
            cause.addSuppressed(e);
        }
        if (!telling.compareAndSet(false, true)) return;
        try {
            tell.get().accept(report(thread, cause));
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
