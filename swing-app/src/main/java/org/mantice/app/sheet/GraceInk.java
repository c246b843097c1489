package org.mantice.app.sheet;

import static org.mantice.app.sheet.Engraving.GRACE;
import static org.mantice.app.sheet.Engraving.HALF_HEAD;
import static org.mantice.app.sheet.Engraving.HEAD;
import static org.mantice.app.sheet.Engraving.STEM;

import java.awt.geom.Path2D;
import java.util.List;

/** Inks grace notes: small, stems up; one alone is an eighth, several are sixteenths under beams. */
final class GraceInk {
    private static final double STEM_LENGTH = 2.4;

    private GraceInk() {}

    /** @param x of the main note's middle */
    static void write(LineInk ink, List<StaffEvent.Grace> graces, double x) {
        double tip = Double.POSITIVE_INFINITY;
        for (StaffEvent.Grace grace : graces) tip = Math.min(tip, top(grace) - STEM_LENGTH);
        for (StaffEvent.Grace grace : graces) grace(ink, grace, x + grace.x(), tip);
        if (graces.size() == 1)
            ink.outline(
                    SheetFonts.glyph(Glyph.FLAG_8TH_UP), stemX(x + graces.get(0).x()), tip, GRACE);
        if (graces.size() > 1) beams(ink, graces, x, tip);
    }

    private static double top(StaffEvent.Grace grace) {
        return Stems.y(grace.heads().get(grace.heads().size() - 1).place());
    }

    /** Left edge of the stem. */
    private static double stemX(double x) {
        return x + GRACE * HALF_HEAD - STEM;
    }

    private static void grace(LineInk ink, StaffEvent.Grace grace, double x, double tip) {
        NoteInk.legerLines(ink, grace.heads(), x, true, HEAD, GRACE);
        for (StaffEvent.Head head : grace.heads()) {
            double left = x - GRACE * HALF_HEAD + (head.displaced() ? GRACE * HEAD - STEM : 0);
            ink.outline(SheetFonts.glyph(Glyph.NOTEHEAD_BLACK), left, Stems.y(head.place()), GRACE);
            head.accidental()
                    .ifPresent(sign -> ink.outline(
                            SheetFonts.glyph(sign), x + GRACE * head.accidentalX(), Stems.y(head.place()), GRACE));
        }
        double foot = Stems.y(grace.heads().get(0).place()) - GRACE * Engraving.STEM_ANCHOR;
        ink.bar(stemX(x), tip, STEM, foot - tip);
    }

    private static void beams(LineInk ink, List<StaffEvent.Grace> graces, double x, double tip) {
        double from = stemX(x + graces.get(0).x());
        double to = stemX(x + graces.get(graces.size() - 1).x()) + STEM;
        for (int level = 0; level < 2; level++) {
            double y = tip + level * GRACE * (Engraving.BEAM + Engraving.BEAM_GAP);
            Path2D beam = new Path2D.Double();
            beam.moveTo(from, y);
            beam.lineTo(to, y);
            beam.lineTo(to, y + GRACE * Engraving.BEAM);
            beam.lineTo(from, y + GRACE * Engraving.BEAM);
            beam.closePath();
            ink.shape(beam);
        }
    }
}
