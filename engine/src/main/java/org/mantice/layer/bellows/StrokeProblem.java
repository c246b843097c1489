package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.mantice.rule.OpeningCell.Moment;
import org.mantice.search.ConcessionScale;
import org.mantice.search.StrokeLattice;

/** The strokes that are within a limit, as the search wants to see them. */
final class StrokeProblem implements StrokeLattice {
    /** Each cell that rules see is cut into so many for the search's bound. */
    private static final int FINER = 1;

    /** Beyond so many pairs of strokes sharpening takes longer than it spares; an estimate. */
    private static final long MOST_PAIRS_TO_SHARPEN = 20_000_000;

    private final Ground ground;
    private final StrokePrices kinds;
    private final WeightedPrices prices;
    private final StrokePruning pruning;
    private final long limit;
    private final int[] starts;
    /** Places kept, ascending. */
    private final int[] places;

    private final int[] furthest;
    private final int[] cellFirst;

    /** Strokes kept, by the numbering of {@link StrokePrices}; empty if all within the limit are. */
    private final Optional<BitSet> sharpened;

    StrokeProblem(
            Ground ground,
            StrokePrices kinds,
            WeightedPrices prices,
            StrokePruning pruning,
            int[] starts,
            long limit,
            int reach) {
        this.ground = ground;
        this.kinds = kinds;
        this.prices = prices;
        this.pruning = pruning;
        this.limit = limit;
        this.starts = starts;
        int[] within = IntStream.rangeClosed(0, ground.last())
                .filter(place -> pruning.isWithin(place, limit))
                .toArray();
        int[] ends = ends(within, reach, Optional.empty());
        this.sharpened = limit != Long.MAX_VALUE && !pruning.isGiving() && pairs(ends) <= MOST_PAIRS_TO_SHARPEN
                ? Optional.of(new PairPruning(pruning, prices, within, ends, limit).kept(kinds, limit))
                : Optional.empty();
        this.places = sharpened.isEmpty() ? within : touched(within, ends, sharpened.get());
        this.furthest = ends(places, reach, sharpened);
        this.cellFirst = cellBorders();
    }

    /** For every place the last one where a stroke may end. */
    private int[] ends(int[] among, int reach, Optional<BitSet> kept) {
        int[] ends = new int[among.length];
        for (int from = 0; from + 1 < among.length; from++) {
            int to = from + 1;
            int most = (int) Math.min(among.length - 1L, (long) from + reach);
            for (int further = to + 1; further <= most && among[further] <= ground.furthest(among[from]); further++)
                if (isKept(among[from], among[further], kept)) to = further;
            ends[from] = to;
        }
        return ends;
    }

    private boolean isKept(int from, int to, Optional<BitSet> kept) {
        if (!pruning.isWithin(from, to, limit)) return false;
        return kept.isEmpty() || kept.get().get(kinds.number(from, to));
    }

    /** The places at which a kept stroke begins or ends, and the first and last of all. */
    private int[] touched(int[] among, int[] ends, BitSet kept) {
        BitSet touched = new BitSet();
        touched.set(0);
        touched.set(ground.last());
        for (int from = 0; from + 1 < among.length; from++)
            for (int to = from + 1; to <= ends[from]; to++)
                if (isKept(among[from], among[to], Optional.of(kept))) {
                    touched.set(among[from]);
                    touched.set(among[to]);
                }
        return touched.stream().toArray();
    }

    private static long pairs(int[] ends) {
        long pairs = 0;
        for (int from = 0; from + 1 < ends.length; from++)
            for (int to = from + 1; to <= ends[from]; to++) pairs += Math.max(0, ends[to] - to);
        return pairs;
    }

    /** Pairs of strokes that the search will keep. */
    long pairs() {
        return pairs(furthest);
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
        if (!isKept(places[from], places[to], sharpened)) return IMPOSSIBLE;
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
