package org.mantice.app.sheet;

import java.util.Optional;

/**
 * What is pointed at on a sheet.
 *
 * @param band index of the band in which something is selected; meaningless without a selection
 * @param selected the decision that the player points at
 * @param current the difference stepped to: every band marks it
 * @param chord the place of the chord line that the player points at
 */
public record Pointing(int band, Optional<Spot> selected, Optional<Spot> current, Optional<ChordSpot> chord) {
    public static final Pointing NOWHERE = new Pointing(-1, Optional.empty(), Optional.empty(), Optional.empty());
}
