package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.app.words.MusicWords;
import org.mantice.plan.LeftHandPlan;
import org.mantice.tune.MusicalTime;

/**
 * The room that the presses of one measure need side by side, so that every button and every new finger can be read.
 *
 * @param start least distance from where the measure begins to the first of them at its start
 * @param gaps between moments of the measure
 */
record PressRoom(double start, List<Gap> gaps) {
    static final PressRoom NONE = new PressRoom(0, List.of());
    private static final double BETWEEN = 0.4;
    /** Letters are moved this much before a barline. */
    private static final double AT_BARLINE = -0.6;

    /** Distance to be kept between two moments. */
    record Gap(MusicalTime from, MusicalTime to, double length) {}

    PressRoom {
        gaps = List.copyOf(gaps);
    }

    /**
     * What all plans shown need in one measure.
     *
     * @param played index of the played measure
     * @param end of the measure, from its start
     */
    static PressRoom of(List<PlayedPlan> plans, int played, MusicalTime end, MusicWords music) {
        double start = 0;
        List<Gap> gaps = new ArrayList<>();
        for (PlayedPlan plan : plans) start = Math.max(start, add(gaps, plan.presses(played), end, music));
        return new PressRoom(start, gaps);
    }

    /** @return what the first needs before it */
    private static double add(List<Gap> gaps, List<LeftHandPlan.Event> presses, MusicalTime end, MusicWords music) {
        double start = 0;
        Map<Integer, MusicalTime> lastAt = new HashMap<>();
        Map<Integer, Double> reach = new HashMap<>();
        List<ButtonStrip.Press> measure = presses.stream()
                .map(event -> new ButtonStrip.Press(event, 0, 0, Double.POSITIVE_INFINITY))
                .toList();
        for (int i = 0; i < measure.size(); i++) {
            MusicalTime here = presses.get(i).place().offset();
            List<ButtonStrip.Press> upToHere = measure.subList(Math.max(0, i - 1), i + 1);
            List<PressLetters.Entry> entries = PressLetters.of(upToHere, PressLetters.Detail.FINGERS_ONCE, music);
            int before = i == 0 ? 0 : presses.get(i - 1).buttons().size();
            for (PressLetters.Entry entry : entries.subList(before, entries.size())) {
                MusicalTime from = lastAt.get(entry.lane());
                if (from != null)
                    gaps.add(new Gap(from, here, reach.getOrDefault(entry.lane(), 0.0) + BETWEEN - entry.left()));
                else if (here.isZero()) start = Math.max(start, BETWEEN - entry.left());
                lastAt.put(entry.lane(), here);
                reach.put(entry.lane(), entry.right());
            }
        }
        lastAt.forEach((lane, from) -> gaps.add(new Gap(from, end, reach.getOrDefault(lane, 0.0) + AT_BARLINE)));
        return start;
    }
}
