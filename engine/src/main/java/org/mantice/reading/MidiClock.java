package org.mantice.reading;

import java.util.List;
import org.mantice.reading.midi.Bar;
import org.mantice.reading.midi.Bars;
import org.mantice.reading.midi.Grid;
import org.mantice.tune.MusicalTime;

/** Ticks and bars of a MIDI file; which bars become measures and how these are numbered. */
final class MidiClock {
    private final Bars bars;
    private final int division;
    private int first;
    private boolean pickup;

    MidiClock(Bars bars, int division) {
        this.bars = bars;
        this.division = division;
    }

    /** Measures begin with this bar; the first is numbered 0 where it is a pickup, else 1. */
    void begin(int firstBar, boolean withPickup) {
        first = firstBar;
        pickup = withPickup;
    }

    /** In the steps of the grid. */
    long moment(long tick) {
        return Grid.moment(tick, division);
    }

    MusicalTime time(long tick) {
        return MusicalTime.of(tick, 4L * division);
    }

    /** Index of the bar at a time. */
    int barAt(MusicalTime time) {
        List<Bar> all = bars.bars();
        int low = 0;
        int high = all.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (all.get(middle).start().compareTo(time) <= 0) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    /** The printed number of the measure at a time. */
    String bar(MusicalTime time) {
        return number(barAt(time));
    }

    String number(int bar) {
        return String.valueOf(bar - first + (pickup ? 0 : 1));
    }
}
