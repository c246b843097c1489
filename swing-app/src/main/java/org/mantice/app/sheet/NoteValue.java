package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * A written note value.
 *
 * @param halvings of a whole note: -1 for a breve, 0 whole, 1 half, 2 quarter, to 7 for a 128th
 * @param dots 0 to 3
 */
record NoteValue(int halvings, int dots) {
    static final int BREVE = -1;
    static final int WHOLE = 0;
    static final int HALF = 1;
    static final int QUARTER = 2;
    static final int SHORTEST = 7;
    private static final int MOST_DOTS = 3;

    /** A value with where it begins in its measure. */
    record Placed(MusicalTime offset, NoteValue value) {}

    /** Flags or beams: one for an eighth. */
    int flags() {
        return Math.max(0, halvings - QUARTER);
    }

    boolean hasStem() {
        return halvings >= HALF;
    }

    MusicalTime length() {
        MusicalTime base = halvings < 0 ? MusicalTime.of(2, 1) : MusicalTime.of(1, 1L << halvings);
        return base.times(MusicalTime.of((2L << dots) - 1, 1L << dots));
    }

    /** The one value of exactly this length; empty if there is none. */
    static Optional<NoteValue> of(MusicalTime length) {
        long dotted = length.numerator() / Long.lowestOneBit(length.numerator());
        int dots = Long.numberOfTrailingZeros(dotted + 1) - 1;
        boolean known = Long.bitCount(length.denominator()) == 1 && Long.bitCount(dotted + 1) == 1;
        if (!known || dots > MOST_DOTS) return Optional.empty();
        int halvings = Long.numberOfTrailingZeros(length.denominator())
                - Long.numberOfTrailingZeros(Long.lowestOneBit(length.numerator()))
                - dots;
        return halvings < BREVE || halvings > SHORTEST ? Optional.empty() : Optional.of(new NoteValue(halvings, dots));
    }

    /** The longest plain value that is not longer, else the shortest there is. */
    static NoteValue within(MusicalTime length) {
        for (int halvings = BREVE; halvings < SHORTEST; halvings++) {
            NoteValue value = new NoteValue(halvings, 0);
            if (!length.isBefore(value.length())) return value;
        }
        return new NoteValue(SHORTEST, 0);
    }

    /**
     * The values that together fill a stretch of a measure: one if there is one of its length, else several, parted
     * where the meter's stronger places are. A stretch that no values fill exactly gets the nearest shorter one.
     *
     * @param offset from where the meter's first beat is or would be
     */
    static List<Placed> filling(MusicalTime offset, MusicalTime length, Meter meter) {
        List<Placed> values = new ArrayList<>();
        fill(offset, length, meter, values);
        return values;
    }

    private static void fill(MusicalTime offset, MusicalTime length, Meter meter, List<Placed> values) {
        Optional<NoteValue> single = of(length);
        Optional<MusicalTime> parting = single.isPresent() ? Optional.empty() : parting(offset, length, meter);
        if (parting.isEmpty()) {
            values.add(new Placed(offset, single.orElseGet(() -> within(length))));
            return;
        }
        fill(offset, parting.get().minus(offset), meter, values);
        fill(parting.get(), offset.plus(length).minus(parting.get()), meter, values);
    }

    /** The strongest place inside the stretch: beats by twos, beats, then halves of beats and so on. */
    private static Optional<MusicalTime> parting(MusicalTime offset, MusicalTime length, Meter meter) {
        MusicalTime beat = meter.beat();
        MusicalTime end = offset.plus(length);
        for (MusicalTime step = beat.times(8); ; step = step.dividedBy(2)) {
            MusicalTime next = step.times(offset.countOf(step) + 1);
            if (next.isBefore(end)) return Optional.of(next);
            if (step.isBefore(MusicalTime.of(1, 1L << SHORTEST))) return Optional.empty();
            if (step.equals(beat) && meter.isCompound()) step = MusicalTime.of(2, meter.unit());
        }
    }
}
