package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.PatternChooser;
import org.mantice.pattern.PatternUse;
import org.mantice.pattern.Stroke;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * The beats that patterns ask for over chord symbols. The hand is silent before the first symbol, under "no chord", and
 * in pickups as the pattern says; the last measure stops early. Where a bass staff is written and no pattern is chosen,
 * the staff is played instead.
 */
final class PatternBeats {
    /** A stroke that sounds for less of its room, in per mille, is written as one beat; common practice, no source. */
    private static final int SHORT = 333;

    private final Performance performance;
    private final PatternChooser patterns;
    private final IntPredicate hasBass;
    private final PlayedTime time;
    private final List<List<Span>> spansByMeasure = new ArrayList<>();
    private final List<Beat> beats = new ArrayList<>();
    private Optional<ChordSymbol> sounding = Optional.empty();
    private int bassesSinceChord;
    private int spans;

    private PatternBeats(Performance performance, PatternChooser patterns, IntPredicate hasBass) {
        this.performance = performance;
        this.patterns = patterns;
        this.hasBass = hasBass;
        this.time = new PlayedTime(performance);
    }

    /** @param hasBass whether the instrument has a bass of this pitch class, for runs */
    static List<Beat> of(Performance performance, PatternChooser patterns, IntPredicate hasBass) {
        PatternBeats made = new PatternBeats(performance, patterns, hasBass);
        int next = 0;
        for (PlayedMeasure measure : performance.measures()) {
            List<Span> inMeasure = new ArrayList<>();
            for (;
                    next < performance.harmony().size()
                            && performance.harmony().get(next).measure() == measure.index();
                    next++) Span.append(inMeasure, performance.harmony().get(next));
            made.spansByMeasure.add(inMeasure);
        }
        for (PlayedMeasure measure : performance.measures()) made.measure(measure);
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

        boolean isSilent() {
            return chord.isEmpty() || chord.get().isSilent();
        }
    }

    /** @param lines on which the run at the end may go; empty where there is no run */
    private record Strokes(MeasureGrid grid, List<List<Wanted.RunNote>> lines) {}

    private void measure(PlayedMeasure measure) {
        PatternUse use = patterns.at(measure.written(), measure.pass());
        if (use.why() == PatternUse.Why.WRITTEN || isSilentPickup(measure, use.pattern())) return;
        Strokes strokes = leading(measure, use.pattern())
                .orElseGet(() -> new Strokes(
                        MeasureGrid.of(
                                measure, written(measure), use.pattern(), microsPerWhole(measure), isLast(measure)),
                        List.of()));
        if (strokes.grid().turns() > 1) bassesSinceChord = 0;
        for (Span span : spansByMeasure.get(measure.index())) {
            if (span.isSilent()) {
                sounding = Optional.empty();
                continue;
            }
            if (!span.chord.equals(sounding)) bassesSinceChord = 0;
            sounding = span.chord;
            span(measure, span, strokes, use.hand());
            spans++;
        }
    }

    private boolean isSilentPickup(PlayedMeasure measure, BassPattern pattern) {
        Measure written = written(measure);
        if (!written.pickup()) return false;
        return switch (pattern.pickup()) {
            case ALWAYS -> false;
            case NEVER -> true;
            case BY_LENGTH ->
                measure.index() == 0
                        || measure.length().times(2).isBefore(written.meter().length());
        };
    }

    /** The strokes that lead to the next measure's chord, where the pattern has some and this is the place for them. */
    private Optional<Strokes> leading(PlayedMeasure measure, BassPattern pattern) {
        if (isLast(measure)) return Optional.empty();
        PlayedMeasure next = performance.measures().get(measure.index() + 1);
        List<Span> here = spansByMeasure.get(measure.index());
        Span there = spansByMeasure.get(next.index()).get(0);
        if (here.size() != 1 || here.get(0).isSilent() || there.isSilent()) return Optional.empty();
        boolean silence =
                isSilentPickup(next, patterns.at(next.written(), next.pass()).pattern());
        int from = bassOf(here.get(0));
        int to = bassOf(there);
        if (silence || from == to) return Optional.empty();
        Optional<MeasureGrid> grid =
                MeasureGrid.beforeChange(measure, written(measure), pattern, microsPerWhole(measure));
        if (grid.isEmpty()) return Optional.empty();
        int steps = grid.get().runSteps();
        if (steps == 0) return Optional.of(new Strokes(grid.get(), List.of()));
        List<List<Wanted.RunNote>> lines =
                BassRuns.lines(from, to, steps, written(measure).key(), hasBass);
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Strokes(grid.get(), lines));
    }

    private static int bassOf(Span span) {
        ChordSymbol chord = span.chord.orElseThrow();
        return chord.bass().orElse(chord.root()).pitchClass();
    }

    private Measure written(PlayedMeasure measure) {
        return performance.tune().measure(measure.written());
    }

    private MusicalTime microsPerWhole(PlayedMeasure measure) {
        long micros = time.micros(measure.start().plus(measure.length())) - measure.startMicros();
        return MusicalTime.of(micros, 1).dividedBy(measure.length());
    }

    private boolean isLast(PlayedMeasure measure) {
        return measure.index() == performance.measures().size() - 1;
    }

    private void span(PlayedMeasure measure, Span span, Strokes strokes, Hand hand) {
        List<Slot> slots = strokes.grid().within(span.start.minus(measure.start()), span.end.minus(measure.start()));
        int step = 0;
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            MusicalTime end = strokes.grid().end(slots, i, span.end.minus(measure.start()));
            Wanted wanted = slot.bass() == Stroke.Bass.RUN
                    ? step(strokes.lines(), step++)
                    : new Wanted.OfChord(span.chord.orElseThrow(), slot.part(), wish(slot));
            if (!slot.isChord()) bassesSinceChord++;
            for (Slot kept : slot.playedBy(hand)) add(measure, kept, end, wanted);
        }
    }

    private static Wanted.OfRun step(List<List<Wanted.RunNote>> lines, int step) {
        return new Wanted.OfRun(lines.stream().map(line -> line.get(step)).toList());
    }

    private Wanted.BassWish wish(Slot slot) {
        if (slot.isChord()) return Wanted.BassWish.ROOT;
        return switch (slot.bass()) {
            case ROOT, RUN -> Wanted.BassWish.ROOT;
            case FIFTH -> Wanted.BassWish.FIFTH;
            case THIRD -> Wanted.BassWish.THIRD;
            case TURN -> bassesSinceChord % 2 == 1 ? Wanted.BassWish.CHANGE : Wanted.BassWish.ROOT;
        };
    }

    private void add(PlayedMeasure measure, Slot slot, MusicalTime end, Wanted wanted) {
        MusicalTime onset = measure.start().plus(slot.offset());
        MusicalTime until = measure.start().plus(end);
        MusicalTime beat = written(measure).meter().beat();
        long from = time.micros(onset);
        beats.add(new Beat(
                measure.pass(),
                measure.index(),
                new WrittenPlace(measure.written(), slot.offset()),
                onset,
                from,
                from + (time.micros(until) - from) * slot.sounds() / 1_000,
                slot.sounds() < SHORT ? beat.min(until.minus(onset)) : until.minus(onset),
                wanted instanceof Wanted.OfChord chord
                        ? new Wanted.OfChord(chord.chord(), slot.part(), chord.bass())
                        : wanted,
                spans));
    }
}
