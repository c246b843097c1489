package org.mantice.rule;

/** Two strokes after each other. */
public record StrokePair(Stroke first, Stroke second) implements BellowsStep {}
