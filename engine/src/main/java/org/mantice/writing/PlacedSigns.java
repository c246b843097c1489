package org.mantice.writing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import org.mantice.tune.MusicalTime;

/**
 * Chord symbols and directions of a measure, written before the note during which they stand. What stands later than
 * that note's start gets an offset.
 */
final class PlacedSigns {
    /** @param write is given the offset in divisions; 0 for none */
    private record Sign(MusicalTime place, Consumer<Long> write) {}

    private final Divisions divisions;
    private final List<Sign> waiting = new ArrayList<>();

    PlacedSigns(Divisions divisions) {
        this.divisions = divisions;
    }

    void add(MusicalTime place, Consumer<Long> write) {
        waiting.add(new Sign(place, write));
        waiting.sort(Comparator.comparing(Sign::place));
    }

    /** Writes what stands before {@code end}, at a position of the file. */
    void writeUntil(MusicalTime end, MusicalTime position) {
        while (!waiting.isEmpty() && waiting.get(0).place().isBefore(end)) write(waiting.remove(0), position);
    }

    void writeRest(MusicalTime position) {
        while (!waiting.isEmpty()) write(waiting.remove(0), position);
    }

    private void write(Sign sign, MusicalTime position) {
        sign.write.accept(divisions.in(sign.place.minus(position)));
    }
}
