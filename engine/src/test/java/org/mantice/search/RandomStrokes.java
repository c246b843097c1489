package org.mantice.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.mantice.search.StrokePlan.Stroke;

/** A seeded small stroke lattice with costs drawn per argument, and every plan of it by brute force. */
final class RandomStrokes implements StrokeLattice {
    private final long seed;
    private final int places;
    private final int capacity;
    private final int[] amountBefore;
    private final int[] borders;
    private final int largestCost;
    private final int impossiblePercent;
    private final int concedingPercent;
    private final boolean shifting;
    private final List<Start> starts = new ArrayList<>();
    private final ConcessionScale scale = new ConcessionScale(3);

    RandomStrokes(long seed, int mostPlaces, int concedingPercent) {
        Random random = new Random(seed);
        this.seed = seed;
        this.concedingPercent = concedingPercent;
        places = 2 + random.nextInt(mostPlaces - 1);
        capacity = 10 + random.nextInt(60);
        amountBefore = new int[places];
        for (int place = 1; place < places; place++) amountBefore[place] = amountBefore[place - 1] + random.nextInt(14);
        borders = random.ints(1 + random.nextInt(12), 1, capacity + 1)
                .sorted()
                .distinct()
                .toArray();
        largestCost = random.nextInt(8);
        impossiblePercent = random.nextInt(12);
        shifting = random.nextBoolean();
        int count = 1 + random.nextInt(3);
        for (int start = 0; start < count; start++)
            starts.add(new Start(
                    start * capacity / 3,
                    random.nextBoolean() ? Direction.RISING : Direction.FALLING,
                    random.nextInt(3),
                    ConcessionScale.NONE));
    }

    @Override
    public int places() {
        return places;
    }

    @Override
    public int capacity() {
        return capacity;
    }

    @Override
    public int amount(int from, int to) {
        return amountBefore[to] - amountBefore[from];
    }

    @Override
    public int furthest(int from) {
        return Math.min(places - 1, from + 1 + Math.floorMod(seed, 7));
    }

    @Override
    public int cells() {
        return borders.length + 1;
    }

    @Override
    public int firstLevel(int cell) {
        return cell == 0 ? 0 : borders[cell - 1];
    }

    @Override
    public List<Start> starts() {
        return starts;
    }

    @Override
    public List<Shift> shifts(int place) {
        if (!shifting || place % 3 != 0) return List.of();
        return List.of(
                new Shift(0, capacity / 2, draw(1, place, 0, 0, false), concession(11, place)),
                new Shift(capacity / 2, capacity / 4, draw(2, place, 0, 0, false), concession(12, place)));
    }

    @Override
    public long strokeCost(int from, int to, Direction direction) {
        return draw(3, from, to, direction.ordinal(), true);
    }

    @Override
    public long turnCost(int place, Direction next) {
        return draw(4, place, next.ordinal(), 0, true);
    }

    @Override
    public long pairCost(int first, int middle, int last) {
        return draw(5, first, middle, last, false);
    }

    @Override
    public long endCost(int place, Direction direction, int cell) {
        return draw(6, place, direction.ordinal(), cell, true);
    }

    @Override
    public ConcessionScale scale() {
        return scale;
    }

    @Override
    public long strokeConcessions(int from, int to, Direction direction) {
        return concession(13, from * 100 + to * 2 + direction.ordinal());
    }

    @Override
    public long turnConcessions(int place, Direction next) {
        return concession(14, place * 2 + next.ordinal());
    }

    @Override
    public long endConcessions(int place, Direction direction, int cell) {
        return concession(15, (place * 2 + direction.ordinal()) * 100 + cell);
    }

    /** Every plan, sorted by concessions, cost and decisions. */
    List<StrokePlan> all() {
        List<StrokePlan> plans = new ArrayList<>();
        for (int start = 0; start < starts.size(); start++) {
            Start one = starts.get(start);
            extend(plans, start, new ArrayList<>(), 0, one.level(), one.direction(), one.cost(), one.concessions(), -1);
        }
        plans.sort(Comparator.comparingLong(StrokePlan::concessions)
                .thenComparingLong(StrokePlan::cost)
                .thenComparingInt(StrokePlan::start)
                .thenComparing(StrokePlan::strokes, RandomStrokes::byDecisions));
        return plans;
    }

    private void extend(
            List<StrokePlan> plans,
            int start,
            List<Stroke> strokes,
            int place,
            int level,
            Direction direction,
            long cost,
            long gives,
            int shift) {
        for (int to = place + 1; place < places - 1 && to <= furthest(place); to++) {
            int end = direction == Direction.RISING ? level + amount(place, to) : level - amount(place, to);
            if (end < 0 || end > capacity) continue;
            int cell = 0;
            while (cell + 1 < cells() && firstLevel(cell + 1) <= end) cell++;
            long stroke = strokeCost(place, to, direction);
            long ending = endCost(to, direction, cell);
            if (stroke < 0 || ending < 0) continue;
            Stroke last = strokes.isEmpty() ? null : strokes.get(strokes.size() - 1);
            long total = cost + stroke + ending + (last == null ? 0 : pairCost(last.from(), place, to));
            long given = scale.add(
                    gives, scale.add(strokeConcessions(place, to, direction), endConcessions(to, direction, cell)));
            strokes.add(new Stroke(place, to, direction, shift, level, end));
            if (to == places - 1) plans.add(new StrokePlan(start, strokes, total, given));
            else goOn(plans, start, strokes, to, end, direction, total, given);
            strokes.remove(strokes.size() - 1);
        }
    }

    private void goOn(
            List<StrokePlan> plans,
            int start,
            List<Stroke> strokes,
            int place,
            int level,
            Direction direction,
            long cost,
            long gives) {
        Direction other = direction.opposite();
        long turn = turnCost(place, other);
        long turned = scale.add(gives, turnConcessions(place, other));
        if (turn >= 0) extend(plans, start, strokes, place, level, other, cost + turn, turned, -1);
        for (int index = 0; index < shifts(place).size(); index++) {
            Shift shift = shifts(place).get(index);
            if (level == shift.level() || Math.abs(level - shift.level()) > shift.most()) continue;
            extend(
                    plans,
                    start,
                    strokes,
                    place,
                    shift.level(),
                    direction,
                    cost + shift.cost(),
                    scale.add(gives, shift.concessions()),
                    index);
            if (turn >= 0)
                extend(
                        plans,
                        start,
                        strokes,
                        place,
                        shift.level(),
                        other,
                        cost + turn + shift.cost(),
                        scale.add(turned, shift.concessions()),
                        index);
        }
    }

    private static int byDecisions(List<Stroke> a, List<Stroke> b) {
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            int order = Comparator.comparingInt(Stroke::to)
                    .thenComparingInt(Stroke::shift)
                    .thenComparing(Stroke::direction)
                    .compare(a.get(i), b.get(i));
            if (order != 0) return order;
        }
        return 0;
    }

    private long draw(int kind, int a, int b, int c, boolean mayBeImpossible) {
        Random random = new Random(((seed * 31 + kind) * 1009 + a) * 1009 * 1009 + b * 1009L + c);
        random.nextInt();
        if (mayBeImpossible && random.nextInt(100) < impossiblePercent) return IMPOSSIBLE;
        return random.nextInt(largestCost + 1);
    }

    private long concession(int kind, int a) {
        Random random = new Random((seed * 37 + kind) * 10_007 + a);
        random.nextInt();
        if (random.nextInt(100) >= concedingPercent) return ConcessionScale.NONE;
        return scale.one(random.nextInt(1 + (int) (seed % 3)));
    }
}
