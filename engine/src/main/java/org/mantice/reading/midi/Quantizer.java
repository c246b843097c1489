package org.mantice.reading.midi;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds the beats of a file and how each is divided. Where nearly all notes lie on divisions of the written beats, those
 * are taken as they are. Else the notes were played by hand: beats may drift from the written ones by up to 4 %, and the
 * cheapest way through all beats is taken, exactly, by dynamic programming over where a beat begins and how fast it goes,
 * of which the {@link #KEPT} cheapest are followed. It pays for what notes lie beside their place, for fine and mixed
 * divisions and for changes of pace. All prices are estimates. Time is linear in beats and notes.
 */
public final class Quantizer {
    private static final int[] EXACT = {1, 2, 3, 4, 6, 8, 12, 9, 16, 24, 5, 7, 10, 18};
    private static final int EXACT_PLAIN = 8;
    private static final int[] BINARY = {1, 2, 4, 3, 6, 8, 12};
    private static final long[] BINARY_PRICE = {0, 700, 1_500, 2_500, 4_000, 4_000, 6_500};
    private static final int[] TERNARY = {1, 3, 6, 2, 4, 12, 9};
    private static final long[] TERNARY_PRICE = {0, 500, 1_500, 2_500, 4_000, 4_000, 5_000};
    /** A note beside its place by this much (10 ms at a quarter of 500) costs half a thousand. */
    private static final long SPREAD = Grid.FINE / 50;

    private static final long SAME_PLACE_PRICE = 6_000;
    private static final int SLOPES = 8;
    private static final int SLOPE_PERMILLE = 5;
    private static final long SLOPE_PRICE = 20;
    private static final long BEND_PRICE = 400;
    private static final long HOPELESS = 15_000;
    static final int KEPT = 96;

    /** The ways up to the beginning of a beat. */
    private static final class Front {
        private final long[] begin = new long[KEPT];
        private final long[] cut = new long[KEPT];
        private final int[] slope = new int[KEPT];
        private final int[] parent = new int[KEPT];
        private final byte[] parts = new byte[KEPT];
        private final long[] cost = new long[KEPT];
        private int size;
    }

    private record Way(long begin, long cut, int slope, int parent, int parts, long cost) {}

    private final List<Beat> beats;
    private final long[] moments;
    private final long tolerance;

    private Quantizer(List<Beat> beats, long[] moments, long tolerance) {
        this.beats = beats;
        this.moments = moments;
        this.tolerance = tolerance;
    }

    /**
     * @param ticks where notes begin, in order
     * @param division ticks a quarter note
     */
    public static Grid grid(Bars bars, long[] ticks, int division) {
        long[] moments = Arrays.stream(ticks)
                .map(tick -> Grid.moment(tick, division))
                .distinct()
                .toArray();
        long tolerance = division >= 96 ? Grid.FINE / division + 1 : Grid.FINE / 2 / division + 1;
        Quantizer quantizer = new Quantizer(bars.beats(), moments, tolerance);
        Grid exact = quantizer.asWritten();
        return quantizer.fits(exact) ? exact : quantizer.followed();
    }

    private Grid asWritten() {
        int count = beats.size();
        long[] begins = new long[count + 1];
        long[] cuts = new long[count];
        int[] parts = new int[count];
        for (int i = 0; i < count; i++) {
            begins[i] = Grid.fineOf(beats.get(i).start());
            begins[i + 1] = begins[i] + Grid.fineOf(beats.get(i).length());
            cuts[i] = i == 0 ? Long.MIN_VALUE : begins[i] - tolerance;
        }
        int from = 0;
        for (int i = 0; i < count; i++) {
            int to = from;
            while (to < moments.length && (i + 1 == count || moments[to] < cuts[i + 1])) to++;
            if (to > from) parts[i] = exactParts(begins[i], begins[i + 1], from, to);
            from = to;
        }
        return new Grid(beats, begins, cuts, parts, tolerance);
    }

    /** The plainest division on which all notes of a beat lie; 12 where none is. */
    private int exactParts(long begin, long end, int from, int to) {
        for (int parts : EXACT) {
            boolean all = true;
            for (int i = from; i < to && all; i++) all = error(moments[i], begin, end - begin, parts) <= tolerance;
            if (all) return parts;
        }
        return 12;
    }

    private boolean fits(Grid grid) {
        long beside = 0;
        int plain = 0;
        for (long moment : moments) {
            if (Math.abs(grid.moved(moment)) > tolerance) beside++;
            int parts = grid.parts(grid.beatOf(moment));
            for (int i = 0; i < EXACT_PLAIN; i++) if (EXACT[i] == parts) plain++;
        }
        return beside * 50 <= moments.length && plain * 10L >= moments.length * 9L;
    }

    private Grid followed() {
        Front[] fronts = new Front[beats.size() + 1];
        fronts[0] = start();
        for (int i = 0; i < beats.size(); i++) fronts[i + 1] = step(fronts[i], beats.get(i));
        int count = beats.size();
        long[] begins = new long[count + 1];
        long[] cuts = new long[count];
        int[] parts = new int[count];
        int way = 0;
        for (int i = count; i > 0; i--) {
            begins[i] = fronts[i].begin[way];
            parts[i - 1] = fronts[i].parts[way];
            way = fronts[i].parent[way];
            cuts[i - 1] = i == 1 ? Long.MIN_VALUE : fronts[i - 1].cut[way];
        }
        begins[0] = fronts[0].begin[way];
        return new Grid(beats, begins, cuts, parts, -1);
    }

    private static Front start() {
        Front front = new Front();
        for (int slope = -SLOPES; slope <= SLOPES; slope++) {
            front.slope[front.size] = slope;
            front.cut[front.size] = Long.MIN_VALUE;
            front.cost[front.size++] = SLOPE_PRICE * slope * slope;
        }
        return front;
    }

    private Front step(Front front, Beat beat) {
        Map<Long, Way> ways = new TreeMap<>();
        long written = Grid.fineOf(beat.length());
        for (int i = 0; i < front.size; i++) {
            int bend = hasNotes(front, i, written) ? 2 : 0;
            for (int slope = Math.max(-SLOPES, front.slope[i] - bend);
                    slope <= Math.min(SLOPES, front.slope[i] + bend);
                    slope++) {
                int change = slope - front.slope[i];
                long length = written * (1000 + SLOPE_PERMILLE * slope) / 1000;
                long cost = front.cost[i] + BEND_PRICE * change * change;
                long end = front.begin[i] + length;
                long key = end * 32 + slope + SLOPES;
                Way known = ways.get(key);
                if (known != null && known.cost() <= cost) continue;
                ways.put(key, new Way(end, end - length / 24, slope, i, 0, cost));
            }
        }
        return pruned(
                ways.values().stream().map(way -> priced(way, front, beat)).toList());
    }

    private boolean hasNotes(Front front, int way, long written) {
        int first = firstFrom(front.cut[way]);
        return first < moments.length && moments[first] < front.begin[way] + written;
    }

    private int firstFrom(long cut) {
        int found = Arrays.binarySearch(moments, cut);
        return found >= 0 ? found : -found - 1;
    }

    /** The way with the cheapest division of its last beat. */
    private Way priced(Way way, Front front, Beat beat) {
        int from = firstFrom(front.cut[way.parent()]);
        int to = from;
        while (to < moments.length && moments[to] < way.cut()) to++;
        if (from == to) return way;
        long begin = front.begin[way.parent()];
        int[] divisions = beat.ternary() ? TERNARY : BINARY;
        long[] prices = beat.ternary() ? TERNARY_PRICE : BINARY_PRICE;
        int best = 1;
        long least = Long.MAX_VALUE;
        for (int i = 0; i < divisions.length; i++) {
            if (prices[i] >= least) continue;
            long price = prices[i] + besides(begin, way.begin() - begin, from, to, divisions[i]);
            if (price < least) {
                least = price;
                best = divisions[i];
            }
        }
        return new Way(way.begin(), way.cut(), way.slope(), way.parent(), best, way.cost() + least);
    }

    private long besides(long begin, long length, int from, int to, int parts) {
        long price = 0;
        long last = -1;
        for (int i = from; i < to; i++) {
            long error = error(moments[i], begin, length, parts);
            price += Math.min(50_000, 500 * error * error / (SPREAD * SPREAD));
            long index = index(moments[i], begin, length, parts);
            boolean together = i > from && moments[i] - moments[i - 1] < Grid.FINE / 16;
            if (index == last && !together) price += SAME_PLACE_PRICE;
            last = index;
        }
        return price;
    }

    private static long index(long moment, long begin, long length, int parts) {
        return Math.max(0, Math.min(parts, Math.floorDiv(2 * (moment - begin) * parts + length, 2 * length)));
    }

    private static long error(long moment, long begin, long length, int parts) {
        return Math.abs(moment - begin - length * index(moment, begin, length, parts) / parts);
    }

    private static Front pruned(List<Way> ways) {
        List<Way> kept = ways.stream()
                .sorted(Comparator.comparingLong(Way::cost)
                        .thenComparingInt(way -> Math.abs(way.slope()))
                        .thenComparingLong(Way::begin)
                        .thenComparingInt(Way::slope))
                .limit(KEPT)
                .toList();
        Front front = new Front();
        for (Way way : kept) {
            if (way.cost() > kept.get(0).cost() + HOPELESS) break;
            int i = front.size++;
            front.begin[i] = way.begin();
            front.cut[i] = way.cut();
            front.slope[i] = way.slope();
            front.parent[i] = way.parent();
            front.parts[i] = (byte) way.parts();
            front.cost[i] = way.cost();
        }
        return front;
    }
}
