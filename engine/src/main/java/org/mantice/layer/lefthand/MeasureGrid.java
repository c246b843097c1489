package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.Figure;
import org.mantice.pattern.Stroke;
import org.mantice.performance.PlayedMeasure;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;

/**
 * The strokes of one played measure before chords cut it.
 *
 * <p>A chord that holds the whole measure has the pattern as it is. One that begins or ends in mid-measure keeps the
 * strokes that fall to it, where the first is of the bass and falls on its beginning; else it begins with its bass, and
 * chords follow. With a single stroke, bass and chord are struck together.
 */
final class MeasureGrid {
    /** Below this a hand does not strike on every step; estimate. */
    static final int SHORTEST_STEP_MILLIS = 170;
    /** Below this single fingers do not run along the bass rows; estimate. */
    static final int SHORTEST_RUN_STEP_MILLIS = 200;

    private final PlayedMeasure measure;
    private final BassPattern pattern;
    private final List<Slot> slots;
    private final boolean full;
    private final boolean last;

    private MeasureGrid(PlayedMeasure measure, Measure written, BassPattern pattern, List<Slot> slots, boolean last) {
        this.measure = measure;
        this.pattern = pattern;
        this.slots = List.copyOf(slots);
        this.full = !measure.length().isBefore(written.meter().length());
        this.last = last;
    }

    /**
     * @param microsPerWhole of a whole note on the average of the measure
     * @param last whether nothing follows it
     */
    static MeasureGrid of(
            PlayedMeasure measure, Measure written, BassPattern pattern, MusicalTime microsPerWhole, boolean last) {
        BassPattern.Figures figures = pattern.figures();
        List<Slot> plain = slots(pattern, figures.plain(), measure, written);
        boolean fast = figures.fewer().isPresent()
                && isFaster(pattern, figures.plain(), written, microsPerWhole, SHORTEST_STEP_MILLIS);
        List<Slot> slots = fast ? slots(pattern, figures.fewer().orElseThrow(), measure, written) : plain;
        if (last && !fast && figures.last().isPresent())
            slots = slots(pattern, figures.last().get(), measure, written);
        else if (last && slots.size() > 2) slots = slots.subList(0, 2);
        return new MeasureGrid(measure, written, pattern, slots, last);
    }

    /** The strokes with which the measure leads to another bass; empty where there are none or time does not suffice. */
    static Optional<MeasureGrid> beforeChange(
            PlayedMeasure measure, Measure written, BassPattern pattern, MusicalTime microsPerWhole) {
        if (pattern.figures().beforeChange().isEmpty() || written.pickup()) return Optional.empty();
        Figure figure = pattern.figures().beforeChange().get();
        List<Slot> slots = slots(pattern, figure, measure, written);
        int shortest = figure.hasRun() ? SHORTEST_RUN_STEP_MILLIS : SHORTEST_STEP_MILLIS;
        if (measure.length().isBefore(written.meter().length())
                || isFaster(pattern, figure, written, microsPerWhole, shortest)) return Optional.empty();
        return Optional.of(new MeasureGrid(measure, written, pattern, slots, false));
    }

    /** A measure shorter than its meter has the end of the pattern where it is a pickup, else the beginning. */
    private static List<Slot> slots(BassPattern pattern, Figure figure, PlayedMeasure measure, Measure written) {
        MusicalTime lacking = written.pickup()
                ? written.meter().length().minus(measure.length()).max(MusicalTime.ZERO)
                : MusicalTime.ZERO;
        List<Slot> slots = new ArrayList<>();
        for (BassPattern.Placed placed : pattern.placed(figure, written.meter())) {
            MusicalTime offset = placed.offset().minus(lacking);
            if (!offset.isBefore(MusicalTime.ZERO) && offset.isBefore(measure.length()))
                slots.add(Slot.of(placed).at(offset));
        }
        return slots;
    }

    /** Whether two strokes of a full measure, or the last and its end, are closer than so many milliseconds. */
    private static boolean isFaster(
            BassPattern pattern, Figure figure, Measure written, MusicalTime microsPerWhole, int shortestMillis) {
        List<BassPattern.Placed> strokes = pattern.placed(figure, written.meter());
        MusicalTime shortest = written.meter().length();
        for (int i = 0; i < strokes.size(); i++) {
            MusicalTime end = i + 1 < strokes.size()
                    ? strokes.get(i + 1).offset()
                    : written.meter().length();
            shortest = shortest.min(end.minus(strokes.get(i).offset()));
        }
        return shortest.times(microsPerWhole).isBefore(MusicalTime.of(shortestMillis * 1_000L, 1));
    }

    /** How many steps a run at the end has; 0 for none. */
    int runSteps() {
        return (int)
                slots.stream().filter(slot -> slot.bass() == Stroke.Bass.RUN).count();
    }

    /** How many basses take turns within the measure. */
    long turns() {
        return slots.stream().filter(Slot::turns).count();
    }

    /**
     * The strokes within a span of one chord, in order.
     *
     * @param start offset of the span in the measure
     * @param end not included
     */
    List<Slot> within(MusicalTime start, MusicalTime end) {
        if (full && start.isZero() && end.equals(measure.length())) return slots;
        List<Slot> own = new ArrayList<>();
        for (Slot slot : slots)
            if (start.compareTo(slot.offset()) <= 0 && slot.offset().isBefore(end)) own.add(slot);
        boolean cutShort =
                slots.isEmpty() || slots.get(slots.size() - 1).offset().isBefore(start);
        boolean startsOnSlot = !own.isEmpty() && own.get(0).offset().equals(start);
        if (!startsOnSlot && !(cutShort && last)) own.add(0, firstBass(start, Wanted.Part.BASS));
        if (own.size() == 1) return List.of(together(own.get(0)));
        if (own.isEmpty() || !own.get(0).isChord() && startsOnSlot) return own;
        List<Slot> anew = new ArrayList<>(List.of(firstBass(own.get(0).offset(), Wanted.Part.BASS)));
        for (Slot slot : own.subList(1, own.size()))
            anew.add(slot.part() == Wanted.Part.BASS ? chord(slot.offset()) : slot);
        return anew;
    }

    private Slot together(Slot slot) {
        return slot.isChord()
                ? firstBass(slot.offset(), Wanted.Part.BOTH)
                : new Slot(slot.offset(), Wanted.Part.BOTH, Stroke.Bass.ROOT, slot.sounds());
    }

    private Slot firstBass(MusicalTime offset, Wanted.Part part) {
        return new Slot(offset, part, Stroke.Bass.ROOT, sounds(true));
    }

    private Slot chord(MusicalTime offset) {
        return new Slot(offset, Wanted.Part.CHORD, Stroke.Bass.ROOT, sounds(false));
    }

    /** How long the pattern's first bass or chord sounds; the other's where it has none. */
    private int sounds(boolean bass) {
        List<Stroke> strokes = pattern.figures().plain().strokes();
        return strokes.stream()
                .filter(stroke -> (stroke.part() != Stroke.Part.CHORD) == bass)
                .findFirst()
                .orElse(strokes.get(0))
                .soundsPerMille();
    }

    /** Where the sound of a stroke ends at the latest: in the last measure it lasts no longer than the one before. */
    MusicalTime end(List<Slot> inSpan, int index, MusicalTime spanEnd) {
        MusicalTime offset = inSpan.get(index).offset();
        if (index + 1 < inSpan.size()) return inSpan.get(index + 1).offset();
        if (!last || index == 0) return spanEnd;
        return spanEnd.min(offset.plus(offset.minus(inSpan.get(index - 1).offset())));
    }
}
