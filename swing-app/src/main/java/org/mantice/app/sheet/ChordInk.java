package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.WrittenPlace;

/**
 * Inks the chord symbols of a line on one base line above everything below them. The room is kept where there are none,
 * so that the first one typed moves nothing.
 */
final class ChordInk {
    private static final double GAP = 0.75;
    private static final double LOWEST = -1.5;
    /** Of a symbol's letters above the base line, and of the room around them. */
    private static final double ROW = Engraving.CHORD_SIZE * 0.73;

    private static final double AIR = 0.3;
    /** Of a place without a symbol: wide enough to be pointed at, our choice. */
    private static final double EMPTY_WIDTH = 2.2;

    private static final double LEAST_WIDTH = 1;

    private final LineInk ink;
    private final StaffLine line;
    private final List<Slot> slots = new ArrayList<>();
    private final List<Placed> targets = new ArrayList<>();

    /** A place that can be pointed at, in staff spaces from the top line of the staff. */
    record Placed(ChordSpot spot, boolean taken, Rectangle2D bounds) {}

    /** A place where a symbol stands or may be put, x being its left end. */
    private record Slot(ChordSpot spot, Optional<SheetFonts.Outline> outline, double x, double room) {
        double right() {
            return outline.map(symbol -> x + symbol.bounds().getMaxX())
                    .orElse(x + Math.max(LEAST_WIDTH, Math.min(EMPTY_WIDTH, room - 2 * AIR)));
        }

        double depth() {
            return outline.map(symbol -> Math.max(0, symbol.bounds().getMaxY())).orElse(0.0);
        }

        double height() {
            return outline.map(symbol -> Math.max(ROW, -symbol.bounds().getMinY()))
                    .orElse(ROW);
        }

        /** @param free right of the symbol before, which covers no other place if there is room beside it */
        Placed at(double base, double free) {
            double left = x - AIR;
            double end = right() + AIR;
            if (outline.isEmpty() && free > left) {
                double room = x + this.room - AIR - free;
                if (room >= LEAST_WIDTH) {
                    left = free;
                    end = Math.max(free + LEAST_WIDTH, Math.min(end, free + room));
                }
            }
            Rectangle2D bounds =
                    new Rectangle2D.Double(left, base - height() - AIR, end - left, height() + depth() + 2 * AIR);
            return new Placed(spot, outline.isPresent(), bounds);
        }
    }

    ChordInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
        for (int cell = line.first(); cell <= line.last(); cell++) collect(cell);
        slots.sort(Comparator.comparingInt((Slot slot) -> slot.spot().cell())
                .thenComparing(slot -> slot.spot().place()));
    }

    /** A source may put a symbol at the very end of a measure, or two at one moment: all are shown. */
    private void collect(int cell) {
        PlacedMeasure placed = line.of(cell);
        Measure measure = placed.staff().measure();
        List<MusicalTime> offsets = ChordPlaces.of(measure);
        for (int i = 0; i < offsets.size(); i++) {
            MusicalTime offset = offsets.get(i);
            MusicalTime next = i + 1 < offsets.size() ? offsets.get(i + 1) : measure.length();
            if (measure.chords().stream().noneMatch(chord -> chord.offset().equals(offset)))
                add(cell, offset, Optional.empty(), placed.x(next) - placed.x(offset));
        }
        for (PlacedChord chord : measure.chords()) add(cell, chord.offset(), Optional.of(ChordText.outline(chord)), 0);
    }

    private void add(int cell, MusicalTime offset, Optional<SheetFonts.Outline> outline, double room) {
        PlacedMeasure placed = line.of(cell);
        WrittenPlace place = new WrittenPlace(line.sheet().cell(cell).written(), offset);
        double x = placed.x(offset.min(placed.staff().measure().length())) - Engraving.HALF_HEAD;
        slots.add(new Slot(new ChordSpot(cell, place), outline, x, room));
    }

    /** The top of the row. */
    double write() {
        double base = LOWEST;
        for (Slot slot : slots) if (slot.outline().isPresent()) base = Math.min(base, clear(slot));
        double free = 0;
        for (Slot slot : slots) {
            double y = slot.outline().isPresent() ? base : Math.min(base, clear(slot));
            targets.add(slot.at(y, free));
            if (slot.outline().isPresent()) free = slot.right() + AIR;
        }
        double top = base - ROW - AIR;
        for (Slot slot : slots) top = Math.min(top, inked(slot, base));
        for (Placed target : targets) ink.reach(target.bounds().getMinY());
        return top;
    }

    private double inked(Slot slot, double base) {
        ink.played(line.isPlayed(slot.spot().cell()));
        slot.outline().ifPresent(outline -> ink.outline(outline, slot.x(), base));
        return slot.outline().isPresent() ? base - slot.height() : base;
    }

    /** The lowest base line that keeps clear of the ink below. */
    private double clear(Slot slot) {
        return ink.highest(slot.x() - 0.4, slot.right() + 0.5, 0) - GAP - slot.depth();
    }

    List<Placed> targets() {
        return targets;
    }
}
