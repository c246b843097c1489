package org.mantice.app.sheet;

import org.mantice.tune.WrittenPlace;

/**
 * A decision's place on the sheet: what can be pointed at.
 *
 * @param strip which kind of decision
 * @param measure index of the played measure
 * @param pass from 1
 * @param place in the written music; of a register, the start of the pass
 * @param part which note of a chord, from the lowest, 0 for the lowest and for everything that is not a finger
 */
public record Spot(Strip strip, int measure, int pass, WrittenPlace place, int part) {}
