package org.mantice.reading;

import org.mantice.reading.midi.Grid;
import org.mantice.tune.MusicalTime;

/** Says what grid was taken: how beats are divided, how far notes were moved, and what pace the beats were followed at. */
final class MidiGridReport {
    private final ReadReport report;
    private final MidiClock clock;

    MidiGridReport(ReadReport report, MidiClock clock) {
        this.report = report;
        this.clock = clock;
    }

    /** @param ticks where the notes of the melody begin, one or more */
    void add(Grid grid, long[] ticks) {
        long slowest = 1000;
        long fastest = 1000;
        int end = grid.beatOf(clock.moment(ticks[ticks.length - 1]));
        for (int i = 0; i <= end; i++) {
            slowest = Math.max(slowest, grid.pacePermille(i));
            fastest = Math.min(fastest, grid.pacePermille(i));
            if (grid.parts(i) == 0) continue;
            MusicalTime beat = grid.beats().get(i).length();
            String bar = clock.bar(grid.beats().get(i).start());
            report.addAt(bar, SkippedWhat.BEAT_DIVIDED, beat.toString(), String.valueOf(grid.parts(i)));
        }
        long most = 0;
        int moved = 0;
        for (long tick : ticks) {
            long by = Math.abs(grid.moved(clock.moment(tick)));
            if (by > Grid.FINE / 100) moved++;
            most = Math.max(most, by);
        }
        String percent = String.valueOf(100 * most / Grid.FINE);
        for (int i = 0; i < moved; i++) report.add(SkippedWhat.NOTES_ON_GRID, percent);
        if (slowest > 1000 || fastest < 1000) report.add(SkippedWhat.PACE_FOLLOWED, tenths(fastest), tenths(slowest));
    }

    private static String tenths(long permille) {
        return permille / 10 + "." + permille % 10;
    }
}
