package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;

/**
 * A place of the chord line that can be pointed at.
 *
 * @param taken whether a chord symbol stands there
 * @param line of the sheet, from 0
 */
public record ChordTarget(ChordSpot spot, boolean taken, int line, Rectangle2D bounds) {}
