package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.mantice.app.words.MusicWords;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.StradellaBass;

/**
 * The bass buttons of an instrument as they lie, in millimetres: x away from the bellows, y from the chin down, with
 * what is pressed. Gaps in the rows are left out.
 *
 * @param buttonMm diameter of a button
 * @param measured whether the places come from an instrument; else they are an estimate
 */
public record ButtonMap(List<Button> buttons, double buttonMm, double widthMm, double heightMm, boolean measured) {
    private static final double MARGIN_MM = 10;
    private static final double MICRONS = 1_000;

    /**
     * One button.
     *
     * @param letters as the trade writes them
     * @param x of its middle
     * @param y of its middle
     * @param marked to the touch
     * @param before whether it was pressed just before
     * @param finger that presses it now; empty if none does
     */
    public record Button(
            BassButton button,
            String letters,
            double x,
            double y,
            boolean marked,
            boolean broken,
            boolean before,
            OptionalInt finger) {}

    /** Ways to walk over the map. */
    public enum Way {
        TO_CHIN,
        TO_FLOOR,
        TO_BELLOWS,
        OUTWARD
    }

    public ButtonMap {
        buttons = List.copyOf(buttons);
    }

    /**
     * @param now pressed
     * @param fingers for each button pressed
     * @param before pressed just before
     */
    public static ButtonMap of(
            StradellaBass layout,
            List<BassButton> now,
            List<Integer> fingers,
            List<BassButton> before,
            MusicWords music) {
        List<BassButton> all = layout.laidOut();
        double top = all.stream().mapToInt(layout::alongMicrons).max().orElse(0) / MICRONS;
        double bottom = all.stream().mapToInt(layout::alongMicrons).min().orElse(0) / MICRONS;
        double left = all.stream().mapToInt(layout::acrossMicrons).min().orElse(0) / MICRONS;
        double right = all.stream().mapToInt(layout::acrossMicrons).max().orElse(0) / MICRONS;
        List<Button> buttons = new ArrayList<>();
        for (BassButton button : all) {
            int pressed = now.indexOf(button);
            buttons.add(new Button(
                    button,
                    PressLetters.letters(button, music),
                    MARGIN_MM + layout.acrossMicrons(button) / MICRONS - left,
                    MARGIN_MM + top - layout.alongMicrons(button) / MICRONS,
                    layout.singles().marked().contains(button),
                    layout.singles().broken().contains(button),
                    before.contains(button),
                    pressed < 0 ? OptionalInt.empty() : OptionalInt.of(fingers.get(pressed))));
        }
        return new ButtonMap(
                buttons,
                layout.geometry().buttonMicrons() / MICRONS,
                right - left + 2 * MARGIN_MM,
                top - bottom + 2 * MARGIN_MM,
                layout.geometry().measured());
    }

    /** The next button that way: in the same row, or the one at the same height in the next row; the same at the edge. */
    public int beside(int from, Way way) {
        Button start = buttons.get(from);
        if (way == Way.TO_CHIN || way == Way.TO_FLOOR) {
            int step = way == Way.TO_CHIN ? 1 : -1;
            int next = from + step;
            boolean there = next >= 0
                    && next < buttons.size()
                    && buttons.get(next).button().row() == start.button().row();
            return there ? next : from;
        }
        int side = way == Way.OUTWARD ? 1 : -1;
        return IntStream.range(0, buttons.size())
                .filter(i -> side
                                * buttons.get(i)
                                        .button()
                                        .row()
                                        .compareTo(start.button().row())
                        > 0)
                .boxed()
                .min(Comparator.comparingInt((Integer i) -> side
                                * buttons.get(i)
                                        .button()
                                        .row()
                                        .compareTo(start.button().row()))
                        .thenComparingDouble(i -> Math.abs(buttons.get(i).y() - start.y())))
                .orElse(from);
    }

    /** Where a walk begins: at the C bass, or at the first button of an instrument without it. */
    public int home() {
        return IntStream.range(0, buttons.size())
                .filter(i -> buttons.get(i).button().equals(new BassButton(BassRow.BASS, 0)))
                .findFirst()
                .orElse(0);
    }

    /** The button at a point, in millimetres; empty between buttons. */
    public OptionalInt at(double x, double y) {
        return IntStream.range(0, buttons.size())
                .filter(i -> Math.hypot(buttons.get(i).x() - x, buttons.get(i).y() - y) <= buttonMm / 2 + 1)
                .findFirst();
    }
}
