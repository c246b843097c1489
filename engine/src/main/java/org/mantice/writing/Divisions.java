package org.mantice.writing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/**
 * How many divisions a quarter note has.
 *
 * @param perQuarter 1 to {@link #MOST}
 */
record Divisions(long perQuarter) {
    /** The most that a file may have in a measure. */
    static final long MOST = 1_000_000;
    /** The most for all measures alike: as many ticks as Standard MIDI files allow (MusicXML 4.0, element divisions). */
    private static final long MOST_ALIKE = 16_383;

    /**
     * For each measure: the least number for all of them where that is small enough, else each its own.
     *
     * @throws TuneWriteException if a measure needs more than {@link #MOST}
     */
    static List<Divisions> of(Tune tune) {
        List<Divisions> own = new ArrayList<>();
        long shared = 1;
        for (Measure measure : tune.measures()) {
            try {
                own.add(new Divisions(least(measure)));
            } catch (ArithmeticException e) {
                throw TuneWriteException.tooFine(TuneWriteException.place(tune, measure));
            }
            long last = own.get(own.size() - 1).perQuarter;
            if (shared <= MOST_ALIKE) shared = shared / divisor(shared, last) * last;
        }
        return shared <= MOST_ALIKE ? Collections.nCopies(own.size(), new Divisions(shared)) : own;
    }

    /** @throws ArithmeticException if that is above {@link #MOST} */
    private static long least(Measure measure) {
        Stream<MusicalTime> melody =
                measure.melody().stream().flatMap(event -> Stream.of(event.offset(), event.duration()));
        Stream<MusicalTime> bass =
                measure.bass().stream().flatMap(event -> Stream.of(event.offset(), event.duration()));
        Stream<MusicalTime> places = Stream.concat(
                measure.chords().stream().map(PlacedChord::offset),
                measure.marks().stream().map(Mark::offset));
        return Stream.of(Stream.of(measure.length()), melody, bass, places)
                .flatMap(times -> times)
                .map(time -> time.times(4).denominator())
                .reduce(1L, Divisions::common);
    }

    private static long common(long a, long b) {
        long common = Math.multiplyExact(a / divisor(a, b), b);
        if (common > MOST) throw new ArithmeticException("more than " + MOST);
        return common;
    }

    private static long divisor(long a, long b) {
        return BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValueExact();
    }

    /** Divisions in a time that is a whole number of them. */
    long in(MusicalTime time) {
        MusicalTime count = time.times(Math.multiplyExact(4, perQuarter));
        if (count.denominator() != 1)
            throw new IllegalArgumentException("time is " + time + "; allowed: whole divisions of " + perQuarter);
        return count.numerator();
    }
}
