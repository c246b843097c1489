package org.mantice.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which letters of a bass staff are printed: those of a chord that is not the one struck before it, so that a letter is
 * not repeated while the chord stays (common practice, no source).
 */
public final class BassLetters {
    private record Sign(List<Pitch> pitches, BassChordType letter) {}

    private List<Sign> before = List.of();

    /**
     * Goes on to the next measure.
     *
     * @param events of the measure, in order
     * @return for each event whether a letter is printed at it
     */
    public List<Boolean> next(List<BassEvent> events) {
        List<Boolean> printed = new ArrayList<>();
        for (int start = 0; start < events.size(); ) {
            int end = start;
            List<Sign> signs = new ArrayList<>();
            for (;
                    end < events.size()
                            && events.get(end).offset().equals(events.get(start).offset());
                    end++) sign(events.get(end)).ifPresent(signs::add);
            boolean changed = !signs.equals(before);
            for (BassEvent event : events.subList(start, end))
                printed.add(changed && sign(event).isPresent());
            if (!signs.isEmpty()) before = signs;
            start = end;
        }
        return printed;
    }

    private static Optional<Sign> sign(BassEvent event) {
        return event.chord().map(letter -> new Sign(event.pitches(), letter));
    }
}
