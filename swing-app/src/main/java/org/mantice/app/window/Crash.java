package org.mantice.app.window;

import java.awt.EventQueue;
import java.awt.Window;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import org.mantice.app.words.Words;

/** Tells the player that the program itself failed. */
final class Crash {
    private Crash() {}

    /** Shows the report on the window's thread and comes back when it has been put away. */
    static void show(Optional<? extends Window> owner, Words words, String report) {
        Runnable telling = () -> Pages.show(owner, words.text("window.crash"), new CrashPage(words, report), words);
        if (EventQueue.isDispatchThread()) {
            telling.run();
            return;
        }
        try {
            EventQueue.invokeAndWait(telling);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the report cannot be shown: " + report, e.getCause());
        }
    }
}
