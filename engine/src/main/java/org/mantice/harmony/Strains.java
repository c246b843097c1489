package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Barlines;
import org.mantice.tune.Measure;

/** Where measures stand in the strains of a tune: from one repeat sign, double bar or change of key to the next. */
final class Strains {
    private static final int AT_END = 16;

    private final List<Measure> measures;
    private final List<Integer> numbers = new ArrayList<>();

    Strains(List<Measure> measures) {
        this.measures = measures;
        int number = 0;
        int firstEnding = 0;
        for (int i = 0; i < measures.size(); i++) {
            List<Integer> ending = measures.get(i).barlines().endingStart();
            if (i > 0 && ends(i - 1)) number = !ending.isEmpty() && !ending.contains(1) ? firstEnding : 0;
            if (ending.contains(1)) firstEnding = number;
            numbers.add(number);
            if (!measures.get(i).pickup()) number++;
        }
    }

    private boolean ends(int index) {
        Barlines lines = measures.get(index).barlines();
        if (index == measures.size() - 1
                || lines.doubleBar()
                || lines.repeatEnd().isPresent()) return true;
        if (lines.endingStop() || lines.jump().isPresent() || lines.fine()) return true;
        Measure next = measures.get(index + 1);
        return next.barlines().repeatStart()
                || !next.key().equals(measures.get(index).key());
    }

    /** A strain or an ending begins with the measure. */
    boolean begins(int index) {
        return index == 0
                || ends(index - 1)
                || !measures.get(index).barlines().endingStart().isEmpty();
    }

    private boolean isBeforeLast(int index) {
        return index + 1 < measures.size()
                && ends(index + 1)
                && !measures.get(index + 1).pickup();
    }

    /**
     * @param late in the second half of the measure
     * @param last the last beat of the measure
     */
    Slot.Cadence cadence(int index, int beat, boolean late, boolean last) {
        boolean fourth = numbers.get(index) % 4 == 3;
        if (ends(index) && last)
            return index == measures.size() - 1 ? Slot.Cadence.LAST_OF_TUNE : Slot.Cadence.LAST_OF_STRAIN;
        if (ends(index)) return Slot.Cadence.IN_LAST_MEASURE;
        if (isBeforeLast(index)) return late ? Slot.Cadence.BEFORE_LAST_MEASURE : Slot.Cadence.IN_MEASURE_BEFORE_LAST;
        if (fourth && last) return Slot.Cadence.LAST_OF_FOUR_MEASURES;
        boolean pickup = measures.get(index).pickup();
        if (numbers.get(index) == 0 && beat == 0 && !pickup) return Slot.Cadence.FIRST_OF_STRAIN;
        if (pickup) return Slot.Cadence.IN_PICKUP;
        return fourth ? Slot.Cadence.IN_FOURTH_MEASURE : Slot.Cadence.NONE;
    }

    /** As in {@link Slot#strain()}. */
    int place(int index, boolean late) {
        if (ends(index) || isBeforeLast(index) || measures.get(index).pickup()) return AT_END;
        return numbers.get(index) % 8 * 2 + (late ? 1 : 0);
    }
}
