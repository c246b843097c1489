package org.mantice.rule;

/** Three moments after each other. */
public record FingerTriple(FingerPair first, FingerPair second) implements RightHandStep {}
