package org.mantice.rule;

/** A stroke of the bellows from one turn to the next. */
public record Stroke(long millis) implements BellowsStep {}
