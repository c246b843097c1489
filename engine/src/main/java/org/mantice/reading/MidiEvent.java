package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.mantice.tune.Lyric;
import org.mantice.tune.MusicalTime;

/** A note or chord of a MIDI melody on the grid, before it is parted by barlines. */
final class MidiEvent {
    final MusicalTime onset;
    final long tick;
    MusicalTime end;
    final TreeSet<Integer> pitches = new TreeSet<>();
    final List<Lyric> lyrics = new ArrayList<>();

    MidiEvent(MusicalTime onset, long tick, MusicalTime end) {
        this.onset = onset;
        this.tick = tick;
        this.end = end;
    }
}
