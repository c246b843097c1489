package org.mantice.layer.lefthand;

import java.util.Map;
import java.util.TreeMap;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.TrebleMoment;
import org.mantice.tune.MusicalTime;

/** Musical time in microseconds: exact at the moments that the performance names, straight lines between them. */
final class PlayedTime {
    private final TreeMap<MusicalTime, Long> known = new TreeMap<>();

    PlayedTime(Performance performance) {
        MusicalTime end = MusicalTime.ZERO;
        for (PlayedMeasure measure : performance.measures()) {
            known.put(measure.start(), measure.startMicros());
            end = measure.start().plus(measure.length());
        }
        for (HarmonySpan span : performance.harmony()) known.putIfAbsent(span.start(), span.startMicros());
        for (TrebleMoment moment : performance.treble())
            if (moment.graceIndex() == 0) known.putIfAbsent(moment.onset(), moment.onsetMicros());
        known.put(end, performance.endMicros());
    }

    long micros(MusicalTime time) {
        Map.Entry<MusicalTime, Long> before = known.floorEntry(time);
        if (before == null) return known.firstEntry().getValue();
        Map.Entry<MusicalTime, Long> after = known.ceilingEntry(time);
        if (after == null || after.getKey().equals(before.getKey())) return before.getValue();
        MusicalTime share = time.minus(before.getKey()).times(after.getValue() - before.getValue());
        MusicalTime length = after.getKey().minus(before.getKey());
        return before.getValue() + share.times(length.denominator()).countOf(MusicalTime.of(length.numerator(), 1));
    }
}
