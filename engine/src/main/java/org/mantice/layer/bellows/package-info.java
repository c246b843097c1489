/**
 * The bellows: where they may turn, what air the music takes, and the best strokes. Start at
 * {@link org.mantice.layer.bellows.BellowsLayer}; of the rest of the layers it knows only
 * {@code org.mantice.layer}, of the search {@link org.mantice.search.StrokeSearch}.
 */
package org.mantice.layer.bellows;
