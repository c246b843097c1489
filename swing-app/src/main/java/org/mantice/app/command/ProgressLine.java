package org.mantice.app.command;

import java.io.PrintWriter;

/** A bar of progress on one line of a terminal; silent where the output is not a terminal or there is one file only. */
final class ProgressLine {
    private static final int WIDTH = 40;

    private final int total;
    private final PrintWriter err;
    private final boolean shown;

    /** From Java 22 on there is a console even where none is attached; the line is then written for nobody. */
    @SuppressWarnings("SystemConsoleNull")
    ProgressLine(int total, PrintWriter err) {
        this.total = total;
        this.err = err;
        this.shown = total > 1 && System.console() != null;
    }

    synchronized void show(int done) {
        if (!shown) return;
        int filled = WIDTH * done / total;
        err.print("\r[" + "=".repeat(filled) + " ".repeat(WIDTH - filled) + "] " + done + " of " + total);
        err.flush();
    }

    synchronized void clear() {
        if (!shown) return;
        err.print("\r" + " ".repeat(WIDTH + 24) + "\r");
        err.flush();
    }
}
