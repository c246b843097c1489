package org.mantice.reading.midi;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.reading.midi.MidiMeta.TimeSignature;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * Measures and beats of a file, from its time signatures. A signature in the middle of a bar cuts the bar; places are
 * rounded to a 64th.
 */
public final class Bars {
    private static final MusicalTime ROUNDING = MusicalTime.of(1, 64);
    private final List<Bar> bars = new ArrayList<>();
    private final List<Beat> beats = new ArrayList<>();
    private final int most;

    private Bars(int most) {
        this.most = most;
    }

    /**
     * Bars until a place and a little further.
     *
     * @param signatures in order of time; 4/4 until the first (Standard MIDI Files 1.0)
     * @param division ticks a quarter note
     * @param lastTick the last tick that must lie in a bar
     * @param most bars and, five times that, beats; empty if they do not suffice
     */
    public static Optional<Bars> of(List<TimeSignature> signatures, int division, long lastTick, int most) {
        Bars made = new Bars(most);
        MusicalTime last = MusicalTime.of(lastTick, 4L * division);
        MusicalTime end = last.plus(last.dividedBy(20)).plus(MusicalTime.WHOLE);
        MusicalTime from = MusicalTime.ZERO;
        Meter meter = Meter.of(4, 4);
        for (TimeSignature next : signatures) {
            Meter following = Meter.of(next.beats(), next.unit());
            MusicalTime place = rounded(MusicalTime.of(next.tick(), 4L * division));
            if (following.equals(meter) || last.isBefore(place)) continue;
            if (!made.fill(meter, from, place)) return Optional.empty();
            from = from.max(place);
            meter = following;
        }
        if (!made.fill(meter, from, end.max(from.plus(ROUNDING)))) return Optional.empty();
        made.joinPickup();
        return made.divide() ? Optional.of(made) : Optional.empty();
    }

    /** Whole bars from place to place; the last is cut unless it is the last of all. */
    private boolean fill(Meter meter, MusicalTime from, MusicalTime until) {
        MusicalTime at = from;
        while (at.isBefore(until)) {
            if (bars.size() == most) return false;
            Bar bar = new Bar(meter, at, meter.length(), false);
            bars.add(bar);
            at = bar.end();
        }
        return true;
    }

    private static MusicalTime rounded(MusicalTime time) {
        return ROUNDING.times(time.plus(ROUNDING.dividedBy(2)).countOf(ROUNDING));
    }

    /** Cuts bars where the next begins, and counts a short first bar in the meter of the second. */
    private void joinPickup() {
        for (int i = 0; i + 1 < bars.size(); i++) {
            Bar bar = bars.get(i);
            MusicalTime room = bars.get(i + 1).start().minus(bar.start());
            if (room.isBefore(bar.length())) bars.set(i, new Bar(bar.meter(), bar.start(), room, false));
        }
        if (bars.size() < 2) return;
        Bar first = bars.get(0);
        Meter second = bars.get(1).meter();
        if (!first.meter().equals(second) && first.length().isBefore(second.length()))
            bars.set(0, new Bar(second, first.start(), first.length(), true));
    }

    private boolean divide() {
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            Meter meter = bar.meter();
            MusicalTime step = meter.isCompound() ? meter.beat() : MusicalTime.QUARTER.min(meter.beat());
            for (MusicalTime at = bar.start(); at.isBefore(bar.end()); at = at.plus(step)) {
                if (beats.size() == 5L * most) return false;
                MusicalTime length = step.min(bar.end().minus(at));
                beats.add(new Beat(i, at, length, meter.isCompound() && length.equals(step)));
            }
        }
        return true;
    }

    public List<Bar> bars() {
        return bars;
    }

    public List<Beat> beats() {
        return beats;
    }
}
