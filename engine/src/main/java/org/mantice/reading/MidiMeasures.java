package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.mantice.reading.midi.Bar;
import org.mantice.reading.midi.Bars;
import org.mantice.reading.midi.Beat;
import org.mantice.reading.midi.FoundChord;
import org.mantice.reading.midi.Spelling;
import org.mantice.tune.Barlines;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Key;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;

/**
 * Parts events on the grid into measures: notes are tied over barlines, and inside a bar at beats where their length has
 * no note value of its own; silence becomes rests.
 */
final class MidiMeasures {
    private final Bars bars;
    private final MidiClock clock;
    private final int first;
    private final int last;
    private final MusicalTime begin;
    private final List<List<MelodyEvent>> melody = new ArrayList<>();
    private final List<List<PlacedChord>> chords = new ArrayList<>();
    private final List<List<Mark>> marks = new ArrayList<>();
    private final List<Key> keys;
    private final TreeMap<MusicalTime, Beat> beats = new TreeMap<>();

    /**
     * @param begin the first note; what the first bar holds before it is no part of the measure
     * @param end of the last note
     * @param keys of every bar
     */
    MidiMeasures(Bars bars, MidiClock clock, MusicalTime begin, MusicalTime end, List<Key> keys) {
        this.bars = bars;
        this.clock = clock;
        this.keys = keys;
        this.first = clock.barAt(begin);
        int at = clock.barAt(end);
        this.last = at > first && bars.bars().get(at).start().equals(end) ? at - 1 : at;
        this.begin = begin;
        clock.begin(first, isPickup());
        for (Beat beat : bars.beats()) beats.put(beat.start(), beat);
        for (int i = first; i <= last; i++) {
            melody.add(new ArrayList<>());
            chords.add(new ArrayList<>());
            marks.add(new ArrayList<>());
        }
    }

    boolean isPickup() {
        Bar bar = bars.bars().get(first);
        return bar.pickup() || bar.start().isBefore(begin);
    }

    private MusicalTime start(int bar) {
        return bars.bars().get(bar).start().max(begin);
    }

    void add(List<MidiEvent> events) {
        MusicalTime at = begin;
        for (MidiEvent event : events) {
            if (at.isBefore(event.onset)) part(at, event.onset, Optional.empty());
            part(event.onset, event.end, Optional.of(event));
            at = event.end;
        }
        MusicalTime end = bars.bars().get(last).end();
        if (at.isBefore(end)) part(at, end, Optional.empty());
    }

    private void part(MusicalTime from, MusicalTime until, Optional<MidiEvent> event) {
        MusicalTime at = from;
        while (at.isBefore(until)) {
            int bar = clock.barAt(at);
            if (bar > last) return;
            MusicalTime end = until.min(bars.bars().get(bar).end());
            if (event.isPresent()
                    || !at.equals(start(bar))
                    || end.isBefore(bars.bars().get(bar).end())) end = written(at, end);
            boolean back = from.isBefore(at);
            boolean forward = end.isBefore(until) && clock.barAt(end) <= last && inside(end);
            melody.get(bar - first).add(made(at.minus(start(bar)), end.minus(at), event, bar, back, forward));
            at = end;
        }
    }

    private boolean inside(MusicalTime time) {
        return time.isBefore(bars.bars().get(last).end());
    }

    /** The end of the longest piece from a place that has a note value, not beyond an end in the same bar. */
    private MusicalTime written(MusicalTime at, MusicalTime end) {
        if (isNoteValue(end.minus(at))) return end;
        MusicalTime next = beats.higherKey(at);
        while (next != null && next.isBefore(end)) {
            MusicalTime later = beats.higherKey(next);
            boolean goesOn = later != null && later.isBefore(end) && isNoteValue(later.minus(at));
            if (!goesOn) break;
            next = later;
        }
        if (next != null && next.isBefore(end) && isNoteValue(next.minus(at))) return next;
        MusicalTime limit = next == null ? end : next.min(end);
        return at.plus(largestValue(limit.minus(at)));
    }

    /** 1, 1.5 or 1.75 times a power of two, or two thirds of one of the first two. */
    private static boolean isNoteValue(MusicalTime length) {
        long top = length.numerator();
        long below = length.denominator();
        if (below % 3 == 0) below /= 3;
        else if (below % 5 == 0) below /= 5;
        else if (below % 7 == 0) below /= 7;
        boolean plain = below == length.denominator();
        long odd = top >> Long.numberOfTrailingZeros(top);
        return Long.bitCount(below) == 1 && (odd == 1 || odd == 3 || odd == 7 && plain);
    }

    /** The largest undotted value in a length: plain, else of the same tuplet; the length itself if there is none. */
    private static MusicalTime largestValue(MusicalTime length) {
        long odd = length.denominator() >> Long.numberOfTrailingZeros(length.denominator());
        MusicalTime value = MusicalTime.of(4, odd);
        for (int i = 0; i < 16; i++) {
            if (value.isBefore(length)) return value;
            value = value.dividedBy(2);
        }
        return length;
    }

    private MelodyEvent made(
            MusicalTime offset, MusicalTime length, Optional<MidiEvent> event, int bar, boolean back, boolean forward) {
        List<MelodyNote> notes = event.stream()
                .flatMap(each -> each.pitches.stream())
                .map(pitch -> new MelodyNote(Spelling.pitch(pitch, keys.get(bar)), back, forward, List.of()))
                .toList();
        EventMarks marksHere = event.filter(each -> !back && !each.lyrics.isEmpty())
                .map(each -> new EventMarks(0, 0, Set.of(), false, false, each.lyrics, Optional.empty()))
                .orElse(EventMarks.NONE);
        return new MelodyEvent(offset, length, notes, GraceGroup.NONE, GraceGroup.NONE, marksHere);
    }

    void addChords(List<FoundChord> found) {
        for (FoundChord chord : found) {
            int bar = clock.barAt(chord.place());
            if (bar >= first && bar <= last && !chord.place().isBefore(begin))
                chords.get(bar - first).add(new PlacedChord(chord.place().minus(start(bar)), chord.symbol()));
        }
    }

    void addMark(MusicalTime place, Function<MusicalTime, Mark> mark) {
        MusicalTime from = place.max(begin);
        int bar = clock.barAt(from);
        if (bar <= last) marks.get(bar - first).add(mark.apply(from.minus(start(bar))));
    }

    List<Measure> measures() {
        List<Measure> measures = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            Bar bar = bars.bars().get(i);
            measures.add(new Measure(
                    clock.number(i),
                    bar.end().minus(start(i)),
                    bar.meter(),
                    keys.get(i),
                    i == first && isPickup(),
                    melody.get(i - first),
                    chords.get(i - first),
                    List.of(),
                    marks.get(i - first),
                    Barlines.PLAIN));
        }
        return measures;
    }
}
