package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Inks the brackets of endings, those of a line at one height. */
final class EndingInk {
    private static final double HEIGHT = 2;
    private static final double GAP = 0.5;
    private static final double INSET = 0.3;

    private final LineInk ink;
    private final StaffLine line;

    EndingInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
    }

    void write(List<SheetSpans.Ending> endings) {
        List<SheetSpans.Ending> here = new ArrayList<>();
        for (SheetSpans.Ending ending : endings)
            if (ending.toCell() >= line.first() && ending.fromCell() <= line.last()) here.add(ending);
        double bottom = -1;
        for (SheetSpans.Ending ending : here)
            bottom = Math.min(bottom, ink.highest(left(ending), right(ending), 0) - GAP);
        for (SheetSpans.Ending ending : here) bracket(ending, bottom - HEIGHT);
    }

    private double left(SheetSpans.Ending ending) {
        boolean insideLine = ending.fromCell() > line.first();
        return insideLine ? line.of(ending.fromCell()).box().x() + INSET : line.left();
    }

    private double right(SheetSpans.Ending ending) {
        return line.has(ending.toCell()) ? line.of(ending.toCell()).box().right() - INSET : line.right();
    }

    private void bracket(SheetSpans.Ending ending, double top) {
        double left = left(ending);
        double right = right(ending);
        double thick = Engraving.BRACKET;
        ink.played(line.isPlayed(Math.max(ending.fromCell(), line.first())));
        ink.bar(left, top, right - left, thick);
        if (line.has(ending.toCell()) && ending.closed()) ink.bar(right - thick, top, thick, HEIGHT);
        if (!line.has(ending.fromCell())) return;
        ink.bar(left, top, thick, HEIGHT);
        String numbers = ending.numbers().stream().map(number -> number + ".").collect(Collectors.joining(" "));
        SheetFonts.Outline outline = SheetFonts.text(numbers, SheetFonts.Face.PLAIN, Engraving.SMALL_SIZE);
        ink.outline(outline, left + 0.6, top + 1.6);
    }
}
