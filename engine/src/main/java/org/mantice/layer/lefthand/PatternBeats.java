package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * The beats that the meter asks for over chord symbols.
 *
 * <p>A chord that begins in mid-measure begins with its bass; one that lasts a single step, with bass and chord together.
 * The hand is silent in the pickup that opens the tune, in later ones shorter than half a measure, before the first
 * symbol, and under "no chord"; the last measure stops after bass and chord.
 */
final class PatternBeats {
    /** Notes sound for a share of their length in per mille, short style; estimates. */
    static final int BASS_SHARE = 600;

    static final int CHORD_SHARE = 500;
    static final int HELD_SHARE = 950;

    private final Performance performance;
    private final PlayedTime time;
    private final List<Beat> beats = new ArrayList<>();
    private Optional<ChordSymbol> sounding = Optional.empty();
    private int bassesSinceChord;
    private int spans;

    private PatternBeats(Performance performance) {
        this.performance = performance;
        this.time = new PlayedTime(performance);
    }

    static List<Beat> of(Performance performance) {
        PatternBeats made = new PatternBeats(performance);
        int next = 0;
        for (PlayedMeasure measure : performance.measures()) {
            List<Span> inMeasure = new ArrayList<>();
            for (;
                    next < performance.harmony().size()
                            && performance.harmony().get(next).measure() == measure.index();
                    next++) Span.append(inMeasure, performance.harmony().get(next));
            made.measure(measure, inMeasure);
        }
        return List.copyOf(made.beats);
    }

    /** A stretch of one chord within a measure; a symbol that is only repeated does not cut it. */
    private record Span(MusicalTime start, MusicalTime end, Optional<ChordSymbol> chord) {
        static void append(List<Span> spans, HarmonySpan span) {
            Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
            if (last != null && last.chord.equals(span.chord()))
                spans.set(spans.size() - 1, new Span(last.start, span.end(), last.chord));
            else spans.add(new Span(span.start(), span.end(), span.chord()));
        }
    }

    private void measure(PlayedMeasure measure, List<Span> inMeasure) {
        Measure written = performance.tune().measure(measure.written());
        MusicalTime full = written.meter().length();
        MusicalTime lacking = written.pickup() ? full.minus(measure.length()).max(MusicalTime.ZERO) : MusicalTime.ZERO;
        boolean silentPickup = written.pickup()
                && (measure.index() == 0 || measure.length().times(2).isBefore(full));
        if (silentPickup) return;
        List<Pattern.Slot> grid = grid(measure, written, lacking);
        if (grid.stream().filter(slot -> slot.letter() == 'B').count() > 1) bassesSinceChord = 0;
        for (Span span : inMeasure) {
            if (span.chord.isEmpty() || span.chord.get().isSilent()) {
                sounding = Optional.empty();
                continue;
            }
            if (!span.chord.equals(sounding)) bassesSinceChord = 0;
            sounding = span.chord;
            span(measure, span, slotsOf(measure, span, grid));
        }
    }

    private List<Pattern.Slot> grid(PlayedMeasure measure, Measure written, MusicalTime lacking) {
        Pattern pattern = Pattern.of(written.meter());
        long measureMicros = time.micros(measure.start().plus(measure.length())) - measure.startMicros();
        MusicalTime steps = measure.length().times(pattern.step().denominator());
        boolean fast = MusicalTime.of(measureMicros * pattern.step().numerator(), 1)
                .isBefore(steps.times(Pattern.SHORTEST_STEP_MILLIS * 1_000L));
        List<Pattern.Slot> grid = new ArrayList<>();
        for (Pattern.Slot slot : pattern.slots(fast)) {
            MusicalTime offset = slot.offset().minus(lacking);
            if (offset.compareTo(MusicalTime.ZERO) >= 0 && offset.isBefore(measure.length()))
                grid.add(new Pattern.Slot(offset, slot.letter()));
        }
        if (measure.index() == performance.measures().size() - 1 && grid.size() > 2) return grid.subList(0, 2);
        return grid;
    }

    /** The slots of the measure that fall into a span, relettered where the chord begins off the pattern. */
    private List<Pattern.Slot> slotsOf(PlayedMeasure measure, Span span, List<Pattern.Slot> grid) {
        MusicalTime start = span.start.minus(measure.start());
        MusicalTime end = span.end.minus(measure.start());
        List<Pattern.Slot> own = new ArrayList<>();
        for (Pattern.Slot slot : grid)
            if (start.compareTo(slot.offset()) <= 0 && slot.offset().isBefore(end)) own.add(slot);
        boolean cutShort = grid.isEmpty() || grid.get(grid.size() - 1).offset().isBefore(start);
        boolean startsOnSlot = !own.isEmpty() && own.get(0).offset().equals(start);
        if (!startsOnSlot && !(cutShort && isLast(measure))) own.add(0, new Pattern.Slot(start, 'B'));
        if (own.size() == 1) return List.of(new Pattern.Slot(own.get(0).offset(), 'H'));
        if (own.isEmpty() || own.get(0).letter() != 'C' && startsOnSlot) return own;
        List<Pattern.Slot> relettered = new ArrayList<>();
        for (Pattern.Slot slot : own)
            relettered.add(
                    new Pattern.Slot(slot.offset(), relettered.isEmpty() ? 'B' : slot.letter() == 'H' ? 'H' : 'C'));
        return relettered;
    }

    private boolean isHeld(PlayedMeasure measure) {
        return Pattern.of(performance.meterOf(measure)).beats().equals("H");
    }

    private boolean isLast(PlayedMeasure measure) {
        return measure.index() == performance.measures().size() - 1;
    }

    private void span(PlayedMeasure measure, Span span, List<Pattern.Slot> slots) {
        for (int i = 0; i < slots.size(); i++) {
            MusicalTime offset = slots.get(i).offset();
            MusicalTime onset = measure.start().plus(offset);
            MusicalTime end =
                    i + 1 < slots.size() ? measure.start().plus(slots.get(i + 1).offset()) : span.end;
            if (isLast(measure) && i + 1 == slots.size() && i > 0)
                end = end.min(onset.plus(offset.minus(slots.get(i - 1).offset())));
            add(measure, span, slots.get(i).letter(), offset, onset, end);
        }
        spans++;
    }

    private void add(
            PlayedMeasure measure, Span span, char letter, MusicalTime offset, MusicalTime onset, MusicalTime end) {
        ChordSymbol chord = span.chord.orElseThrow();
        boolean bass = letter != 'C';
        boolean changeDue = letter == 'B' && bassesSinceChord % 2 == 1;
        if (bass) bassesSinceChord++;
        Wanted.Part part = letter == 'H' ? Wanted.Part.BOTH : bass ? Wanted.Part.BASS : Wanted.Part.CHORD;
        long share = isHeld(measure) ? HELD_SHARE : bass ? BASS_SHARE : CHORD_SHARE;
        long from = time.micros(onset);
        long to = time.micros(end);
        beats.add(new Beat(
                measure.pass(),
                measure.index(),
                new WrittenPlace(measure.written(), offset),
                onset,
                from,
                from + (to - from) * share / 1_000,
                new Wanted.OfChord(chord, part, changeDue),
                spans));
    }
}
