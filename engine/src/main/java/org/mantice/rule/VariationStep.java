package org.mantice.rule;

/** What a variation rule may look at. */
public sealed interface VariationStep extends Step permits PassChoice, PassPair {}
