package org.mantice.app.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.app.words.Words;
import org.mantice.tune.Articulation;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.EventMarks;
import org.mantice.tune.Mark;

/**
 * Inks what belongs to single notes: articulations, tuplet numbers, fermatas, breath marks, beginnings of phrases,
 * bellows effects.
 */
final class NoteMarkInk {
    private static final double GAP = 0.35;
    /** Distance from a head within which short marks stand in the next free space. */
    private static final int NEAR = 2;
    /** The corner of a phrase, our choice. */
    private static final double PHRASE_WIDTH = 1.7;

    private static final double PHRASE_HEIGHT = 1;
    private static final double PHRASE_AIR = 0.3;

    private final LineInk ink;
    private final PlacedMeasure placed;
    private final Words words;
    private final boolean played;

    NoteMarkInk(LineInk ink, PlacedMeasure placed, Words words, boolean played) {
        this.ink = ink;
        this.placed = placed;
        this.words = words;
        this.played = played;
    }

    /** What stands between a note and the slurs. */
    void writeNear() {
        List<StaffEvent> events = placed.staff().events();
        for (int i = 0; i < events.size(); i++) {
            StaffEvent event = events.get(i);
            if (event.first() && !event.isRest() && event.source().isPresent())
                articulations(i, event, event.source().get().marks().articulations());
        }
        placed.staff().tuplets().forEach(this::tuplet);
    }

