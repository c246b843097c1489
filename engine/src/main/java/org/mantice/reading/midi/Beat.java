package org.mantice.reading.midi;

import org.mantice.tune.MusicalTime;

/**
 * A stretch of a bar that is divided evenly: a dotted beat of compound meters, else a quarter or the shorter unit of the
 * meter.
 *
 * @param bar index of its bar
 * @param start from the beginning of the file
 * @param ternary divided in three before it is divided in two
 */
public record Beat(int bar, MusicalTime start, MusicalTime length, boolean ternary) {}
