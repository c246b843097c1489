package org.mantice.rule;

/** What a bellows rule may look at. */
public sealed interface BellowsStep extends Step permits TurnPlace, Stroke, StrokePair, OpeningCell {}
