package org.mantice.performance;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;

/**
 * Loudness at every written place: marks hold until the next one, hairpins lead in a straight line from the loudness at
 * their start to the mark at their end, or by one step where none stands there (estimate). A hairpin that is never
 * closed ends at the next mark or hairpin; without one it is passed over.
 */
final class LoudnessCurve {
    /** How far behind a hairpin its mark may stand. Estimate. */
    private static final MusicalTime REACH = MusicalTime.QUARTER;

    /** One loudness mark to the next. */
    static final int STEP = 100;

    private static final int LOUDEST = 700;

    /** {@code target} below 0: one step up or down. */
    private record Hairpin(MusicalTime start, MusicalTime end, boolean crescendo, int target) {
        int target(int from) {
            if (target >= 0) return target;
            return Math.max(0, Math.min(LOUDEST, crescendo ? from + STEP : from - STEP));
        }
    }

    /** A mark at a time of the written music. */
    private record Timed(MusicalTime time, Mark mark) {}

    private final Tune tune;
    private final List<MusicalTime> starts = new ArrayList<>();
    private final List<List<Hairpin>> hairpinsAt = new ArrayList<>();

    LoudnessCurve(Tune tune) {
        this.tune = tune;
        MusicalTime start = MusicalTime.ZERO;
        for (Measure measure : tune.measures()) {
            starts.add(start);
            start = start.plus(measure.length());
            hairpinsAt.add(new ArrayList<>());
        }
        for (Hairpin hairpin : hairpins(timed())) place(hairpin, start);
    }

    private void place(Hairpin hairpin, MusicalTime end) {
        for (int i = 0; i < starts.size(); i++) {
            MusicalTime next = i + 1 < starts.size() ? starts.get(i + 1) : end;
            if (starts.get(i).isBefore(hairpin.end()) && !next.isBefore(hairpin.start()))
                hairpinsAt.get(i).add(hairpin);
        }
    }

    /**
     * Hundredths of a step.
     *
     * @param entryLevel the level on entering the measure
     */
    int at(int measure, MusicalTime offset, int entryLevel) {
        MusicalTime time = starts.get(measure).plus(offset);
        MusicalTime since = starts.get(measure);
        int level = entryLevel;
        for (Mark mark : tune.measure(measure).marks())
            if (mark instanceof Mark.Dynamic dynamic && !offset.isBefore(dynamic.offset())) {
                since = starts.get(measure).plus(dynamic.offset());
                level = STEP * dynamic.level().ordinal();
            }
        for (Hairpin hairpin : hairpinsAt.get(measure)) {
            if (hairpin.start().isBefore(starts.get(measure))) {
                if (since.isBefore(hairpin.end())) level = goingOn(hairpin, measure, level, time);
            } else if (!hairpin.start().isBefore(since) && !time.isBefore(hairpin.start())) {
                level = on(hairpin, hairpin.start(), level, time);
            }
        }
        return level;
    }

    /** Inside a hairpin from an earlier measure the way goes on in a straight line from the entry level. */
    private int goingOn(Hairpin hairpin, int measure, int level, MusicalTime time) {
        MusicalTime start = starts.get(measure);
        if (hairpin.target() >= 0) return on(hairpin, start, level, time);
        MusicalTime whole = hairpin.end().minus(hairpin.start());
        MusicalTime gone = time.min(hairpin.end()).minus(start);
        int way = share(STEP, gone, whole);
        return Math.max(0, Math.min(LOUDEST, hairpin.crescendo() ? level + way : level - way));
    }

    private static int on(Hairpin hairpin, MusicalTime from, int level, MusicalTime time) {
        int target = hairpin.target(level);
        MusicalTime gone = time.min(hairpin.end()).minus(from);
        return level + share(target - level, gone, hairpin.end().minus(from));
    }

    private static int share(int way, MusicalTime gone, MusicalTime whole) {
        MusicalTime part = gone.dividedBy(whole);
        return (int) Math.floorDiv(Math.multiplyExact(way, part.numerator()), part.denominator());
    }

    private List<Timed> timed() {
        List<Timed> marks = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++)
            for (Mark mark : tune.measure(i).marks())
                marks.add(new Timed(starts.get(i).plus(mark.offset()), mark));
        return marks;
    }

    private static List<Hairpin> hairpins(List<Timed> marks) {
        List<Hairpin> hairpins = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++)
            if (marks.get(i).mark() instanceof Mark.HairpinStart start) {
                MusicalTime from = marks.get(i).time();
                MusicalTime end = endOf(marks, i);
                if (from.isBefore(end))
                    hairpins.add(new Hairpin(from, end, start.crescendo(), targetOf(marks, i, end)));
            }
        return hairpins;
    }

    /** The start itself where nothing closes the hairpin. */
    private static MusicalTime endOf(List<Timed> marks, int start) {
        MusicalTime from = marks.get(start).time();
        for (Timed next : marks.subList(start + 1, marks.size())) {
            if (next.mark() instanceof Mark.HairpinEnd) return next.time();
            boolean closes = next.mark() instanceof Mark.HairpinStart || next.mark() instanceof Mark.Dynamic;
            if (closes && from.isBefore(next.time())) return next.time();
        }
        return from;
    }

    private static int targetOf(List<Timed> marks, int start, MusicalTime end) {
        for (Timed next : marks.subList(start + 1, marks.size())) {
            if (end.plus(REACH).isBefore(next.time())) break;
            if (next.time().isBefore(end)) continue;
            if (next.mark() instanceof Mark.Dynamic dynamic)
                return STEP * dynamic.level().ordinal();
            if (next.mark() instanceof Mark.HairpinStart && end.isBefore(next.time())) break;
        }
        return -1;
    }
}
