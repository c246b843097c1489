package org.mantice.performance;

import org.mantice.tune.MusicalTime;

/**
 * A measure as played.
 *
 * @param index in order of play, from 0
 * @param pass number of the pass, from 1
 * @param written index of the written measure
 * @param occurrence how often this written measure has been played by now, from 1
 * @param start from the start of the performance
 */
public record PlayedMeasure(
        int index, int pass, int written, int occurrence, MusicalTime start, MusicalTime length, long startMicros) {}
