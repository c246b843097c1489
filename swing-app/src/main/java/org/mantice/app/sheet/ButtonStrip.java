package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.plan.LeftHandPlan;

/**
 * Every press of the left hand at its onset: basses at the bottom, chords above, signs of jumps and of missing or
 * foreign tones on top.
 */
final class ButtonStrip {
    private static final double SIGNS = 1.6;
    private static final double LANE = 2;
    private static final double FOOT = 0.75;
    /** Half the room in which a press is pointed at, where its neighbours leave it. */
    private static final double REACH = 2.2;

    private final BandLine line;
    private final List<Item> items = new ArrayList<>();
    private final List<StripRow.Place> spots = new ArrayList<>();
    private final List<Press> presses = new ArrayList<>();
    private final Shelf signs = new Shelf();
    private final Map<Integer, Shelf> lanes = new HashMap<>();
    private final double height;

    /**
     * A press with where it stands.
     *
     * @param bar x of the barline behind it
     */
    record Press(LeftHandPlan.Event event, int cell, double x, double bar) {}

    private ButtonStrip(BandLine line) {
        this.line = line;
        for (MeasureGrid.Box box : line.line().boxes())
            box.cell().played().ifPresent(played -> line.plan()
                    .presses(played)
                    .forEach(event -> presses.add(
                            new Press(event, box.index(), box.xOf(event.place().offset()), box.right()))));
        int most = presses.stream()
                .mapToInt(press -> PressLetters.lanes(press.event()))
                .max()
                .orElse(2);
        height = SIGNS + Math.max(2, most) * LANE + FOOT;
    }

    static StripRow lay(BandLine line) {
        ButtonStrip strip = new ButtonStrip(line);
        strip.items.addAll(line.ground(strip.height));
        for (int from = 0; from < strip.presses.size(); ) {
            int to = from;
            while (to < strip.presses.size()
                    && strip.presses.get(to).cell() == strip.presses.get(from).cell()) to++;
            strip.letters(strip.presses.subList(from, to));
            from = to;
        }
        for (int i = 0; i < strip.presses.size(); i++) strip.spot(i);
        return new StripRow(Strip.BUTTONS, strip.height, strip.items, strip.spots);
    }

    /** A measure's letters as large and as full as they fit side by side. */
    private void letters(List<Press> measure) {
        for (PressLetters.Detail detail : PressLetters.Detail.values()) {
            boolean last = detail.ordinal() + 1 == PressLetters.Detail.values().length;
            List<PressLetters.Entry> entries = PressLetters.of(measure, detail, line.music());
            if (!last && !fits(entries)) continue;
            for (PressLetters.Entry entry : entries)
                if (lane(entry.lane()).take(entry.left(), entry.right()))
                    items.addAll(entry.items(laneY(entry.lane())));
            return;
        }
    }

    private boolean fits(List<PressLetters.Entry> entries) {
        Map<Integer, Shelf> trial = new HashMap<>();
        for (PressLetters.Entry entry : entries) {
            boolean free = lane(entry.lane()).isFree(entry.left(), entry.right())
                    && trial.computeIfAbsent(entry.lane(), lane -> new Shelf()).take(entry.left(), entry.right());
            if (!free) return false;
        }
        return true;
    }

    private Shelf lane(int lane) {
        return lanes.computeIfAbsent(lane, one -> new Shelf());
    }

    /** The middle of a lane; lane 0 is the lowest. */
    private double laneY(int lane) {
        return height - FOOT - (lane + 0.5) * LANE;
    }

    private void spot(int index) {
        Press here = presses.get(index);
        double before = index == 0 ? here.x() - REACH : (presses.get(index - 1).x() + here.x()) / 2;
        double after = index + 1 == presses.size()
                ? here.x() + REACH
                : (presses.get(index + 1).x() + here.x()) / 2;
        double left = Math.max(here.x() - REACH, before);
        double right = Math.min(here.x() + REACH, after);
        LeftHandPlan.Event event = here.event();
        Spot spot = new Spot(Strip.BUTTONS, event.measure(), event.pass(), event.place(), 0);
        spots.add(new StripRow.Place(
                spot, here.cell(), event.place().offset(), new Rectangle2D.Double(left, 0, right - left, height)));
        if (line.plan().differs(spot))
            items.add(Signs.doubleUnderline(
                    Math.max(left, here.x() - 0.8), Math.min(right, here.x() + 0.8), height - 0.45));
        items.addAll(PressSigns.of(here, line.plan(), spot, signs, SIGNS / 2));
    }
}
