package org.mantice.harmony;

/**
 * One reason of a chord and its share of the cost.
 *
 * @param costMillipoints above 0 speaks against the chord, below 0 for it; only differences between proposals mean
 *     something
 */
public record HarmonyFact(HarmonyReason reason, long costMillipoints) {}
