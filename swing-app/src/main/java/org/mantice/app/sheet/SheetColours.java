package org.mantice.app.sheet;

import java.awt.Color;
import java.util.List;

/**
 * The colours of a sheet. Every text pair keeps 4.5:1 and every graphic pair 3:1 against what it stands on (WCAG 2.2,
 * 1.4.3 and 1.4.11); a test computes them.
 *
 * @param paper behind the staff
 * @param ink notes and text on paper and strip
 * @param faint staff lines, barlines of strips, text of what is not played
 * @param strip behind the strips
 * @param out the fan of a stroke that opens
 * @param in the fan of a stroke that closes
 * @param onFan text on either fan
 * @param difference marks where plans differ
 * @param selection the frame around what is selected
 * @param lock the sign of a locked decision
 * @param caution what gives way, large jumps
 * @param plans the marks of the plans compared, four
 */
public record SheetColours(
        Color paper,
        Color ink,
        Color faint,
        Color strip,
        Color out,
        Color in,
        Color onFan,
        Color difference,
        Color selection,
        Color lock,
        Color caution,
        List<Color> plans) {
    public SheetColours {
        plans = List.copyOf(plans);
        if (plans.size() != 4) throw new IllegalArgumentException("plans are " + plans.size() + "; allowed: 4 colours");
    }
}
