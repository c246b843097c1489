package org.mantice.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.MusicalTime;

/**
 * A note as it is drawn.
 *
 * @param type name in MusicXML, "1024th" to "maxima"
 * @param dots 0 to 2
 * @param actual notes in the time of {@code normal}; both 1 outside of tuplets
 */
record NoteValue(String type, int dots, int actual, int normal) {
    private static final List<String> TYPES = List.of(
            "1024th", "512th", "256th", "128th", "64th", "32nd", "16th", "eighth", "quarter", "half", "whole", "breve",
            "long", "maxima");
    private static final int MOST_DOTS = 2;
    private static final long SHORTEST = 1024;
    /** Tuplets of more notes are written without a note value. */
    private static final long MOST_ACTUAL = 1000;

    /** A stretch of an event: what one note shows, or, without a value, any length. */
    record Stretch(MusicalTime length, Optional<NoteValue> value) {}

    boolean isTuplet() {
        return actual != 1;
    }

    /**
     * One note where one can show the length, else several to be tied, the longest first. An odd factor of the
     * denominator is the number of a tuplet, in the time of the next lower power of two (3:2, 5:4, 7:4, 9:8). Lengths
     * from 16 whole notes on, shorter than a 1024th, or in tuplets of more than 1,000 stay one note without a value.
     *
     * @param length above 0
     */
    static List<Stretch> of(MusicalTime length) {
        long odd = length.denominator() >> Long.numberOfTrailingZeros(length.denominator());
        Stretch plain = new Stretch(length, Optional.empty());
        if (odd > MOST_ACTUAL) return List.of(plain);
        int actual = (int) odd;
        int normal = Integer.highestOneBit(actual);
        MusicalTime ratio = MusicalTime.of(normal, actual);
        MusicalTime shown = length.dividedBy(ratio);
        if (shown.denominator() > SHORTEST || shown.numerator() >= 16 * shown.denominator()) return List.of(plain);
        List<Stretch> stretches = new ArrayList<>();
        for (long left = shown.numerator() * (SHORTEST / shown.denominator()); left > 0; ) {
            int dots = 0;
            long base = Long.highestOneBit(left);
            long taken = base;
            while (dots < MOST_DOTS && (left & base >> dots + 1) != 0) taken |= base >> ++dots;
            String type = TYPES.get(Long.numberOfTrailingZeros(base));
            stretches.add(new Stretch(
                    MusicalTime.of(taken, SHORTEST).times(ratio),
                    Optional.of(new NoteValue(type, dots, actual, normal))));
            left -= taken;
        }
        return stretches;
    }

    /** Names and dots of one note or several tied ones that show a length; empty where none do without a tuplet. */
    static List<NoteValue> plain(MusicalTime length) {
        List<NoteValue> values =
                of(length).stream().flatMap(each -> each.value().stream()).toList();
        return values.stream().anyMatch(NoteValue::isTuplet) ? List.of() : values;
    }
}
