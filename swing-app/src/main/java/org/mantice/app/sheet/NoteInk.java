package org.mantice.app.sheet;

import static org.mantice.app.sheet.Engraving.HALF_HEAD;
import static org.mantice.app.sheet.Engraving.LEGER_EXTENSION;
import static org.mantice.app.sheet.Engraving.LEGER_LINE;
import static org.mantice.app.sheet.Engraving.STEM;
import static org.mantice.app.sheet.Engraving.STEM_ANCHOR;

import java.util.List;
import java.util.TreeSet;

/** Inks the notes and rests of a measure: heads, stems, flags, beams, dots, accidentals, leger lines, grace notes. */
final class NoteInk {
    private final LineInk ink;
    private final PlacedMeasure placed;
    private final boolean[] beamed;

    NoteInk(LineInk ink, PlacedMeasure placed) {
        this.ink = ink;
        this.placed = placed;
        this.beamed = new boolean[placed.staff().events().size()];
        placed.staff().beams().forEach(group -> group.forEach(i -> beamed[i] = true));
    }

    void write() {
        List<StaffEvent> events = placed.staff().events();
        for (int i = 0; i < events.size(); i++) {
            StaffEvent event = events.get(i);
            if (event.isRest()) rest(event, placed.x(i));
            else note(i, event, placed.x(i));
            GraceInk.write(ink, event.graces(), placed.x(i));
            GraceInk.write(ink, event.after(), placed.x(i));
        }
        BeamInk beams = new BeamInk(ink, placed);
        placed.staff().beams().forEach(beams::write);
    }

    private void rest(StaffEvent event, double x) {
        Glyph glyph = NoteGlyphs.rest(event.value());
        int place = event.value().halvings() == NoteValue.WHOLE ? 6 : 4;
        SheetFonts.Outline outline = SheetFonts.glyph(glyph);
        double left = event.wholeMeasure() ? placed.middle() - outline.bounds().getWidth() / 2 : x - HALF_HEAD;
        ink.outline(outline, left, Stems.y(place));
        if (!event.wholeMeasure())
            dots(event.value().dots(), left + outline.bounds().getMaxX() + HeadWriter.DOT_GAP, 5);
    }

    private void note(int index, StaffEvent event, double x) {
        legerLines(ink, event.heads(), x, event.stemUp(), headWidth(event), 1);
        for (StaffEvent.Head head : event.heads()) {
            ink.glyph(NoteGlyphs.head(event.value()), headX(event, head, x), Stems.y(head.place()));
            head.accidental().ifPresent(sign -> ink.glyph(sign, x + head.accidentalX(), Stems.y(head.place())));
        }
        if (event.value().hasStem()) stem(index, event, x);
        double edge = x + headWidth(event) - HALF_HEAD;
        if (event.stemUp() && event.heads().stream().anyMatch(StaffEvent.Head::displaced)) edge += headWidth(event);
        TreeSet<Integer> spaces = new TreeSet<>();
        for (StaffEvent.Head head : event.heads()) spaces.add(head.place() | 1);
        for (int space : spaces) dots(event.value().dots(), edge + HeadWriter.DOT_GAP, space);
    }

    private static double headWidth(StaffEvent event) {
        return SheetFonts.glyph(NoteGlyphs.head(event.value())).bounds().getWidth();
    }

    private static double headX(StaffEvent event, StaffEvent.Head head, double x) {
        if (!head.displaced()) return x - HALF_HEAD;
        double step = headWidth(event) - (event.value().hasStem() ? STEM : 0);
        return x - HALF_HEAD + (event.stemUp() ? step : -step);
    }

    private void stem(int index, StaffEvent event, double x) {
        double tip = placed.tip(index);
        double foot = event.stemUp() ? Stems.y(event.lowest()) - STEM_ANCHOR : Stems.y(event.highest()) + STEM_ANCHOR;
        double left = Stems.stemX(event, x) - STEM / 2;
        ink.bar(left, Math.min(tip, foot), STEM, Math.abs(foot - tip));
        int flags = event.value().flags();
        if (flags > 0 && !beamed[index])
            ink.glyph(NoteGlyphs.flag(flags, event.stemUp()), left, tip + Stems.flagShift(flags, event.stemUp()));
    }

    private void dots(int count, double x, int place) {
        for (int i = 0; i < count; i++) ink.glyph(Glyph.AUGMENTATION_DOT, x + i * HeadWriter.DOT_PITCH, Stems.y(place));
    }

    /** @param width of an ordinary head before scaling */
    static void legerLines(LineInk ink, List<StaffEvent.Head> heads, double x, boolean up, double width, double scale) {
        int lowest = heads.get(0).place();
        int highest = heads.get(heads.size() - 1).place();
        for (int line = -2; line >= lowest; line -= 2) legerLine(ink, heads, line, x, up, width, scale);
        for (int line = 10; line <= highest; line += 2) legerLine(ink, heads, line, x, up, width, scale);
    }

    private static void legerLine(
            LineInk ink, List<StaffEvent.Head> heads, int line, double x, boolean up, double width, double scale) {
        double left = x - scale * (HALF_HEAD + LEGER_EXTENSION);
        double right = x + scale * (width - HALF_HEAD + LEGER_EXTENSION);
        for (StaffEvent.Head head : heads) {
            boolean beyond = line < 0 ? head.place() <= line : head.place() >= line;
            if (!head.displaced() || !beyond) continue;
            if (up) right += scale * width;
            else left -= scale * width;
            break;
        }
        ink.bar(left, Stems.y(line) - LEGER_LINE / 2, right - left, LEGER_LINE);
    }
}
