package org.mantice.rule;

/**
 * What one call of a rule may look at: as much as the search state holds, and no more, so that the optimum stays exact.
 */
public sealed interface Step permits RightHandStep, LeftHandStep, BellowsStep, VariationStep {}
