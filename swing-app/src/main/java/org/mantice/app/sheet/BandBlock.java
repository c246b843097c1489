package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan's strips on one line of the sheet, one below the other; in staff spaces from the top of the block.
 *
 * @param head signs of the plan, of the strips and the title
 * @param tops of the rows
 */
record BandBlock(int band, double height, List<Item> head, List<StripRow> rows, List<Double> tops) {
    /** Height of the row with the title, on the first line. */
    static final double TITLE_ROW = 2.6;

    private static final double ROW_GAP = 0.25;
    private static final double RIM = 0.35;
    private static final Lettering TITLE = new Lettering(Lettering.Face.BOLD, 1.75);
    private static final Lettering CHOSEN = new Lettering(Lettering.Face.PLAIN, 1.6);
    private static final Lettering LABEL = new Lettering(Lettering.Face.PLAIN, 1.35);
    private static final double MARK = 1.5;
    private static final double SMALL_MARK = 1.3;

    BandBlock {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
        tops = List.copyOf(tops);
    }

    /** @param passes the pass whose register each box of the line shows */
    static BandBlock lay(int band, BandLine line, SheetContent content, List<Optional<Integer>> passes, boolean first) {
        Map<Strip, StripRow> laid = new EnumMap<>(Strip.class);
        for (Strip strip : content.strips()) laid.put(strip, row(strip, line, passes));
        List<StripRow> rows = new ArrayList<>();
        List<Double> tops = new ArrayList<>();
        List<Item> head = new ArrayList<>();
        double y = first ? TITLE_ROW : 0;
        for (StripRow row : laid.values()) {
            if (row.height() == 0) continue;
            rows.add(row);
            tops.add(y);
            if (first) label(head, line, row, y);
            y += row.height() + ROW_GAP;
        }
        double height = Math.max(TITLE_ROW, y - (rows.isEmpty() ? 0 : ROW_GAP));
        head.add(Item.Filled.of(
                new Rectangle2D.Double(line.line().boxes().get(0).x(), 0, RIM, height),
                Ink.ofPlan(line.plan().band().place())));
        if (first) title(head, line);
        else mark(head, line);
        return new BandBlock(band, height, head, rows, tops);
    }

    private static StripRow row(Strip strip, BandLine line, List<Optional<Integer>> passes) {
        return switch (strip) {
            case FINGERS -> FingerStrip.lay(line);
            case REGISTERS -> RegisterStrip.lay(line, passes);
            case BELLOWS -> BellowsStrip.lay(line);
            case BUTTONS -> ButtonStrip.lay(line);
        };
    }

    private static double labelX(BandLine line) {
        return line.line().boxes().get(0).x() + RIM + 0.4;
    }

    private static void title(List<Item> head, BandLine line) {
        PlanBand band = line.plan().band();
        double middle = TITLE_ROW / 2;
        double x = labelX(line);
        head.add(Signs.ofPlan(band.place(), x + MARK / 2, middle, MARK));
        x += MARK + 0.5;
        Item.Text title = Item.Text.at(x, middle + TITLE.capital() / 2, band.title(), TITLE, Ink.INK);
        head.add(title);
        if (!band.chosen()) return;
        x = title.bounds().getMaxX() + 1.6;
        head.add(Signs.tick(x, middle, 1.3));
        head.add(Item.Text.at(
                x + 1.1, middle + CHOSEN.capital() / 2, line.words().texts().text("sheet.chosen"), CHOSEN, Ink.INK));
    }

    private static void mark(List<Item> head, BandLine line) {
        PlanBand band = line.plan().band();
        double x = line.line().boxes().get(0).x() + RIM + 0.2;
        double middle = 1.3;
        head.add(Signs.ofPlan(band.place(), x + SMALL_MARK / 2, middle, SMALL_MARK));
        x += SMALL_MARK + 0.3;
        Item.Text letter = Item.Text.at(x, middle + TITLE.capital() / 2, band.letter(), TITLE, Ink.INK);
        head.add(letter);
        if (band.chosen()) head.add(Signs.tick(letter.bounds().getCenterX(), middle + 2, 1.2));
    }

    /** The strip's name, where clef and key leave room for it. */
    private static void label(List<Item> head, BandLine line, StripRow row, double top) {
        String label = line.words().texts().of("sheet", row.strip());
        double x = labelX(line);
        double y = row.strip() == Strip.BELLOWS ? top + BellowsStrip.HEIGHT - 1 : top + row.height() / 2;
        if (x + LABEL.width(label) < line.left() - 0.3)
            head.add(Item.Text.at(x, y + LABEL.capital() / 2, label, LABEL, Ink.INK));
        if (row.strip() != Strip.BELLOWS) return;
        opening(
                head,
                line,
                top,
                line.words().texts().text("sheet.full"),
                line.accordion().bellows().fullMillilitres());
        opening(
                head,
                line,
                top,
                line.words().texts().text("sheet.comfortable"),
                line.accordion().bellows().comfortableMillilitres());
    }

    /** The name of a line across the fan. */
    private static void opening(List<Item> head, BandLine line, double top, String label, int millilitres) {
        double right = line.left() - 0.3;
        double y =
                top + BellowsStrip.yOf(millilitres, line.accordion().bellows().fullMillilitres()) + 0.5;
        if (right - LABEL.width(label) > labelX(line))
            head.add(Item.Text.at(right - LABEL.width(label), y, label, LABEL, Ink.INK));
    }
}
