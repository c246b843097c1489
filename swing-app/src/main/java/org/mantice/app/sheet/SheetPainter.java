package org.mantice.app.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.app.words.Words;

/**
 * Paints a sheet: staff and strips, line by line. Knows no window; the same painter serves screen, picture and paper.
 * Immutable once made: laying out happens in the constructor.
 */
public final class SheetPainter {
    /** Of the frames around what is selected and what differs, at least two pixels. */
    private static final double FRAME = 0.28;

    private static final double LEAST_FRAME_PIXELS = 2;
    /** Left and right of the sheet, in staff spaces. */
    private static final double SIDE = 1;

    private static final double LEAST_WIDTH = 20;

    private final SheetContent content;
    private final SheetLayout layout;
    private final double space;

    /**
     * Lays the sheet out.
     *
     * @param width in pixels
     * @param space pixels between two staff lines; 8 is usual
     */
    public SheetPainter(SheetContent content, Words words, double width, double space) {
        this(content, new SheetLayout(content, words, Math.max(LEAST_WIDTH, width / space - 2 * SIDE)), space);
    }

    private SheetPainter(SheetContent content, SheetLayout layout, double space) {
        this.content = content;
        this.layout = layout;
        this.space = space;
    }

    /** The same sheet, laid out as it is, with something else pointed at. */
    public SheetPainter pointing(Pointing pointing) {
        return new SheetPainter(content.pointing(pointing), layout, space);
    }

    /** Loads the fonts, so that the first sheet need not wait for them. For any thread. */
    public static void loadFonts() {
        SheetFonts.glyph(Glyph.values()[0]);
    }

    /** In pixels. */
    public double height() {
        return Math.ceil(layout.height() * space);
    }

    /** Paints what lies in the clip. */
    public void paint(Graphics2D graphics, SheetColours colours, Rectangle clip) {
        paintCounting(graphics, colours, clip);
    }

