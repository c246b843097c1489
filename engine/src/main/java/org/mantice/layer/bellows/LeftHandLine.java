package org.mantice.layer.bellows;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.mantice.plan.LeftHandPlan;
import org.mantice.rule.TurnPlace;

/** What the left hand does at a moment in time. */
final class LeftHandLine {
    /** Onsets of both hands that lie closer are one moment; an estimate, far below what one hears apart. */
    private static final long SAME_MOMENT_MICROS = 2_000;

    private final List<LeftHandPlan.Event> events;
    private final long[] onsets;
    /** The latest release of an event and all before it. */
    private final long[] heldUntil;

    LeftHandLine(LeftHandPlan plan) {
        events = plan.events().stream()
                .sorted(Comparator.comparingLong(LeftHandPlan.Event::onsetMicros))
                .toList();
        onsets = events.stream().mapToLong(LeftHandPlan.Event::onsetMicros).toArray();
        heldUntil = new long[onsets.length];
        for (int i = 0; i < onsets.length; i++)
            heldUntil[i] = Math.max(i == 0 ? 0 : heldUntil[i - 1], events.get(i).releaseMicros());
    }

    boolean isHeldAcross(long micros) {
        int before = firstFrom(micros - SAME_MOMENT_MICROS) - 1;
        return before >= 0 && heldUntil[before] > micros + SAME_MOMENT_MICROS;
    }

    /** The jump into an event that begins here or while the turn lasts; the larger one if there are several. */
    TurnPlace.Jump jumpAt(long micros, int turnMillis) {
        TurnPlace.Jump jump = TurnPlace.Jump.NONE;
        for (int i = firstFrom(micros - SAME_MOMENT_MICROS);
                i < onsets.length && onsets[i] <= micros + SAME_MOMENT_MICROS + 1_000L * turnMillis;
                i++) {
            TurnPlace.Jump here =
                    switch (events.get(i).jump()) {
                        case NONE -> TurnPlace.Jump.NONE;
                        case SMALL -> TurnPlace.Jump.SMALL;
                        case LARGE -> TurnPlace.Jump.LARGE;
                    };
            if (here.compareTo(jump) > 0) jump = here;
        }
        return jump;
    }

    private int firstFrom(long micros) {
        int found = Arrays.binarySearch(onsets, micros);
        int first = found < 0 ? -found - 1 : found;
        while (first > 0 && onsets[first - 1] >= micros) first--;
        return first;
    }
}
