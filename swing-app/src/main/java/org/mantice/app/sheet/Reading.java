package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;

/** Which measures the sheet shows, and of which time through. */
public sealed interface Reading {
    /** Every written measure once, with the decisions of the first time that it is played. */
    record AsWritten() implements Reading {}

    /**
     * Every written measure once, with the decisions of one sweep: a run of play that only goes forward on the page, up
     * to the next jump back. A measure that the sweep does not touch shows none.
     *
     * @param number from 0
     */
    record OneSweep(int number) implements Reading {}

    /** The measures in the order in which they are played, from start to end. */
    record AsPlayed() implements Reading {}

    /**
     * A run of play that only goes forward on the page.
     *
     * @param firstPlayed index of its first played measure
     * @param lastPlayed index of its last played measure
     */
    record Sweep(int firstPlayed, int lastPlayed) {}

    static List<Sweep> sweeps(Performance performance) {
        List<Sweep> sweeps = new ArrayList<>();
        int start = 0;
        List<PlayedMeasure> played = performance.measures();
        for (int i = 1; i <= played.size(); i++)
            if (i == played.size()
                    || played.get(i).written() <= played.get(i - 1).written()) {
                sweeps.add(new Sweep(start, i - 1));
                start = i;
            }
        return List.copyOf(sweeps);
    }

    /** The measures to show, in order. */
    default List<Cell> cells(Performance performance) {
        List<Cell> cells = new ArrayList<>();
        if (this instanceof AsPlayed) {
            for (PlayedMeasure measure : performance.measures())
                cells.add(new Cell(measure.written(), OptionalInt.of(measure.index())));
            return List.copyOf(cells);
        }
        int[] playedAt = new int[performance.tune().measures().size()];
        java.util.Arrays.fill(playedAt, -1);
        Set<Integer> seen = new HashSet<>();
        List<Sweep> sweeps = sweeps(performance);
        int from = 0;
        int to = performance.measures().size() - 1;
        if (this instanceof OneSweep one) {
            Sweep sweep = sweeps.get(Math.min(one.number(), sweeps.size() - 1));
            from = sweep.firstPlayed();
            to = sweep.lastPlayed();
        }
        for (int i = from; i <= to; i++) {
            PlayedMeasure measure = performance.measures().get(i);
            if (seen.add(measure.written())) playedAt[measure.written()] = i;
        }
        for (int written = 0; written < playedAt.length; written++)
            cells.add(
                    new Cell(written, playedAt[written] < 0 ? OptionalInt.empty() : OptionalInt.of(playedAt[written])));
        return List.copyOf(cells);
    }
}
