package org.mantice.rule;

import java.util.List;
import org.mantice.instrument.BassButton;

/**
 * The left hand at one moment.
 *
 * @param buttons pressed, in row order
 * @param fingers for each button, 2 to 5
 * @param handColumn the column under the fourth finger
 * @param missing tones of the chord symbol that do not sound
 * @param foreign tones that sound and are not in the symbol
 */
public record ButtonMoment(List<BassButton> buttons, List<Integer> fingers, int handColumn, int missing, int foreign)
        implements LeftHandStep {
    public ButtonMoment {
        buttons = List.copyOf(buttons);
        fingers = List.copyOf(fingers);
    }
}
