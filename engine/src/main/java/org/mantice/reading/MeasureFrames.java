package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** Finds meter, length and pickup of every measure. */
final class MeasureFrames {
    /** Differences below this come from rounding in the file, not from the music; estimate. */
    private static final MusicalTime ROUNDING = MusicalTime.of(1, 100);

    /** @param pickup does not count as a full measure */
    record Frame(Meter meter, MusicalTime length, boolean pickup) {}

    private final Score score;
    private final ScorePart part;
    private final ReadReport report;

    MeasureFrames(Score score, ScorePart part, ReadReport report) {
        this.score = score;
        this.part = part;
        this.report = report;
    }

    /** @param melodyEnds where the melody ends in each measure */
    List<Frame> read(List<MusicalTime> melodyEnds) {
        Meter assumed =
                part.measures().stream().anyMatch(measure -> measure.meter().isEmpty()) ? assume() : Meter.FREE;
        List<Frame> frames = new ArrayList<>();
        for (ScoreMeasure measure : part.measures()) {
            Meter meter = measure.meter().orElse(assumed);
            MusicalTime length = length(measure, meter, melodyEnds.get(measure.index()));
            boolean pickup = score.verbatim()
                    ? measure.implicit()
                    : isPickup(measure, meter, length) || isSecondHalf(frames, meter, length);
            frames.add(new Frame(meter, length, pickup));
        }
        for (int i = 0; i < frames.size(); i++) reportOddLength(i, frames);
        return frames;
    }

    /** The commonest length of the measures without a meter, as quarters where that is possible. */
    private Meter assume() {
        Map<MusicalTime, Integer> counts = new TreeMap<>();
        part.measures().stream()
                .filter(measure -> measure.meter().isEmpty() && measure.end().isPositive())
                .forEach(measure -> counts.merge(measure.end(), 1, Integer::sum));
        MusicalTime length = counts.entrySet().stream()
                .max(Map.Entry.<MusicalTime, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(MusicalTime.WHOLE);
        Meter meter = meterOf(length);
        report.add(SkippedWhat.NO_METER, meter.toString());
        return meter;
    }

    private static Meter meterOf(MusicalTime length) {
        long unit = Math.max(4, length.denominator());
        boolean possible = unit <= 64 && Long.bitCount(unit) == 1 && length.numerator() * unit <= 128;
        return possible ? Meter.of((int) (length.numerator() * (unit / length.denominator())), (int) unit) : Meter.FREE;
    }

    private MusicalTime length(ScoreMeasure measure, Meter meter, MusicalTime melodyEnd) {
        MusicalTime others = score.parts().stream()
                .filter(other -> other.measures().size() > measure.index())
                .map(other -> other.measures().get(measure.index()).end())
                .max(Comparator.naturalOrder())
                .orElse(MusicalTime.ZERO);
        if (score.verbatim() && measure.end().isPositive()) return measure.end();
        if (meter.isFree()) {
            MusicalTime longest = measure.end().isPositive() ? measure.end() : others;
            return longest.isPositive() ? longest : MusicalTime.WHOLE;
        }
        MusicalTime full = meter.length();
        MusicalTime written = melodyEnd.max(measure.end().max(others).min(full));
        if (written.isZero() || isNear(written, full)) return full;
        return written;
    }

    private static boolean isNear(MusicalTime a, MusicalTime b) {
        MusicalTime difference = a.minus(b);
        return difference.isBefore(ROUNDING) && MusicalTime.ZERO.minus(ROUNDING).isBefore(difference);
    }

    private boolean isPickup(ScoreMeasure measure, Meter meter, MusicalTime length) {
        if (meter.isFree()
                || !length.isBefore(meter.length())
                || part.measures().size() == 1) return false;
        if (measure.implicit() || measure.number().equals("0")) return true;
        return measure.index() == 0 && !part.measures().get(1).implicit(); // else the first half of a split measure
    }

    /** A repeat sign in mid-measure splits it in two, of which the second does not count. */
    private static boolean isSecondHalf(List<Frame> before, Meter meter, MusicalTime length) {
        if (before.isEmpty() || meter.isFree()) return false;
        Frame last = before.get(before.size() - 1);
        return !last.pickup
                && last.length.isBefore(last.meter.length())
                && last.length.plus(length).equals(meter.length());
    }

    private void reportOddLength(int i, List<Frame> frames) {
        Frame frame = frames.get(i);
        if (frame.meter.isFree()) return;
        String number = part.measures().get(i).number();
        boolean completed = i + 1 == frames.size() || frames.get(i + 1).pickup;
        if (frame.meter.length().isBefore(frame.length)) report.addAt(number, SkippedWhat.OVERFULL);
        else if (frame.length.isBefore(frame.meter.length()) && !frame.pickup && !completed)
            report.addAt(number, SkippedWhat.UNDERFULL);
    }
}
