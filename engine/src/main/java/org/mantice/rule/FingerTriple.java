package org.mantice.rule;

/** Three moments after each other: two pairs that share the middle one. */
public record FingerTriple(FingerPair first, FingerPair second) implements RightHandStep {
    public FingerTriple {
        if (!first.to().equals(second.from()))
            throw new IllegalArgumentException("second begins with " + second.from() + "; allowed: " + first.to());
    }

    public FingerMoment before() {
        return first.from();
    }

    public FingerMoment middle() {
        return first.to();
    }

    public FingerMoment after() {
        return second.to();
    }
}
