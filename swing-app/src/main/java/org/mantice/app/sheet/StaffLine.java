package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;

/** The measures of one line with their places. */
final class StaffLine {
    private final SheetMeasures sheet;
    private final List<PlacedMeasure> measures = new ArrayList<>();
    private final int first;
    private final double width;

    /** @param width of the whole sheet */
    StaffLine(SheetMeasures sheet, MeasureGrid.Line line, double width) {
        this.sheet = sheet;
        this.width = width;
        this.first = line.boxes().get(0).index();
        for (MeasureGrid.Box box : line.boxes())
            measures.add(new PlacedMeasure(
                    sheet.staff(box.index()),
                    box,
                    sheet.opening(box.index(), box.index() == first),
                    sheet.closing(box.index())));
    }

    SheetMeasures sheet() {
        return sheet;
    }

    List<PlacedMeasure> measures() {
        return measures;
    }

    /** Of the sheet; a last line may end before. */
    double width() {
        return width;
    }

    /** Index of the first cell. */
    int first() {
        return first;
    }

    /** Index of the last cell. */
    int last() {
        return first + measures.size() - 1;
    }

    boolean has(int cell) {
        return cell >= first && cell <= last();
    }

    PlacedMeasure of(int cell) {
        return measures.get(cell - first);
    }

    /** Where notes can begin. */
    double left() {
        return of(first).box().x() + of(first).opening().width();
    }

    /** The last barline. */
    double right() {
        return of(last()).box().right();
    }

    boolean isPlayed(int cell) {
        return sheet.cell(cell).played().isPresent();
    }
}
