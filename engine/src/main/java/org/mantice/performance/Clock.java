package org.mantice.performance;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.MusicalTime;

/**
 * Turns musical time into microseconds over stretches of one tempo each. Exact rational arithmetic, rounded once for
 * each answer, half up; only where more tempos meet than {@value #MOST_BITS} bits of denominator can hold does a new
 * stretch begin on a whole microsecond.
 */
final class Clock {
    private static final int MOST_BITS = 256;

    private final List<Stretch> stretches = new ArrayList<>();

    private record Stretch(MusicalTime from, MusicalTime microsPerWhole, BigInteger above, BigInteger below) {}

    /** From {@code from} on, a whole note lasts so long; times in ascending order, the first one 0. */
    void goOn(MusicalTime from, MusicalTime microsPerWhole) {
        if (stretches.isEmpty()) {
            stretches.add(new Stretch(from, microsPerWhole, BigInteger.ZERO, BigInteger.ONE));
            return;
        }
        Stretch last = stretches.get(stretches.size() - 1);
        if (last.microsPerWhole().equals(microsPerWhole)) return;
        BigInteger below = last.below().multiply(elapsedBelow(last, from));
        BigInteger above = last.above()
                .multiply(elapsedBelow(last, from))
                .add(elapsedAbove(last, from).multiply(last.below()));
        BigInteger shared = above.gcd(below);
        above = above.divide(shared);
        below = below.divide(shared);
        if (below.bitLength() > MOST_BITS) {
            above = rounded(above, below);
            below = BigInteger.ONE;
        }
        if (last.from().equals(from)) stretches.remove(stretches.size() - 1);
        stretches.add(new Stretch(from, microsPerWhole, above, below));
    }

    long micros(MusicalTime time) {
        int low = 0;
        int high = stretches.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (time.isBefore(stretches.get(middle).from())) high = middle - 1;
            else low = middle;
        }
        Stretch stretch = stretches.get(low);
        BigInteger elapsedBelow = elapsedBelow(stretch, time);
        BigInteger above = stretch.above()
                .multiply(elapsedBelow)
                .add(elapsedAbove(stretch, time).multiply(stretch.below()));
        return rounded(above, stretch.below().multiply(elapsedBelow)).longValueExact();
    }

    private static BigInteger elapsedAbove(Stretch stretch, MusicalTime time) {
        return BigInteger.valueOf(time.minus(stretch.from()).numerator())
                .multiply(BigInteger.valueOf(stretch.microsPerWhole().numerator()));
    }

    private static BigInteger elapsedBelow(Stretch stretch, MusicalTime time) {
        return BigInteger.valueOf(time.minus(stretch.from()).denominator())
                .multiply(BigInteger.valueOf(stretch.microsPerWhole().denominator()));
    }

    /** Half up; both parts are 0 or more. */
    private static BigInteger rounded(BigInteger above, BigInteger below) {
        return above.shiftLeft(1).add(below).divide(below.shiftLeft(1));
    }
}
