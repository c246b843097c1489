package org.mantice.app.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.OptionalInt;
import org.mantice.instrument.BassRow;

/**
 * Paints a map of the bass buttons. States differ in shape: pressed is filled with the finger's number beside it,
 * pressed before has a dashed ring, marked to the touch a second ring, broken a cross.
 */
public final class ButtonMapPainter {
    private static final Lettering LETTERS = new Lettering(Lettering.Face.PLAIN, 4.4);
    private static final Lettering FINGER = new Lettering(Lettering.Face.BOLD, 5.2);
    private static final float THIN = 0.3f;
    private static final float THICK = 0.8f;
    private static final double RING_MM = 1.1;
    private static final double FINGER_MM = 3.3;

    private final ButtonMap map;
    private final SheetColours colours;

    public ButtonMapPainter(ButtonMap map, SheetColours colours) {
        this.map = map;
        this.colours = colours;
    }

    /**
     * Paints paper and buttons.
     *
     * @param graphics scaled so that a unit is a millimetre
     * @param cursor the button in a frame; empty for none
     */
    public void paint(Graphics2D graphics, OptionalInt cursor) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        graphics.setColor(colours.paper());
        graphics.fill(new Rectangle2D.Double(0, 0, map.widthMm(), map.heightMm()));
        for (ButtonMap.Button button : map.buttons()) if (button.finger().isEmpty()) paint(graphics, button);
        for (ButtonMap.Button button : map.buttons()) if (button.finger().isPresent()) paint(graphics, button);
        cursor.ifPresent(index -> frame(graphics, map.buttons().get(index)));
    }

    private void paint(Graphics2D graphics, ButtonMap.Button button) {
        double radius = map.buttonMm() / 2;
        boolean lit = button.finger().isPresent();
        Color line = button.broken() ? colours.faint() : lit ? colours.out() : colours.ink();
        graphics.setColor(lit ? colours.out() : colours.paper());
        graphics.fill(circle(button, radius));
        graphics.setColor(line);
        graphics.setStroke(new BasicStroke(THIN));
        graphics.draw(circle(button, radius));
        if (button.marked()) graphics.draw(circle(button, radius + RING_MM));
        if (button.before()) dashed(graphics, button, radius + (button.marked() ? 2 : 1) * RING_MM);
        if (button.broken()) cross(graphics, button, radius);
        letters(graphics, button, lit ? colours.onFan() : line);
        button.finger().ifPresent(finger -> finger(graphics, button, finger));
    }

    private static Ellipse2D circle(ButtonMap.Button button, double radius) {
        return new Ellipse2D.Double(button.x() - radius, button.y() - radius, 2 * radius, 2 * radius);
    }

    private void dashed(Graphics2D graphics, ButtonMap.Button button, double radius) {
        graphics.setColor(colours.ink());
        graphics.setStroke(
                new BasicStroke(THICK, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {1.8f, 1.2f}, 0));
        graphics.draw(circle(button, radius));
    }

    private void cross(Graphics2D graphics, ButtonMap.Button button, double radius) {
        graphics.setColor(colours.caution());
        graphics.setStroke(new BasicStroke(THICK));
        graphics.draw(
                new Line2D.Double(button.x() - radius, button.y() - radius, button.x() + radius, button.y() + radius));
        graphics.draw(
                new Line2D.Double(button.x() - radius, button.y() + radius, button.x() + radius, button.y() - radius));
    }

    private void letters(Graphics2D graphics, ButtonMap.Button button, Color colour) {
        double width = LETTERS.width(button.letters());
        double left = button.x() - width / 2;
        double baseline = button.y() + LETTERS.capital() / 2;
        graphics.setColor(colour);
        graphics.setFont(LETTERS.font());
        graphics.drawString(button.letters(), (float) left, (float) baseline);
        if (button.button().row() != BassRow.COUNTERBASS) return;
        graphics.setStroke(new BasicStroke(THIN));
        graphics.draw(new Line2D.Double(left, baseline + 0.8, left + width, baseline + 0.8));
    }

    private void finger(Graphics2D graphics, ButtonMap.Button button, int finger) {
        double x = button.x() + map.buttonMm() * 0.62;
        double y = button.y() - map.buttonMm() * 0.5;
        Ellipse2D disc = new Ellipse2D.Double(x - FINGER_MM, y - FINGER_MM, 2 * FINGER_MM, 2 * FINGER_MM);
        graphics.setColor(colours.paper());
        graphics.fill(disc);
        graphics.setColor(colours.ink());
        graphics.setStroke(new BasicStroke(THIN));
        graphics.draw(disc);
        String text = Integer.toString(finger);
        graphics.setFont(FINGER.font());
        graphics.drawString(text, (float) (x - FINGER.width(text) / 2), (float) (y + FINGER.capital() / 2));
    }

    private void frame(Graphics2D graphics, ButtonMap.Button button) {
        double half = map.buttonMm() / 2 + 2.2;
        graphics.setColor(colours.selection());
        graphics.setStroke(new BasicStroke(THICK));
        graphics.draw(new Rectangle2D.Double(button.x() - half, button.y() - half, 2 * half, 2 * half));
    }
}
