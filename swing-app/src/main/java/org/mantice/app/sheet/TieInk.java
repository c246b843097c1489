package org.mantice.app.sheet;

import java.util.List;
import java.util.Optional;

/** Inks the ties of a line: on the side away from the stem, in chords outward; over a break of lines in two parts. */
final class TieInk {
    private static final double GAP = 0.15;
    private static final double HEAD_GAP = 0.62;
    private static final double LOOSE_END = 2;

    private final LineInk ink;
    private final StaffLine line;

    TieInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
    }

    void write() {
        for (int cell = line.first(); cell <= line.last(); cell++) {
            ink.played(line.isPlayed(cell));
            List<StaffEvent> events = line.of(cell).staff().events();
            for (int i = 0; i < events.size(); i++)
                for (StaffEvent.Head head : events.get(i).heads()) {
                    if (head.tiedForward()) forward(cell, i, head);
                    if (head.tiedBack() && i == 0 && !comesFromThisLine(cell, head)) back(cell, head);
                }
        }
    }

    private void forward(int cell, int index, StaffEvent.Head head) {
        StaffEvent event = line.of(cell).staff().events().get(index);
        double from = line.of(cell).x(index) + rightOf(event, head) + GAP;
        List<StaffEvent> events = line.of(cell).staff().events();
        double to;
        if (index + 1 < events.size() && holds(events.get(index + 1), head).isPresent())
            to = target(cell, index + 1, head);
        else if (index + 1 == events.size()
                && line.has(cell + 1)
                && !line.sheet().jumps(cell + 1)
                && holds(line.of(cell + 1).staff().events().get(0), head).isPresent()) to = target(cell + 1, 0, head);
        else if (index + 1 == events.size())
            to = line.of(cell).box().right() - line.of(cell).closing() - GAP;
        else to = from + LOOSE_END;
        curve(from, to, event, head);
    }

    private double target(int cell, int index, StaffEvent.Head head) {
        StaffEvent event = line.of(cell).staff().events().get(index);
        StaffEvent.Head held = holds(event, head).orElseThrow();
        boolean toLeft = held.displaced() && !event.stemUp();
        return line.of(cell).x(index) - Engraving.HALF_HEAD - GAP - (toLeft ? Engraving.HEAD : 0);
    }

    private static double rightOf(StaffEvent event, StaffEvent.Head head) {
        double width = SheetFonts.glyph(NoteGlyphs.head(event.value())).bounds().getWidth();
        return width - Engraving.HALF_HEAD + (head.displaced() && event.stemUp() ? width : 0);
    }

    private static Optional<StaffEvent.Head> holds(StaffEvent event, StaffEvent.Head from) {
        return event.heads().stream()
                .filter(head -> head.tiedBack() && head.place() == from.place())
                .findFirst();
    }

    private boolean comesFromThisLine(int cell, StaffEvent.Head head) {
        if (!line.has(cell - 1) || line.sheet().jumps(cell)) return false;
        List<StaffEvent> before = line.of(cell - 1).staff().events();
        return before.get(before.size() - 1).heads().stream()
                .anyMatch(from -> from.tiedForward() && from.place() == head.place());
    }

    private void back(int cell, StaffEvent.Head head) {
        PlacedMeasure measure = line.of(cell);
        StaffEvent event = measure.staff().events().get(0);
        double to = measure.x(0) - Engraving.HALF_HEAD - GAP;
        double from = Math.max(measure.box().x() + measure.opening().width(), to - LOOSE_END);
        curve(Math.min(from, to - 0.6), to, event, head);
    }

    private void curve(double from, double to, StaffEvent event, StaffEvent.Head head) {
        boolean below = isBelow(event, head);
        double length = Math.max(to - from, 0.6);
        double rise = Math.min(0.45 + 0.06 * length, 1.4);
        double y = Stems.y(head.place()) + (below ? HEAD_GAP : -HEAD_GAP);
        ink.shape(new Curve(from, y, from + length, y, below ? rise : -rise).outline());
    }

    private static boolean isBelow(StaffEvent event, StaffEvent.Head head) {
        if (event.heads().size() == 1) return event.stemUp();
        return head.place() - event.lowest() < event.highest() - head.place();
    }
}
