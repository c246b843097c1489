package org.mantice.performance;

/**
 * One time through, within which register and octave stay. A new pass begins each time the whole tune starts again, and
 * wherever the order of play goes back over more than half of the written measures: a tune written once with a repeat
 * around all of it has two passes, a tune of two repeated parts has one.
 *
 * @param number from 1
 * @param timeThrough which time through the whole tune, from 1
 * @param firstMeasure index of its first played measure
 * @param lastMeasure index of its last played measure
 */
public record Pass(int number, int timeThrough, int firstMeasure, int lastMeasure) {}
