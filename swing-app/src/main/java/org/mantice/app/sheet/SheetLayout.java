package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.app.words.Words;
import org.mantice.tune.MusicalTime;

/** Where everything on a sheet lies, in staff spaces. Immutable once made. */
final class SheetLayout {
    private static final double MARGIN = 1;
    private static final double BAND_GAP = 1;
    private static final double LINE_GAP = 2;
    /** From the top line of a staff to its bottom line. */
    private static final double STAFF = 4;

    private static final double BELOW_STAFF = 0.8;

    private final SheetContent content;
    private final SheetWords words;
    private final MeasureGrid grid;
    private final StaffPainter staff;
    private final List<Line> lines = new ArrayList<>();
    private final List<List<Placed>> places = new ArrayList<>();
    private final List<ChordTarget> chords = new ArrayList<>();
    private double height = MARGIN;

    /**
     * A line of the sheet.
     *
     * @param top of all that stands on it
     * @param staffTop y of the staff's top line
     * @param bandTops where each band's block begins
     */
    record Line(int number, double top, double staffTop, List<BandBlock> bands, List<Double> bandTops, double bottom) {
        /** Whether a point is in the title's row, on the first line, or in the margin with the letter. */
        boolean isHead(int band, MeasureGrid grid, double x, double y) {
            double below = y - bandTops.get(band);
            if (below < 0 || below >= bands.get(band).height()) return false;
            MeasureGrid.Line line = grid.lines().get(number);
            boolean inTitle = number == 0 && below < BandBlock.TITLE_ROW;
            double right = inTitle ? line.boxes().get(line.boxes().size() - 1).right() : BandLine.left(line);
            return x >= line.boxes().get(0).x() && x < right;
        }
    }

    /**
     * A spot on the sheet.
     *
     * @param line of the sheet
     */
    record Placed(int line, StripRow.Place place, Rectangle2D bounds) {}

    SheetLayout(SheetContent content, Words words, double width) {
        this.content = content;
        this.words = SheetWords.of(words);
        List<PlayedPlan> plans = content.bands().stream()
                .map(band -> new PlayedPlan(content.performance(), band))
                .toList();
        this.grid = GridSpacing.of(content, width, cell -> presses(cell, plans));
        this.staff = new StaffPainter(content, grid, words);
        for (int band = 0; band < plans.size(); band++) places.add(new ArrayList<>());
        List<Optional<Integer>> passes = passesEntered(plans);
        for (int line = 0; line < grid.lines().size(); line++) lines.add(line(line, plans, passes));
        for (List<Placed> ofBand : places)
            ofBand.sort(
                    Comparator.comparingInt((Placed placed) -> placed.place().cell())
                            .thenComparing(placed -> placed.place().offset())
                            .thenComparing(placed -> placed.place().spot().strip())
                            .thenComparingInt(placed -> -placed.place().spot().part()));
    }

    private PressRoom presses(Cell cell, List<PlayedPlan> plans) {
        if (cell.played().isEmpty() || !content.strips().contains(Strip.BUTTONS)) return PressRoom.NONE;
        MusicalTime end = content.performance().tune().measure(cell.written()).length();
        return PressRoom.of(plans, cell.played().getAsInt(), end, words.music());
    }

    /** For each cell the pass that the play shown enters there. */
    private List<Optional<Integer>> passesEntered(List<PlayedPlan> plans) {
        List<Optional<Integer>> passes = new ArrayList<>();
        Optional<Cell> lastPlayed = Optional.empty();
        for (Cell cell : content.cells()) {
            passes.add(plans.isEmpty() ? Optional.empty() : RegisterStrip.passShownAt(plans.get(0), lastPlayed, cell));
            if (cell.played().isPresent()) lastPlayed = Optional.of(cell);
        }
        return passes;
    }

    private Line line(int number, List<PlayedPlan> plans, List<Optional<Integer>> passes) {
        MeasureGrid.Line line = grid.lines().get(number);
        List<Optional<Integer>> here =
                line.boxes().stream().map(box -> passes.get(box.index())).toList();
        double top = height;
        double staffTop = top + staff.above(number);
        for (ChordInk.Placed placed : staff.chords(number))
            chords.add(new ChordTarget(placed.spot(), placed.taken(), number, moved(placed.bounds(), staffTop)));
        double y = staffTop + STAFF + staff.below(number) + BELOW_STAFF;
        List<BandBlock> blocks = new ArrayList<>();
        List<Double> tops = new ArrayList<>();
        for (int band = 0; band < plans.size() && !content.strips().isEmpty(); band++) {
            BandLine ofBand = new BandLine(plans.get(band), content.accordion(), line, content.cells(), words);
            BandBlock block = BandBlock.lay(band, ofBand, content, here, number == 0);
            blocks.add(block);
            tops.add(y);
            place(number, block, y);
            y += block.height() + BAND_GAP;
        }
        height = y + LINE_GAP;
        return new Line(number, top, staffTop, List.copyOf(blocks), List.copyOf(tops), y);
    }

    private void place(int line, BandBlock block, double top) {
        for (int row = 0; row < block.rows().size(); row++)
            for (StripRow.Place place : block.rows().get(row).spots()) {
                Rectangle2D bounds = moved(place.bounds(), top + block.tops().get(row));
                places.get(block.band()).add(new Placed(line, place, bounds));
            }
    }

    private static Rectangle2D moved(Rectangle2D own, double down) {
        return new Rectangle2D.Double(own.getX(), own.getY() + down, own.getWidth(), own.getHeight());
    }

    MeasureGrid grid() {
        return grid;
    }

    StaffPainter staff() {
        return staff;
    }

    List<Line> lines() {
        return lines;
    }

    double height() {
        return height;
    }

    /** The places of the chord line, in order. */
    List<ChordTarget> chords() {
        return chords;
    }

    /** In order of play and, at one moment, from top to bottom. */
    List<Placed> places(int band) {
        return places.get(band);
    }
}
