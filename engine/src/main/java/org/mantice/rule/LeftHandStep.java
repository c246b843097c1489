package org.mantice.rule;

/** What a left-hand rule may look at. */
public sealed interface LeftHandStep extends Step permits ButtonMoment, ButtonPair {}
