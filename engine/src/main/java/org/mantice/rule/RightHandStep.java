package org.mantice.rule;

/** What a fingering rule may look at. */
public sealed interface RightHandStep extends Step permits FingerMoment, FingerPair, FingerTriple {}
