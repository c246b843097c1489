package org.mantice.app.sheet;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.mantice.plan.LeftHandPlan.Jump;
import org.mantice.rule.HandMove;

/** The signs of ours one by one, drawn as they are on the sheet, for a page that explains them. */
public enum SheetSign {
    PROPOSED_CHORD(List.of(Item.Text.centred(
            0, 0.6, "[Am]", new Lettering(Lettering.Face.BOLD_ITALIC, Engraving.CHORD_SIZE), Ink.INK))),
    PHRASE(List.of(Item.Drawn.of(Signs.open(-0.85, 0.5, -0.85, -0.5, 0.85, -0.5), Ink.INK, Engraving.BRACKET))),

    HAND_PLACE(List.of(Item.Drawn.of(Signs.open(-2, 0.4, -2, 0, 2, 0, 2, 0.4), Ink.FAINT, 0.1))),
    THUMB_UNDER(List.of(Signs.move(HandMove.THUMB_UNDER, 0, 0))),
    FINGER_OVER(List.of(Signs.move(HandMove.FINGER_OVER, 0, 0))),
    STRETCH(List.of(Signs.move(HandMove.STRETCH, 0, 0))),
    SHIFT_AT_GAP(List.of(Signs.move(HandMove.SHIFT_AT_GAP, 0, 0))),
    REPEATED_NOTE(List.of(Signs.move(HandMove.REPEATED_NOTE, 0, 0))),
    GLIDE(List.of(Signs.move(HandMove.GLIDE, 0, 0))),
    LIFT(List.of(Signs.move(HandMove.LIFT, 0, 0))),

    OUT(List.of(Signs.stroke(true, 0, 0))),
    IN(List.of(Signs.stroke(false, 0, 0))),
    TURN(List.of(Signs.fold(0, -1.2, 1.2))),
    COMFORTABLE(List.of(Item.Drawn.dashed(Signs.open(-2, 0, 2, 0), Ink.FAINT, 0.12, 0.8))),
    FULL(List.of(Item.Drawn.dashed(Signs.open(-2, 0, 2, 0), Ink.FAINT, 0.08, 0.25))),
    ELSEWHERE(List.of(Signs.tear(0, 0.5))),

    BASS(List.of(letters("C", -0.4), finger("4", 0.5))),
    COUNTERBASS(List.of(
            letters("E", -0.4), Item.Drawn.of(Signs.open(-0.9, 0.84, 0.1, 0.84), Ink.INK, 0.13), finger("5", 0.5))),
    CHORD(List.of(letters("CM", -0.4), finger("3", 1.2))),
    NO_FINGER(List.of(letters("CM", -2), finger("3", -0.4), letters("CM", 2))),
    SMALL_JUMP(List.of(Signs.jump(Jump.SMALL, 0, 0))),
    LARGE_JUMP(List.of(Signs.jump(Jump.LARGE, 0, 0))),
    MISSING(List.of(Signs.tones(false, 0, 0))),
    FOREIGN(List.of(Signs.tones(true, 0, 0))),
    SAME_BUTTONS(List.of(letters("·", 0))),
    NO_ROOM(List.of(letters("…", 0))),

    DIFFERENT_VALUE(List.of(letters("4", 0), Signs.doubleUnderline(-0.6, 0.6, 0.85))),
    DIFFERENT_PLACE(List.of(Signs.differs(0, 0))),
    DIFFERENCE_AT(
            List.of(Item.Drawn.of(Signs.brackets(new Rectangle2D.Double(-1.2, -1.2, 2.4, 2.4)), Ink.DIFFERENCE, 0.25))),
    LOCKED(Signs.padlock(0, 0)),
    GAVE_WAY(List.of(Signs.caution(0, 0))),
    CHOSEN(List.of(Signs.tick(0, 0, 1.3)));

    /** Room that every sign keeps inside, in staff spaces. */
    public static final double WIDTH = 8;

    public static final double HEIGHT = 3;

    private final List<Item> items;

    SheetSign(List<Item> items) {
        this.items = items;
    }

    private static Item letters(String text, double x) {
        Lettering large = new Lettering(Lettering.Face.PLAIN, 1.7);
        return Item.Text.centred(x, large.capital() / 2, text, large, Ink.INK);
    }

    private static Item finger(String digit, double x) {
        return Item.Text.centred(x, 1, digit, new Lettering(Lettering.Face.PLAIN, 1.3), Ink.INK);
    }

    Rectangle2D bounds() {
        Rectangle2D bounds = items.get(0).bounds();
        for (Item item : items) bounds = bounds.createUnion(item.bounds());
        return bounds;
    }

    /**
     * Draws it with its middle at a point.
     *
     * @param space pixels between two staff lines
     */
    public void paint(Graphics2D graphics, SheetColours colours, double x, double y, double space) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.translate(x, y);
        own.scale(space, space);
        for (Item item : items) item.paint(own, colours);
        own.dispose();
    }
}
