package org.mantice.rule;

/** How far the bellows are open at the end of a stroke, as far as rules may know it. */
public record OpeningCell(int cell) implements BellowsStep {}
