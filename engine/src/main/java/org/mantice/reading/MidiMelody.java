package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.reading.midi.Grid;
import org.mantice.reading.midi.MidiNote;
import org.mantice.tune.MusicalTime;

/**
 * The notes of a MIDI melody as events on the grid. What begins at one place is a chord with the length of its highest
 * note; what lasts into the next event is cut there. A short silence before the next event belongs to the touch and is
 * written as part of the note, unless the file puts the end on a plain division.
 */
final class MidiMelody {
    /** A silence of at most this much of the time to the next event (estimate). */
    private static final MusicalTime TOUCH = MusicalTime.of(3, 10);

    private static final MusicalTime LONGEST_TOUCH = MusicalTime.of(1, 8);
    private static final MusicalTime SHORTEST = MusicalTime.of(1, 16);
    private final Grid grid;
    private final MidiClock clock;
    private final ReadReport report;

    MidiMelody(Grid grid, MidiClock clock, ReadReport report) {
        this.grid = grid;
        this.clock = clock;
        this.report = report;
    }

    /** @param notes one or more, in order */
    List<MidiEvent> events(List<MidiNote> notes) {
        List<MidiEvent> events = new ArrayList<>();
        int from = 0;
        while (from < notes.size()) {
            MusicalTime onset = onset(notes.get(from));
            int to = from + 1;
            while (to < notes.size() && onset(notes.get(to)).compareTo(onset) <= 0) to++;
            Optional<MusicalTime> limit = to < notes.size() ? Optional.of(onset(notes.get(to))) : Optional.empty();
            events.add(event(onset, notes.subList(from, to), limit));
            from = to;
        }
        return events;
    }

    private MusicalTime onset(MidiNote note) {
        return grid.onset(clock.moment(note.start()));
    }

    private MidiEvent event(MusicalTime onset, List<MidiNote> notes, Optional<MusicalTime> next) {
        MidiNote top = notes.get(0);
        for (MidiNote note : notes) if (note.pitch() > top.pitch()) top = note;
        MidiEvent event = new MidiEvent(onset, notes.get(0).start(), end(onset, top, next));
        boolean spread = false;
        boolean uneven = false;
        for (MidiNote note : notes) {
            if (!event.pitches.add(note.pitch())) report.addAt(clock.bar(onset), SkippedWhat.DOUBLED_NOTE);
            spread |= clock.moment(note.start()) - clock.moment(event.tick) > Grid.FINE / 16;
            uneven |= !end(onset, note, next).equals(event.end);
        }
        if (isCut(top, next)) report.addAt(clock.bar(onset), SkippedWhat.LENGTH_CUT);
        if (spread) report.addAt(clock.bar(onset), SkippedWhat.SAME_PLACE);
        if (uneven) report.addAt(clock.bar(onset), SkippedWhat.CHORD_LENGTH_OF_TOP);
        return event;
    }

    /** Whether the note sounds into the next event for longer than touch explains. */
    private boolean isCut(MidiNote note, Optional<MusicalTime> next) {
        return next.isPresent() && next.get().plus(SHORTEST).isBefore(grid.end(clock.moment(note.end())));
    }

    private MusicalTime end(MusicalTime onset, MidiNote note, Optional<MusicalTime> following) {
        long moment = clock.moment(note.end());
        MusicalTime end = grid.end(moment);
        if (!onset.isBefore(end)) end = onset.plus(SHORTEST);
        if (following.isEmpty()) return end;
        MusicalTime next = following.get();
        if (next.isBefore(end)) return next;
        MusicalTime gap = next.minus(end);
        boolean touch = gap.compareTo(next.minus(onset).times(TOUCH)) <= 0 && gap.compareTo(LONGEST_TOUCH) <= 0;
        return touch && !grid.isMeant(moment) ? next : end;
    }
}
