package org.mantice.layer.bellows;

import java.util.List;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.Bellows;
import org.mantice.performance.Performance;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.Stroke;

/**
 * What is fixed before any rule is asked: places, air, how long a stroke may be, and how openings are counted in cells.
 */
final class Ground {
    /**
     * A stroke spans no more than so many measures of the meter in which it begins, unless no place lies nearer. Far
     * longer than anybody plays; keeps the lattice of soft and slow music in bounds.
     */
    static final int LONGEST_MEASURES = 16;

    private static final long MICRO_BEATS = 1_000_000;

    final Performance performance;
    final VariationPlan variation;
    final LeftHandPlan leftHand;
    final Accordion accordion;
    final List<Candidate> places;
    final AirTable air;
    private final int[] furthest;
    /** Looked up once: the search asks for them with every stroke. */
    private final int fullMillilitres;

    private final int comfortableMillilitres;

    Ground(
            Performance performance,
            VariationPlan variation,
            LeftHandPlan leftHand,
            Accordion accordion,
            Player player) {
        this.performance = performance;
        this.variation = variation;
        this.leftHand = leftHand;
        this.accordion = accordion;
        this.fullMillilitres = accordion.bellows().fullMillilitres();
        this.comfortableMillilitres = accordion.bellows().comfortableMillilitres();
        this.places = TurnCandidates.of(
                performance, leftHand, player.mayTurnInHeldNote(), bellows().turnMillis());
        this.air = AirTable.of(
                performance,
                variation,
                leftHand,
                accordion,
                places.stream().mapToLong(Candidate::micros).toArray());
        this.furthest = new int[places.size()];
        int to = 0;
        for (int from = 0; from < last(); from++) {
            long most = (long) LONGEST_MEASURES * places.get(from).measureHalfBeats() * MICRO_BEATS / 2;
            to = Math.max(to, from + 1);
            while (to < last() && length(from, to + 1) <= most) to++;
            while (to > from + 1 && length(from, to) > most) to--;
            furthest[from] = to;
        }
    }

    Bellows bellows() {
        return accordion.bellows();
    }

    int last() {
        return places.size() - 1;
    }

    Candidate place(int index) {
        return places.get(index);
    }

    int full() {
        return fullMillilitres;
    }

    /** The last place where a stroke from here may end. */
    int furthest(int from) {
        return furthest[from];
    }

    private long length(int from, int to) {
        return places.get(to).microBeats() - places.get(from).microBeats();
    }

    /** What rules see of a stroke. */
    Stroke stroke(int from, int to) {
        return new Stroke(halfBeats(from, to), places.get(from).measureHalfBeats(), from == 0, to == last());
    }

    /** Length to the nearest half beat. */
    int halfBeats(int from, int to) {
        return (int) ((2 * Math.max(0, length(from, to)) + MICRO_BEATS / 2) / MICRO_BEATS);
    }

    /** The cell that rules see: fortieths of the comfortable air, rounded up. */
    int cell(int millilitres) {
        return (int)
                (((long) millilitres * OpeningCell.COMFORTABLE + comfortableMillilitres - 1) / comfortableMillilitres);
    }

    /** The lowest level of a cell. */
    int firstOf(int cell) {
        if (cell == 0) return 0;
        return (int) ((cell - 1L) * comfortableMillilitres / OpeningCell.COMFORTABLE) + 1;
    }

    /** How many cells there are up to the full opening. */
    int cells() {
        return cell(full()) + 1;
    }
}
