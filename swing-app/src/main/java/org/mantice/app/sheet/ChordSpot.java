package org.mantice.app.sheet;

import org.mantice.tune.WrittenPlace;

/**
 * A place of the chord line above a staff: where a chord symbol stands or could stand.
 *
 * @param cell index of the measure on the sheet, which may show a written measure more than once
 * @param place in the written music
 */
public record ChordSpot(int cell, WrittenPlace place) {}