    /** The same, telling how many things on the strips were painted. */
    int paintCounting(Graphics2D graphics, SheetColours colours, Rectangle clip) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.clip(clip);
        own.setColor(colours.paper());
        own.fillRect(clip.x, clip.y, clip.width, clip.height);
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        own.scale(space, space);
        own.translate(SIDE, 0);
        Rectangle2D inSpaces = new Rectangle2D.Double(
                clip.getX() / space - SIDE, clip.getY() / space, clip.getWidth() / space, clip.getHeight() / space);
        int painted = 0;
        for (SheetLayout.Line line : layout.lines())
            if (line.bottom() >= inSpaces.getMinY() && line.top() <= inSpaces.getMaxY())
                painted += paint(own, colours, line, inSpaces);
        frames(own, colours, inSpaces);
        own.dispose();
        return painted;
    }

    private int paint(Graphics2D graphics, SheetColours colours, SheetLayout.Line line, Rectangle2D clip) {
        Graphics2D inPixels = (Graphics2D) graphics.create();
        inPixels.scale(1 / space, 1 / space);
        layout.staff().paint(inPixels, line.number(), line.staffTop() * space, space, colours);
        inPixels.dispose();
        int painted = 0;
        for (int band = 0; band < line.bands().size(); band++)
            painted +=
                    BandPainter.paint(graphics, colours, layout.grid().lines().get(line.number()), line, band, clip);
        return painted;
    }

    private void frames(Graphics2D graphics, SheetColours colours, Rectangle2D clip) {
        Pointing pointing = content.pointing();
        pointing.current().ifPresent(spot -> {
            for (int band = 0; band < content.bands().size(); band++)
                for (SheetLayout.Placed placed : layout.places(band))
                    if (PlayedPlan.isSame(spot, placed.place().spot()))
                        frame(graphics, colours.difference(), placed.bounds(), clip, true);
        });
        pointing.selected().ifPresent(spot -> {
            if (pointing.band() < 0 || pointing.band() >= content.bands().size()) return;
            for (SheetLayout.Placed placed : layout.places(pointing.band()))
                if (PlayedPlan.isSame(spot, placed.place().spot()))
                    frame(graphics, colours.selection(), placed.bounds(), clip, false);
        });
        pointing.chord().ifPresent(spot -> {
            for (ChordTarget target : layout.chords())
                if (target.spot().equals(spot)) frame(graphics, colours.selection(), target.bounds(), clip, false);
        });
    }

    /** A plain frame; a difference has brackets left and right, further out. */
    private void frame(Graphics2D graphics, Color colour, Rectangle2D bounds, Rectangle2D clip, boolean difference) {
        double thickness = Math.max(FRAME, LEAST_FRAME_PIXELS / space);
        double out = difference ? 1.6 * thickness : 0.5 * thickness;
        Rectangle2D frame = new Rectangle2D.Double(
                bounds.getX() - out, bounds.getY() - out, bounds.getWidth() + 2 * out, bounds.getHeight() + 2 * out);
        if (!frame.intersects(clip)) return;
        graphics.setColor(colour);
        graphics.setStroke(new BasicStroke((float) thickness, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
        if (difference) graphics.draw(Signs.brackets(frame));
        else graphics.draw(frame);
    }

    /** A place on the sheet that can be pointed at. */
    public record Target(int band, Spot spot, Rectangle2D bounds) {}

    /** In pixels, as everything here. */
    public Optional<Target> targetAt(double x, double y) {
        double inX = x / space - SIDE;
        double inY = y / space;
        for (int band = 0; band < content.bands().size(); band++)
            for (SheetLayout.Placed placed : layout.places(band))
                if (placed.bounds().contains(inX, inY)) return Optional.of(target(band, placed));
        return Optional.empty();
    }

    /** The places of the chord line, in order. */
    public List<ChordTarget> chords() {
        return layout.chords().stream().map(this::inPixels).toList();
    }

    /** Where one of them lies; empty if the sheet does not show it. */
    public Optional<ChordTarget> chord(ChordSpot spot) {
        return layout.chords().stream()
                .filter(target -> target.spot().equals(spot))
                .findFirst()
                .map(this::inPixels);
    }

    /** The place of the chord line there; a symbol before the empty places that it covers. */
    public Optional<ChordTarget> chordAt(double x, double y) {
        List<ChordTarget> there = layout.chords().stream()
                .filter(target -> target.bounds().contains(x / space - SIDE, y / space))
                .toList();
        return there.stream()
                .filter(ChordTarget::taken)
                .findFirst()
                .or(() -> there.stream().reduce((before, last) -> last))
                .map(this::inPixels);
    }

    private ChordTarget inPixels(ChordTarget target) {
        return new ChordTarget(target.spot(), target.taken(), target.line(), inPixels(target.bounds()));
    }

    /** The band whose head lies there: its title, or the margin with its letter. */
    public OptionalInt headAt(double x, double y) {
        for (SheetLayout.Line line : layout.lines())
            for (int band = 0; band < line.bands().size(); band++)
                if (line.isHead(band, layout.grid(), x / space - SIDE, y / space))
                    return OptionalInt.of(line.bands().get(band).band());
        return OptionalInt.empty();
    }

    /** Everything that can be pointed at in a band, in order of play and, at one moment, from top to bottom. */
    public List<Target> targets(int band) {
        return layout.places(band).stream().map(placed -> target(band, placed)).toList();
    }

    /** Where a spot of a band lies; empty if it is not shown. */
    public Optional<Rectangle2D> boundsOf(int band, Spot spot) {
        return layout.places(band).stream()
                .filter(placed -> PlayedPlan.isSame(spot, placed.place().spot()))
                .findFirst()
                .map(placed -> inPixels(placed.bounds()));
    }

    /** Where a cell lies, staff and all bands. */
    public Rectangle2D boundsOfCell(int cell) {
        for (SheetLayout.Line line : layout.lines())
            for (MeasureGrid.Box box : layout.grid().lines().get(line.number()).boxes())
                if (box.index() == cell)
                    return inPixels(
                            new Rectangle2D.Double(box.x(), line.top(), box.width(), line.bottom() - line.top()));
        throw new IllegalArgumentException(
                "cell is " + cell + "; allowed: 0 to " + (content.cells().size() - 1));
    }

    private Target target(int band, SheetLayout.Placed placed) {
        return new Target(band, placed.place().spot(), inPixels(placed.bounds()));
    }

    private Rectangle2D inPixels(Rectangle2D spaces) {
        return new Rectangle2D.Double(
                (spaces.getX() + SIDE) * space,
                spaces.getY() * space,
                spaces.getWidth() * space,
                spaces.getHeight() * space);
    }
}
