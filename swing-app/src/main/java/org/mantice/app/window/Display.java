package org.mantice.app.window;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.util.Optional;

/** Whether there is a screen to show a window on. */
public final class Display {
    private Display() {}

    /**
     * Why there is none; empty if there is one. A display that is named but does not answer, and a Java without the
     * parts for windows, are none.
     */
    public static Optional<String> problem() {
        try {
            if (GraphicsEnvironment.isHeadless()) return Optional.of("no display is set");
            GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
            return Optional.empty();
        } catch (HeadlessException | AWTError | LinkageError e) {
            return Optional.of(firstLine(e));
        }
    }

    private static String firstLine(Throwable cause) {
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("").strip();
    }
}
