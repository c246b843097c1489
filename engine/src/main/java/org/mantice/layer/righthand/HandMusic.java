package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.VariationPlan;
import org.mantice.tune.WrittenPlace;

/** The treble of a performance in the octave of each pass, moment by moment, as far as fingers are concerned. */
final class HandMusic {
    /** Times count in steps of ten milliseconds, so that rounding of microseconds does not part equal contexts. */
    private static final int STEP_MICROS = 10_000;

    /** Keeps common note lengths away from the border between two steps. */
    private static final int OFF_BORDER_MICROS = 3_137;

    private final Performance performance;
    private final List<Moment> moments = new ArrayList<>();
    private final List<Junction> junctions = new ArrayList<>();

    HandMusic(Performance performance, VariationPlan variation) {
        this.performance = performance;
        List<TrebleMoment> treble = performance.treble();
        for (int index = 0; index < treble.size(); index++) {
            moments.add(moment(index, variation));
            if (index > 0) junctions.add(junction(index));
        }
    }

    private Moment moment(int index, VariationPlan variation) {
        TrebleMoment moment = performance.treble().get(index);
        int shift = 12 * variation.pass(performance.passOf(moment)).octave();
        List<Integer> keys = new ArrayList<>();
        List<Boolean> held = new ArrayList<>();
        List<Integer> printed = new ArrayList<>();
        for (PlayedNote note : moment.notes()) {
            int key = note.midi() + shift;
            // Two voices on one key: one finger plays it, and it is struck if either strikes it.
            if (!keys.isEmpty() && keys.get(keys.size() - 1) == key) {
                int last = keys.size() - 1;
                held.set(last, held.get(last) && note.held());
                continue;
            }
            keys.add(key);
            held.add(note.held());
            printed.add(
                    note.held() || note.writtenFingers().isEmpty()
                            ? 0
                            : note.writtenFingers().get(0));
        }
        long end = index + 1 < performance.treble().size()
                ? performance.treble().get(index + 1).onsetMicros()
                : moment.releaseMicros();
        return new Moment(keys, held, printed, millis(end - moment.onsetMicros()));
    }

    private Junction junction(int index) {
        TrebleMoment before = performance.treble().get(index - 1);
        TrebleMoment after = performance.treble().get(index);
        boolean holds = after.notes().stream().anyMatch(PlayedNote::held);
        long gap = holds ? 0 : Math.max(0, after.onsetMicros() - before.releaseMicros());
        return new Junction(
                moments.get(index - 1),
                moments.get(index),
                millis(after.onsetMicros() - before.onsetMicros()),
                millis(gap),
                before.slurredToNext());
    }

    private static long millis(long micros) {
        return Math.floorDiv(micros + OFF_BORDER_MICROS, STEP_MICROS) * 10L;
    }

    int size() {
        return moments.size();
    }

    Moment moment(int index) {
        return moments.get(index);
    }

    /** The way from moment {@code index} to the next. */
    Junction junctionAfter(int index) {
        return junctions.get(index);
    }

    TrebleMoment played(int index) {
        return performance.treble().get(index);
    }

    int pass(int index) {
        return performance.passOf(played(index));
    }

    String words(WrittenPlace place) {
        return Places.words(performance.tune(), place);
    }

    String words(int index) {
        TrebleMoment moment = played(index);
        return Places.words(performance, performance.measures().get(moment.measure()), moment.place());
    }
}
