package org.mantice.rule;

/**
 * Two moments after each other.
 *
 * @param availableMillis from onset to onset
 * @param gapMillis silence between them, 0 if legato
 * @param slurred a written slur joins them
 */
public record FingerPair(FingerMoment from, FingerMoment to, long availableMillis, long gapMillis, boolean slurred)
        implements RightHandStep {}