    /** What stands outside the slurs. */
    void writeFar() {
        ink.played(played);
        List<StaffEvent> events = placed.staff().events();
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i).source().isEmpty()) continue;
            EventMarks marks = events.get(i).source().get().marks();
            if (marks.fermata() && events.get(i).last())
                centred(Glyph.FERMATA_ABOVE, events.get(i).wholeMeasure() ? placed.middle() : placed.x(i), true);
            if (marks.breathAfter() && events.get(i).last()) breath(i);
        }
        effects(events);
        for (Mark mark : placed.staff().measure().marks())
            if (mark instanceof Mark.PhraseStart start) phrase(placed.x(start.offset()) - Engraving.HALF_HEAD);
    }

    /** A corner above the note that a phrase begins with. */
    private void phrase(double left) {
        double y = ink.highest(left - PHRASE_AIR, left + PHRASE_WIDTH, 0) - GAP - PHRASE_HEIGHT;
        ink.bar(left - PHRASE_AIR, y, PHRASE_WIDTH, Engraving.BRACKET);
        ink.bar(left - PHRASE_AIR, y, Engraving.BRACKET, PHRASE_HEIGHT);
    }

    private void articulations(int index, StaffEvent event, Set<Articulation> marks) {
        boolean above = !event.stemUp();
        for (Articulation mark : marks) {
            boolean inside = mark == Articulation.STACCATO || mark == Articulation.TENUTO;
            if (inside && marks.size() == 1 && near(index, event, mark, above)) continue;
            boolean over = above || mark == Articulation.STRONG_ACCENT;
            centred(glyph(mark, over), placed.x(index), over);
        }
    }

    /** In the second space from a head, if that is within the staff. */
    private boolean near(int index, StaffEvent event, Articulation mark, boolean above) {
        int place = above ? event.highest() + NEAR : event.lowest() - NEAR;
        if (place % 2 == 0) place += above ? 1 : -1;
        if (place < 0 || place > 8) return false;
        SheetFonts.Outline outline = SheetFonts.glyph(glyph(mark, above));
        ink.outline(
                outline,
                placed.x(index) - outline.bounds().getCenterX(),
                Stems.y(place) - outline.bounds().getCenterY());
        return true;
    }

    private void centred(Glyph glyph, double x, boolean above) {
        SheetFonts.Outline outline = SheetFonts.glyph(glyph);
        double left = x - outline.bounds().getCenterX();
        double right = left + outline.bounds().getWidth();
        double y = above ? ink.highest(left, right, 0) - GAP : ink.lowest(left, right, 4) + GAP;
        ink.outline(outline, left, y);
    }

    private static Glyph glyph(Articulation mark, boolean above) {
        Glyph over =
                switch (mark) {
                    case STACCATO -> Glyph.ARTIC_STACCATO_ABOVE;
                    case STACCATISSIMO -> Glyph.ARTIC_STACCATISSIMO_ABOVE;
                    case SPICCATO -> Glyph.ARTIC_STACCATISSIMO_WEDGE_ABOVE;
                    case TENUTO -> Glyph.ARTIC_TENUTO_ABOVE;
                    case DETACHED_LEGATO -> Glyph.ARTIC_TENUTO_STACCATO_ABOVE;
                    case ACCENT -> Glyph.ARTIC_ACCENT_ABOVE;
                    case STRONG_ACCENT -> Glyph.ARTIC_MARCATO_ABOVE;
                    case STRESS -> Glyph.ARTIC_STRESS_ABOVE;
                    case UNSTRESS -> Glyph.ARTIC_UNSTRESS_ABOVE;
                    case SOFT_ACCENT -> Glyph.ARTIC_SOFT_ACCENT_ABOVE;
                };
        return above ? over : Glyph.values()[over.ordinal() + 1];
    }

    /** Before the next sign, on the top line. */
    private void breath(int index) {
        StaffEvent event = placed.staff().events().get(index);
        double end = index + 1 < placed.staff().events().size()
                ? placed.x(index + 1) - placed.staff().events().get(index + 1).left()
                : placed.box().right() - placed.closing();
        double left = Math.max(placed.x(index) + event.right() + 0.1, end - 1.2);
        ink.glyph(Glyph.BREATH_MARK_COMMA, left, ink.highest(left, left + 0.7, 0.2) - 0.2);
    }

    /** At the first of the notes that share one. */
    private void effects(List<StaffEvent> events) {
        Optional<BellowsEffect> running = Optional.empty();
        for (int i = 0; i < events.size(); i++) {
            Optional<BellowsEffect> effect =
                    events.get(i).source().flatMap(source -> source.marks().bellowsEffect());
            if (effect.isPresent() && !effect.equals(running)) effect(effect.get(), placed.x(i) - Engraving.HALF_HEAD);
            running = effect;
        }
    }

    private void effect(BellowsEffect effect, double left) {
        String text = effect == BellowsEffect.SHAKE ? words.text("staff.shake") : words.text("staff.ricochet");
        SheetFonts.Outline outline = SheetFonts.text(text, SheetFonts.Face.ITALIC, Engraving.SMALL_SIZE);
        ink.outline(outline, left, ink.highest(left, left + outline.advance(), 0) - 0.6);
    }

    /** A number at the stems, with a bracket where no beam shows the group. */
    private void tuplet(List<Integer> group) {
        List<StaffEvent> events = placed.staff().events();
        long up = group.stream()
                .filter(i -> events.get(i).isRest() || events.get(i).stemUp())
                .count();
        boolean above = 2 * up >= group.size();
        double left = placed.x(group.get(0)) - Engraving.HALF_HEAD;
        double right = placed.x(group.get(group.size() - 1)) + Engraving.HALF_HEAD;
        boolean beamed = placed.staff().beams().contains(group);
        double edge = above ? ink.highest(left, right, 0) - GAP : ink.lowest(left, right, 4) + GAP;
        if (beamed) edge = (above ? beamEdge(group, true) - GAP : beamEdge(group, false) + GAP);
        double half = number(events.get(group.get(0)).tuplet(), (left + right) / 2, edge, above);
        if (!beamed) bracket(left, right, (left + right) / 2, half, above ? edge - 0.5 : edge + 0.5, above);
    }

    private double beamEdge(List<Integer> group, boolean above) {
        double middle = (placed.tip(group.get(0)) + placed.tip(group.get(group.size() - 1))) / 2;
        return above ? Math.min(middle, 0.5) : Math.max(middle, 3.5);
    }

    /** Half the number's width with some air. */
    private double number(int number, double middle, double edge, boolean above) {
        String figures = Integer.toString(number);
        double scale = 0.85;
        double width = 0;
        for (char c : figures.toCharArray())
            width += scale * SheetFonts.glyph(Glyph.tupletFigure(c - '0')).advance();
        double x = middle - width / 2;
        double base = above ? edge : edge + scale * 1.5;
        for (char c : figures.toCharArray()) {
            SheetFonts.Outline outline = SheetFonts.glyph(Glyph.tupletFigure(c - '0'));
            ink.outline(outline, x, base, scale);
            x += scale * outline.advance();
        }
        return width / 2 + 0.3;
    }

    private void bracket(double left, double right, double middle, double half, double y, boolean above) {
        double thick = Engraving.BRACKET;
        double hook = 0.7;
        ink.bar(left, y - thick / 2, Math.max(0.1, middle - half - left), thick);
        ink.bar(middle + half, y - thick / 2, Math.max(0.1, right - middle - half), thick);
        ink.bar(left, above ? y : y - hook, thick, hook);
        ink.bar(right - thick, above ? y : y - hook, thick, hook);
    }
}
