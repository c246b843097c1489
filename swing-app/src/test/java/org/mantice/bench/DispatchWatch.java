package org.mantice.bench;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** The event queue with a stop watch: remembers the event whose handling took longest. */
final class DispatchWatch extends EventQueue {
    /**
     * An event's handling.
     *
     * @param ownMs processor time of the event thread, which other programs do not lengthen
     */
    record Handling(String event, double ms, double ownMs) {
        static final Handling NONE = new Handling("none", 0, 0);
    }

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private Handling longest = Handling.NONE;

    static DispatchWatch install() {
        DispatchWatch watch = new DispatchWatch();
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(watch);
        return watch;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        long start = System.nanoTime();
        long own = threads.getCurrentThreadCpuTime();
        super.dispatchEvent(event);
        Handling handling = new Handling(
                event.getClass().getSimpleName(),
                (System.nanoTime() - start) / 1e6,
                (threads.getCurrentThreadCpuTime() - own) / 1e6);
        synchronized (this) {
            if (handling.ownMs() > longest.ownMs()) longest = handling;
        }
    }

    /** The longest since it was last asked. */
    synchronized Handling take() {
        Handling taken = longest;
        longest = Handling.NONE;
        return taken;
    }
}
