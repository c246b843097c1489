package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.function.Function;
import org.mantice.plan.LeftHandPlan;

/** The signs above a press: what gave way, locks, jumps, missing and foreign tones, differences. */
final class PressSigns {
    /** A sign that can stand anywhere. */
    private interface Sign {
        List<Item> at(double x, double y);
    }

    private PressSigns() {}

    /** As many signs as there is room for beside those of other presses, the gravest first. */
    static List<Item> of(ButtonStrip.Press press, PlayedPlan plan, Spot spot, Shelf shelf, double y) {
        List<Sign> signs = signs(press.event(), plan, spot);
        List<Item> items = new ArrayList<>();
        for (int count = signs.size(); count > 0; count--) {
            double left = press.x() - count * Signs.SIZE / 2;
            if (!shelf.take(left, left + count * Signs.SIZE)) continue;
            for (int i = 0; i < count; i++) items.addAll(signs.get(i).at(left + (i + 0.5) * Signs.SIZE, y));
            break;
        }
        return items;
    }

    private static List<Sign> signs(LeftHandPlan.Event event, PlayedPlan plan, Spot spot) {
        List<Sign> signs = new ArrayList<>();
        if (PlayedPlan.gaveWay(plan.plan().leftHand(), event.pass(), event.place()))
            signs.add((x, y) -> List.of(Signs.caution(x, y)));
        if (plan.isLocked(spot)) signs.add(Signs::padlock);
        if (event.jump() != LeftHandPlan.Jump.NONE) signs.add((x, y) -> List.of(Signs.jump(event.jump(), x, y)));
        if (begins(event, plan, LeftHandPlan.Event::missing)) signs.add((x, y) -> List.of(Signs.tones(false, x, y)));
        if (begins(event, plan, LeftHandPlan.Event::foreign)) signs.add((x, y) -> List.of(Signs.tones(true, x, y)));
        if (plan.differs(spot)) signs.add((x, y) -> List.of(Signs.differs(x, y)));
        return signs;
    }

    /** Tones are marked once for a run of presses that lack or add the same, as they are counted. */
    private static boolean begins(
            LeftHandPlan.Event event, PlayedPlan plan, Function<LeftHandPlan.Event, SortedSet<Integer>> tones) {
        SortedSet<Integer> here = tones.apply(event);
        if (here.isEmpty()) return false;
        return event.index() == 0
                || !here.equals(tones.apply(plan.plan().leftHand().events().get(event.index() - 1)));
    }
}
