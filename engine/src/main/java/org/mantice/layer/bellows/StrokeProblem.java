package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.mantice.rule.OpeningCell.Moment;
import org.mantice.search.ConcessionScale;
import org.mantice.search.StrokeLattice;

/** The strokes that are within a limit, as the search wants to see them. */
final class StrokeProblem implements StrokeLattice {
    /** Each cell that rules see is cut into so many for the search's bound. */
    private static final int FINER = 1;

    private final Ground ground;
    private final WeightedPrices prices;
    private final StrokePruning pruning;
    private final long limit;
    private final int[] starts;
    /** Places kept, ascending. */
    private final int[] places;

    private final int[] furthest;
    private final int[] cellFirst;

    StrokeProblem(Ground ground, WeightedPrices prices, StrokePruning pruning, int[] starts, long limit, int reach) {
        this.ground = ground;
        this.prices = prices;
        this.pruning = pruning;
        this.limit = limit;
        this.starts = starts;
        int[] kept = new int[ground.last() + 1];
        int count = 0;
        for (int place = 0; place <= ground.last(); place++) if (pruning.isWithin(place, limit)) kept[count++] = place;
        this.places = Arrays.copyOf(kept, count);
        this.furthest = new int[count];
        for (int from = 0; from + 1 < count; from++) {
            int to = from + 1;
            int most = (int) Math.min(count - 1L, (long) from + reach);
            for (int further = to + 1; further <= most && places[further] <= ground.furthest(places[from]); further++)
                if (pruning.isWithin(places[from], places[further], limit)) to = further;
            furthest[from] = to;
        }
        this.cellFirst = cellBorders();
    }

    /** Pairs of strokes that the search will keep. */
    long pairs() {
        long pairs = 0;
        for (int from = 0; from + 1 < places.length; from++)
            for (int to = from + 1; to <= furthest[from]; to++) pairs += furthest[to] - Math.min(to, furthest[to]);
        return pairs;
    }

    boolean hasAllPlaces() {
        return places.length == ground.last() + 1;
    }

    /** The place in the performance. */
    int original(int place) {
        return places[place];
    }

    private int[] cellBorders() {
        List<Integer> borders = new ArrayList<>();
        for (int cell = 0; cell < ground.cells(); cell++) {
            int low = ground.firstOf(cell);
            int next = cell + 1 < ground.cells() ? ground.firstOf(cell + 1) : ground.full() + 1;
            for (int part = 0; part < FINER; part++) {
                int border = low + (int) ((long) (next - low) * part / FINER);
                if (borders.isEmpty() || border > borders.get(borders.size() - 1)) borders.add(border);
            }
        }
        return borders.stream().mapToInt(Integer::intValue).toArray();
    }

    @Override
    public int places() {
        return places.length;
    }

    @Override
    public int capacity() {
        return ground.full();
    }

    @Override
    public int amount(int from, int to) {
        return ground.air.between(places[from], places[to]);
    }

    @Override
    public int furthest(int from) {
        return furthest[from];
    }

    @Override
    public int cells() {
        return cellFirst.length;
    }

    @Override
    public int firstLevel(int cell) {
        return cellFirst[cell];
    }

    @Override
    public List<Start> starts() {
        List<Start> all = new ArrayList<>();
        for (int level : starts)
            all.add(new Start(
                    level,
                    Direction.RISING,
                    prices.opening(Moment.START, ground.cell(level)),
                    prices.openingGives(Moment.START, ground.cell(level))));
        return all;
    }

    @Override
    public long strokeCost(int from, int to, Direction direction) {
        if (!pruning.isWithin(places[from], places[to], limit)) return IMPOSSIBLE;
        return prices.strokeCost[prices.kind(places[from], places[to])];
    }

    @Override
    public long strokeConcessions(int from, int to, Direction direction) {
        if (!pruning.isPossible(places[from], places[to])) return ConcessionScale.NONE;
        return prices.strokeGives[prices.kind(places[from], places[to])];
    }

    @Override
    public long turnCost(int place, Direction next) {
        return prices.turnCost[places[place]];
    }

    @Override
    public long turnConcessions(int place, Direction next) {
        return prices.turnGives[places[place]];
    }

    @Override
    public long pairCost(int first, int middle, int last) {
        boolean both =
                pruning.isPossible(places[first], places[middle]) && pruning.isPossible(places[middle], places[last]);
        return both ? prices.pair(places[first], places[middle], places[last]) : 0;
    }

    @Override
    public long endCost(int place, Direction direction, int cell) {
        return prices.opening(moment(place, direction), ground.cell(cellFirst[cell]));
    }

    @Override
    public long endConcessions(int place, Direction direction, int cell) {
        return prices.openingGives(moment(place, direction), ground.cell(cellFirst[cell]));
    }

    private Moment moment(int place, Direction direction) {
        if (place == places.length - 1) return Moment.END;
        return direction == Direction.RISING ? Moment.TURN_IN : Moment.TURN_OUT;
    }

    @Override
    public ConcessionScale scale() {
        return GiveWayScale.SCALE;
    }
}
