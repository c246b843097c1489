package org.mantice.app.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.mantice.app.words.Words;

/** A line of a staff painted black on white with room around it; the staff's own lines are red. */
final class PaintedLine {
    static final Color FAINT = Color.RED;
    static final SheetColours COLOURS = new SheetColours(
            Color.WHITE,
            Color.BLACK,
            FAINT,
            Color.WHITE,
            Color.GREEN,
            Color.BLUE,
            Color.BLACK,
            Color.ORANGE,
            Color.ORANGE,
            Color.ORANGE,
            Color.ORANGE,
            List.of(Color.CYAN, Color.CYAN, Color.CYAN, Color.CYAN));
    private static final int ROOM = 60;

    private final BufferedImage image;
    private final int space;
    private final int top;
    private final int first;
    private final int last;

    private PaintedLine(BufferedImage image, int space, int top, int first, int last) {
        this.image = image;
        this.space = space;
        this.top = top;
        this.first = first;
        this.last = last;
    }

    static PaintedLine of(SheetContent content, int line, double width, int space) {
        return of(content, line, width, space, Locale.ENGLISH);
    }

    static PaintedLine of(SheetContent content, int line, double width, int space, Locale locale) {
        StaffPainter painter = new StaffPainter(content, GridSpacing.of(content, width), Words.of(locale));
        int above = (int) Math.ceil(painter.above(line) * space);
        int below = (int) Math.ceil(painter.below(line) * space);
        int top = ROOM + above;
        int last = top + 4 * space + below;
        BufferedImage image =
                new BufferedImage((int) Math.ceil(width * space) + 2 * ROOM, last + ROOM, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.translate(ROOM, 0);
        painter.paint(graphics, line, top, space, COLOURS);
        graphics.dispose();
        return new PaintedLine(image, space, top, ROOM, last);
    }

    /** The row of a y in staff spaces below the top line. */
    int y(double spaces) {
        return (int) Math.round(top + spaces * space);
    }

    /** @param x in dots from the sheet's left edge */
    Color colour(int x, int y) {
        return new Color(image.getRGB(x + ROOM, y));
    }

    boolean isInk(int x, int y) {
        Color colour = colour(x, y);
        return colour.getRed() < 128;
    }

    /** The rows of a column that have a colour. */
    List<Integer> rows(int x, Color colour) {
        List<Integer> rows = new ArrayList<>();
        for (int y = 0; y < image.getHeight(); y++) if (colour(x, y).equals(colour)) rows.add(y);
        return rows;
    }

    /** Anything beyond what the painter tells, a dot for rounding aside, or left or right of the sheet. */
    boolean hasInkOutside() {
        for (int y = 0; y < image.getHeight(); y++)
            for (int x = 0; x < image.getWidth(); x++) {
                boolean inside = y >= first - 1 && y <= last + 1 && x >= ROOM - 1 && x <= image.getWidth() - ROOM + 1;
                if (!inside && image.getRGB(x, y) != Color.WHITE.getRGB()) return true;
            }
        return false;
    }

    /** The last column with ink in the rows above a y in staff spaces. */
    int rightmostInkAbove(double spaces) {
        for (int x = image.getWidth() - 1; x >= 0; x--)
            for (int y = 0; y < y(spaces); y++) if (image.getRGB(x, y) != Color.WHITE.getRGB()) return x - ROOM;
        return -1;
    }
}
