package org.mantice.rule;

/** Two passes after each other. */
public record PassPair(PassChoice previous, PassChoice next) implements VariationStep {}
