package org.mantice.tune;

/** A chord symbol at its place in a measure; it holds until the next one. */
public record PlacedChord(MusicalTime offset, ChordSymbol symbol) {}
