package org.mantice.tune;

import java.math.BigInteger;

/**
 * An exact musical time or duration in whole notes, as a fraction in lowest terms: a quarter note is 1/4, a dotted
 * half 3/4, a triplet eighth 1/12.
 *
 * @param numerator any value; negative only for differences
 * @param denominator 1 or more after reduction
 */
public record MusicalTime(long numerator, long denominator) implements Comparable<MusicalTime> {
    public static final MusicalTime ZERO = new MusicalTime(0, 1);
    public static final MusicalTime QUARTER = new MusicalTime(1, 4);
    public static final MusicalTime WHOLE = new MusicalTime(1, 1);

    /** Reduces the fraction. @throws IllegalArgumentException if the denominator is zero */
    public MusicalTime {
        if (denominator == 0) throw new IllegalArgumentException("denominator is 0; allowed: any other number");
        long divisor = gcd(numerator, denominator);
        if (denominator < 0) divisor = -divisor;
        numerator /= divisor;
        denominator /= divisor;
    }

    public static MusicalTime of(long numerator, long denominator) {
        return new MusicalTime(numerator, denominator);
    }

    public MusicalTime plus(MusicalTime other) {
        if (denominator == other.denominator)
            return new MusicalTime(Math.addExact(numerator, other.numerator), denominator);
        long shared = gcd(denominator, other.denominator);
        long scale = other.denominator / shared;
        return new MusicalTime(
                Math.addExact(
                        Math.multiplyExact(numerator, scale),
                        Math.multiplyExact(other.numerator, denominator / shared)),
                Math.multiplyExact(denominator, scale));
    }

    public MusicalTime minus(MusicalTime other) {
        return plus(new MusicalTime(Math.negateExact(other.numerator), other.denominator));
    }

    public MusicalTime times(MusicalTime factor) {
        long a = gcd(numerator, factor.denominator);
        long b = gcd(factor.numerator, denominator);
        return new MusicalTime(
                Math.multiplyExact(numerator / a, factor.numerator / b),
                Math.multiplyExact(denominator / b, factor.denominator / a));
    }

    public MusicalTime times(long factor) {
        return times(new MusicalTime(factor, 1));
    }

    /** @throws IllegalArgumentException if the divisor is 0 */
    public MusicalTime dividedBy(MusicalTime divisor) {
        return times(new MusicalTime(/* numerator= */ divisor.denominator, /* denominator= */ divisor.numerator));
    }

    public MusicalTime dividedBy(long divisor) {
        return times(new MusicalTime(1, divisor));
    }

    /** How many whole times {@code step} fits, rounded down. */
    public long countOf(MusicalTime step) {
        if (step.numerator <= 0) throw new IllegalArgumentException("step is " + step + "; allowed: above 0");
        return BigInteger.valueOf(numerator)
                .multiply(BigInteger.valueOf(step.denominator))
                .divide(BigInteger.valueOf(denominator).multiply(BigInteger.valueOf(step.numerator)))
                .longValueExact();
    }

    public boolean isMultipleOf(MusicalTime step) {
        return step.times(countOf(step)).equals(this);
    }

    public boolean isZero() {
        return numerator == 0;
    }

    public boolean isPositive() {
        return numerator > 0;
    }

    public boolean isBefore(MusicalTime other) {
        return compareTo(other) < 0;
    }

    public MusicalTime min(MusicalTime other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public MusicalTime max(MusicalTime other) {
        return compareTo(other) >= 0 ? this : other;
    }

    @Override
    public int compareTo(MusicalTime other) {
        if (denominator == other.denominator) return Long.compare(numerator, other.numerator);
        long high = Math.multiplyHigh(numerator, other.denominator);
        long otherHigh = Math.multiplyHigh(other.numerator, denominator);
        if (high != otherHigh) return Long.compare(high, otherHigh);
        return Long.compareUnsigned(numerator * other.denominator, other.numerator * denominator);
    }

    /** As {@code "3/4"}, or {@code "2"} for whole numbers. */
    @Override
    public String toString() {
        return denominator == 1 ? Long.toString(numerator) : numerator + "/" + denominator;
    }

    private static long gcd(long a, long b) {
        a = Math.abs(a);
        b = Math.abs(b);
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a == 0 ? 1 : a;
    }
}
