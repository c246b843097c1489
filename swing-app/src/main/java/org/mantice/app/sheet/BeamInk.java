package org.mantice.app.sheet;

import static org.mantice.app.sheet.Engraving.BEAM;
import static org.mantice.app.sheet.Engraving.BEAM_GAP;
import static org.mantice.app.sheet.Engraving.STEM;

import java.awt.geom.Path2D;
import java.util.List;

/** Inks the beams of a group: one through all, further ones where notes are shorter, stubs beside longer notes. */
final class BeamInk {
    private static final double STUB = 1.1;

    private final LineInk ink;
    private final PlacedMeasure placed;

    BeamInk(LineInk ink, PlacedMeasure placed) {
        this.ink = ink;
        this.placed = placed;
    }

    void write(List<Integer> group) {
        int most = group.stream().mapToInt(this::flags).max().orElse(0);
        for (int level = 1; level <= most; level++)
            for (int i = 0; i < group.size(); i++) {
                if (flags(group.get(i)) < level) continue;
                int end = i;
                while (end + 1 < group.size() && flags(group.get(end + 1)) >= level) end++;
                if (end > i) stretch(group.get(i), group.get(end), level);
                else stub(group, i, level);
                i = end;
            }
    }

    private int flags(int event) {
        return placed.staff().events().get(event).value().flags();
    }

    private double stemX(int event) {
        return Stems.stemX(placed.staff().events().get(event), placed.x(event));
    }

    private void stretch(int from, int to, int level) {
        beam(from, stemX(from) - STEM / 2, placed.tip(from), stemX(to) + STEM / 2, placed.tip(to), level);
    }

    /** Towards the note with which it fills a beat's part: backwards off the beat, forwards on it. */
    private void stub(List<Integer> group, int i, int level) {
        int here = group.get(i);
        StaffEvent event = placed.staff().events().get(here);
        boolean onBeat = event.offset()
                .plus(StaffMeasure.behind(placed.staff().measure()))
                .isMultipleOf(event.length().times(2));
        boolean forward = i == 0 || i + 1 < group.size() && onBeat;
        int other = group.get(forward ? i + 1 : i - 1);
        double slope = (placed.tip(other) - placed.tip(here)) / (stemX(other) - stemX(here));
        double room = Math.min(STUB, Math.abs(stemX(other) - stemX(here)) / 2);
        double from = stemX(here) - (forward ? STEM / 2 : room);
        double to = stemX(here) + (forward ? room : STEM / 2);
        double tip = placed.tip(here);
        beam(here, from, tip + slope * (from - stemX(here)), to, tip + slope * (to - stemX(here)), level);
    }

    private void beam(int event, double x1, double y1, double x2, double y2, int level) {
        double inward = placed.staff().events().get(event).stemUp() ? 1 : -1;
        double shift = inward * (level - 1) * (BEAM + BEAM_GAP);
        Path2D beam = new Path2D.Double();
        beam.moveTo(x1, y1 + shift);
        beam.lineTo(x2, y2 + shift);
        beam.lineTo(x2, y2 + shift + inward * BEAM);
        beam.lineTo(x1, y1 + shift + inward * BEAM);
        beam.closePath();
        ink.shape(beam);
    }
}
