package org.mantice.bench;

import javax.swing.RepaintManager;

/** Calls whenever all that was to be painted has been; on the event thread. */
final class PaintWatch extends RepaintManager {
    private final Runnable painted;

    private PaintWatch(Runnable painted) {
        this.painted = painted;
    }

    static void install(Runnable painted) {
        RepaintManager.setCurrentManager(new PaintWatch(painted));
    }

    @Override
    public void paintDirtyRegions() {
        super.paintDirtyRegions();
        painted.run();
    }
}
