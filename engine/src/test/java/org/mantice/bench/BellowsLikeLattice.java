package org.mantice.bench;

import java.util.List;
import java.util.Random;
import org.mantice.search.ConcessionScale;
import org.mantice.search.StrokeLattice;

/**
 * A seeded lattice like that of a bellows plan: eight places to a measure, four measures to a phrase, whole millilitres
 * of air per place, turns cheapest at phrase ends, even strokes preferred, costs of the opening by cell.
 */
final class BellowsLikeLattice implements StrokeLattice {
    static final int CELLS = 100;

    private final int places;
    private final int capacity;
    private final int most;
    private final int[] amountBefore;
    private final long[] turn;
    private final boolean conceding;

    /**
     * @param strokeMeasures about how many measures of ordinary air fill the bellows
     * @param conceding whether the last fifth of the opening is a concession
     */
    BellowsLikeLattice(int places, double strokeMeasures, boolean conceding) {
        Random random = new Random(7);
        this.places = places;
        this.conceding = conceding;
        amountBefore = new int[places];
        turn = new long[places];
        for (int place = 1; place < places; place++) {
            amountBefore[place] = amountBefore[place - 1] + 100 + random.nextInt(150);
            turn[place] = 1_000L * (place % 32 == 0 ? 200 : place % 8 == 0 ? 700 : place % 2 == 0 ? 1_500 : 4_000)
                    + 1_000L * random.nextInt(300);
        }
        capacity = (int) (strokeMeasures * 8 * 175);
        most = (int) Math.ceil(strokeMeasures * 8 * 1.3);
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
        return Math.min(places - 1, from + most);
    }

    @Override
    public int cells() {
        return CELLS;
    }

    @Override
    public int firstLevel(int cell) {
        return (int) ((long) cell * (capacity + 1) / CELLS);
    }

    @Override
    public List<Start> starts() {
        return List.of(new Start(capacity / 10, Direction.RISING));
    }

    @Override
    public long strokeCost(int from, int to, Direction direction) {
        return 0;
    }

    @Override
    public long turnCost(int place, Direction next) {
        return turn[place];
    }

    @Override
    public long pairCost(int first, int middle, int last) {
        return 1_000L * 60 * Math.abs(2 * middle - first - last);
    }

    @Override
    public long endCost(int place, Direction direction, int cell) {
        if (cell < 4) return 1_000L * 150 * (4 - cell);
        return cell < CELLS * 7 / 10 ? 0 : 1_000L * 20 * (cell - CELLS * 7 / 10);
    }

    @Override
    public long endConcessions(int place, Direction direction, int cell) {
        return conceding && cell >= CELLS * 8 / 10 ? scale().one(4) : ConcessionScale.NONE;
    }

    @Override
    public ConcessionScale scale() {
        return new ConcessionScale(5);
    }
}
