package org.mantice.app.look;

import com.formdev.flatlaf.FlatLaf;
import java.awt.Color;
import java.util.List;
import javax.swing.UIManager;
import org.mantice.app.sheet.SheetColours;

/** Switches between light and dark, and reads the colours of the look in force. */
public final class Looks {
    private Looks() {}

    /** Puts a look in force before any window is made, or for the windows there are. On the event thread. */
    public static void use(boolean dark) {
        FlatLaf.setup(dark ? new DarkLook() : new LightLook());
        FlatLaf.updateUI();
    }

    public static boolean isDark() {
        return UIManager.getLookAndFeel() instanceof DarkLook;
    }

    /** The sheet's colours in the look in force. */
    public static SheetColours sheetColours() {
        return new SheetColours(
                colour("paper"),
                colour("ink"),
                colour("faint"),
                colour("strip"),
                colour("out"),
                colour("in"),
                colour("onFan"),
                colour("difference"),
                colour("selection"),
                colour("lock"),
                colour("caution"),
                List.of(colour("plan1"), colour("plan2"), colour("plan3"), colour("plan4")));
    }

    /**
     * A colour of ours by its name in the looks' files, as {@code "message"}. In a program with a look of its own that
     * does not define it, ours for light or for dark, whichever is nearer to that look.
     *
     * @throws IllegalArgumentException if no look has it
     */
    public static Color colour(String name) {
        Color colour = UIManager.getColor("Mantice." + name);
        return colour != null ? colour : OwnColours.of(foreignIsDark()).get(name);
    }

    private static boolean foreignIsDark() {
        Color background = UIManager.getColor("Panel.background");
        Color foreground = UIManager.getColor("Panel.foreground");
        return background != null && foreground != null && brightness(background) < brightness(foreground);
    }

    private static int brightness(Color colour) {
        return colour.getRed() + colour.getGreen() + colour.getBlue();
    }
}
