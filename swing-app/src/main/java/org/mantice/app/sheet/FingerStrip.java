package org.mantice.app.sheet;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.RightHandPlan;
import org.mantice.rule.HandMove;

/**
 * Fingers below the notes, chords stacked with the lowest note at the bottom; above them brackets over the notes of one
 * hand place, with a sign of how the hand came there.
 */
final class FingerStrip {
    private static final Lettering DIGIT = new Lettering(Lettering.Face.PLAIN, 1.7);
    private static final Lettering GRACE = new Lettering(Lettering.Face.PLAIN, 1.35);
    private static final double BRACKET = 1.5;
    private static final double ROW = 2;
    private static final double FOOT = 0.35;
    /** Room for padlocks below the fingers, where there are any. */
    private static final double LOCKS = 1.3;
    /** Half the room in which a finger is pointed at, where its neighbours leave it. */
    private static final double REACH = 1.5;

    private static final double GRACE_STEP = 1.2;

    private final BandLine line;
    private final List<Item> items = new ArrayList<>();
    private final List<StripRow.Place> spots = new ArrayList<>();
    private final List<Placed> events = new ArrayList<>();
    private final double foot;
    private final double height;

    /** An event with the x it stands at and the played measure it is in. */
    private record Placed(RightHandPlan.Event event, TrebleMoment moment, int cell, double x) {}

    private FingerStrip(BandLine line) {
        this.line = line;
        for (MeasureGrid.Box box : line.line().boxes())
            box.cell().played().ifPresent(played -> place(box, line.plan().fingers(played)));
        int rows = events.stream()
                .mapToInt(placed -> placed.event().fingers().size())
                .max()
                .orElse(1);
        foot = FOOT + (events.stream().anyMatch(this::isLocked) ? LOCKS : 0);
        height = BRACKET + rows * ROW + foot;
    }

    static StripRow lay(BandLine line) {
        FingerStrip strip = new FingerStrip(line);
        strip.items.addAll(line.ground(strip.height));
        for (int i = 0; i < strip.events.size(); i++) strip.digits(i);
        strip.places();
        return new StripRow(Strip.FINGERS, strip.height, strip.items, strip.spots);
    }

    private void place(MeasureGrid.Box box, List<RightHandPlan.Event> played) {
        for (int i = 0; i < played.size(); i++) {
            RightHandPlan.Event event = played.get(i);
            TrebleMoment moment = line.plan().moment(event);
            double x = box.xOf(event.place().offset());
            if (moment.graceIndex() > 0) x -= GRACE_STEP * gracesFrom(played, i);
            if (moment.graceIndex() < 0) x -= GRACE_STEP * moment.graceIndex();
            events.add(new Placed(event, moment, box.index(), x));
        }
    }

    /** How many grace notes come from here on before their note. */
    private int gracesFrom(List<RightHandPlan.Event> played, int index) {
        int count = 0;
        for (int i = index;
                i < played.size() && line.plan().moment(played.get(i)).graceIndex() > 0;
                i++) count++;
        return count;
    }

    private void digits(int index) {
        Placed here = events.get(index);
        double before = index == 0 ? here.x() - REACH : (events.get(index - 1).x() + here.x()) / 2;
        double after = index + 1 == events.size()
                ? here.x() + REACH
                : (events.get(index + 1).x() + here.x()) / 2;
        double left = Math.max(here.x() - REACH, before);
        double right = Math.min(here.x() + REACH, after);
        Lettering lettering = here.moment().graceIndex() == 0 ? DIGIT : GRACE;
        int count = here.event().fingers().size();
        for (int note = count - 1; note >= 0; note--) {
            double bottom = height - foot - note * ROW;
            double top = note == count - 1 ? 0 : bottom - ROW;
            Spot spot = spot(here, note);
            spots.add(new StripRow.Place(
                    spot,
                    here.cell(),
                    here.event().place().offset(),
                    new Rectangle2D.Double(left, top, right - left, (note == 0 ? height : bottom) - top)));
            digit(here, spot, lettering, bottom - (ROW - DIGIT.capital()) / 2);
        }
        if (isLocked(here)) items.addAll(Signs.padlock(here.x(), height - FOOT - LOCKS / 2));
    }

    private void digit(Placed here, Spot spot, Lettering lettering, double baseline) {
        Item.Text text = Item.Text.centred(
                here.x(), baseline, here.event().fingers().get(spot.part()).toString(), lettering, Ink.INK);
        items.add(text);
        if (line.plan().differs(spot))
            items.add(Signs.doubleUnderline(
                    text.bounds().getX() - 0.1, text.bounds().getMaxX() + 0.1, baseline + 0.22));
    }

    /** A finger of a note, or of one in a chord. */
    private boolean isLocked(Placed placed) {
        for (int note = 0; note < placed.event().fingers().size(); note++)
            if (line.plan().isLocked(spot(placed, note))) return true;
        return false;
    }

    private Spot spot(Placed here, int note) {
        return new Spot(
                Strip.FINGERS,
                here.moment().measure(),
                here.event().pass(),
                here.event().place(),
                note);
    }

    /** Brackets over runs of one hand place; a run that began on the line before is open to the left. */
    private void places() {
        Shelf signs = new Shelf();
        int from = 0;
        for (int i = 0; i <= events.size(); i++) {
            if (i < events.size() && (i == from || staysFrom(i))) continue;
            bracket(from, i - 1, signs);
            from = i;
        }
    }

    private boolean staysFrom(int index) {
        Placed here = events.get(index);
        return here.event().move() == HandMove.STAY
                && here.event().moment() == events.get(index - 1).event().moment() + 1;
    }

    private void bracket(int from, int to, Shelf signs) {
        if (events.isEmpty()) return;
        Placed first = events.get(from);
        double y = BRACKET * 0.5;
        double left = first.x() - 0.6;
        if (first.event().move() != HandMove.STAY && signs.take(first.x() - 0.6, first.x() + 0.6)) {
            items.add(Signs.move(first.event().move(), first.x(), y));
            left = first.x() + 0.85;
        }
        if (PlayedPlan.gaveWay(
                        line.plan().plan().rightHand(),
                        first.event().pass(),
                        first.event().place())
                && signs.take(left, left + 1.44)) {
            items.add(Signs.caution(left + 0.72, y));
            left += 1.6;
        }
        double right = events.get(to).x() + 0.6;
        if (to > from && right - left > 1) items.add(bracket(left, right, y, beginsHere(from)));
    }

    private boolean beginsHere(int from) {
        return from > 0
                || events.get(0).event().moment() == 0
                || events.get(0).event().move() != HandMove.STAY;
    }

    private static Item bracket(double left, double right, double y, boolean begins) {
        Path2D path = new Path2D.Double();
        path.moveTo(left, begins ? y + 0.4 : y);
        path.lineTo(left, y);
        path.lineTo(right, y);
        path.lineTo(right, y + 0.4);
        return Item.Drawn.of(path, Ink.FAINT, 0.1);
    }
}
