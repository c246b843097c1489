package org.mantice.rule;

/** A place where the bellows may turn. */
public record TurnPlace(boolean inHeldNote) implements BellowsStep {}
