package org.mantice.writing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.performance.Assumptions;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.TrebleMoment;
import org.mantice.tune.Barlines;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/**
 * Writes a performance out measure by measure. Where play goes back, what held there the first time (chord, tempo,
 * loudness) is written again. Measures are numbered anew, pickups X1, X2 …
 */
final class Unrolling {
    private final Performance performance;
    private final Tune tune;
    private final MusicalTime scale;
    private final List<List<HarmonySpan>> harmony = new ArrayList<>();
    private final List<Optional<TrebleMoment>> firstMoments = new ArrayList<>();
    private final List<Optional<Tempo>> entryTempos = new ArrayList<>();
    private final Map<ChordSymbol, Boolean> proposed = new HashMap<>();
    private Optional<ChordSymbol> ringing = Optional.empty();
    private Tempo tempo;
    private int loudness;
    private int counted;
    private int pickups;

    Unrolling(Performance performance) {
        this.performance = performance;
        this.tune = performance.tune();
        this.tempo = performance.settings().tempo();
        this.scale = Assumptions.startTempo(tune).microsPerWholeNote().dividedBy(tempo.microsPerWholeNote());
        performance.measures().forEach(measure -> {
            harmony.add(new ArrayList<>());
            firstMoments.add(Optional.empty());
        });
        performance.harmony().forEach(span -> harmony.get(span.measure()).add(span));
        for (TrebleMoment moment : performance.treble())
            if (firstMoments.get(moment.measure()).isEmpty()) firstMoments.set(moment.measure(), Optional.of(moment));
        tune.measures().forEach(measure -> entryTempos.add(Optional.empty()));
    }

    Tune unroll(Marking marking) {
        List<Measure> measures = new ArrayList<>();
        for (PlayedMeasure played : performance.measures()) measures.add(marking.mark(played, written(played)));
        return new Tune(tune.title(), tune.dance(), MetTies.only(measures));
    }

    private Measure written(PlayedMeasure played) {
        Measure measure = tune.measure(played.written());
        boolean last = played.index() + 1 == performance.measures().size();
        boolean doubleBar = last || measure.barlines().doubleBar();
        return new Measure(
                measure.pickup() ? "X" + ++pickups : String.valueOf(++counted),
                measure.length(),
                measure.meter(),
                measure.key(),
                measure.pickup(),
                measure.melody(),
                chords(played, measure),
                measure.bass(),
                marks(played, measure),
                plain(doubleBar));
    }

    private static Barlines plain(boolean doubleBar) {
        return new Barlines(
                false,
                Optional.empty(),
                false,
                List.of(),
                false,
                false,
                false,
                Optional.empty(),
                false,
                false,
                doubleBar);
    }

    /** Of two chords at one place the one that the pass plays. */
    private List<PlacedChord> chords(PlayedMeasure played, Measure measure) {
        ChordsPlayed choice = performance.settings().chords();
        List<PlacedChord> own = measure.chords().stream()
                .flatMap(chord -> choice.inPass(chord, played.pass()).stream())
                .toList();
        List<PlacedChord> chords = new ArrayList<>();
        List<HarmonySpan> spans = harmony.get(played.index());
        Optional<ChordSymbol> entry = spans.get(0).chord();
        boolean written = own.stream().anyMatch(chord -> chord.offset().equals(MusicalTime.ZERO));
        if (!written && entry.isPresent() && !entry.equals(ringing))
            chords.add(new PlacedChord(MusicalTime.ZERO, entry.get(), proposed.getOrDefault(entry.get(), false)));
        chords.addAll(own);
        own.forEach(chord -> proposed.merge(chord.symbol(), chord.proposed(), Boolean::logicalAnd));
        ringing = spans.get(spans.size() - 1).chord();
        return chords;
    }

    private List<Mark> marks(PlayedMeasure played, Measure measure) {
        List<Mark> marks = new ArrayList<>();
        boolean again = played.index() > 0 && startsTimeThrough(played);
        if (again && measure.marks().stream().noneMatch(new Mark.PhraseStart(MusicalTime.ZERO)::equals))
            marks.add(new Mark.PhraseStart(MusicalTime.ZERO));
        if (isFirst(played)) entryTempos.set(played.written(), Optional.of(tempo));
        tempoAtEntry(played, measure).ifPresent(marks::add);
        dynamicAtEntry(played, measure).ifPresent(marks::add);
        for (Mark mark : measure.marks()) {
            if (mark instanceof Mark.TempoChange change) {
                tempo = scaled(change.tempo());
                marks.add(new Mark.TempoChange(change.offset(), tempo));
            } else marks.add(mark);
        }
        return marks;
    }

    private boolean startsTimeThrough(PlayedMeasure played) {
        return performance.passes().stream()
                .anyMatch(pass -> pass.firstMeasure() == played.index()
                        && (pass.number() == 1
                                || performance.passes().get(pass.number() - 2).timeThrough() != pass.timeThrough()));
    }

    private static boolean isFirst(PlayedMeasure played) {
        return played.occurrence() == 1;
    }

    /** The tempo chosen for the start where none is written there, and the one that held where play goes back to. */
    private Optional<Mark> tempoAtEntry(PlayedMeasure played, Measure measure) {
        boolean written = measure.marks().stream()
                .anyMatch(mark ->
                        mark instanceof Mark.TempoChange && mark.offset().isZero());
        if (written) return Optional.empty();
        Tempo entry = entryTempos.get(played.written()).orElseThrow();
        boolean chosen = played.index() == 0
                && !performance.settings().tempoAssumed()
                && Assumptions.writtenTempo(tune).isEmpty();
        if (!chosen && entry.equals(tempo)) return Optional.empty();
        tempo = entry;
        return Optional.of(new Mark.TempoChange(MusicalTime.ZERO, entry));
    }

    private Tempo scaled(Tempo written) {
        MusicalTime per = scale.times(written.milliBeatsPerMinute());
        int milli = BigDecimal.valueOf(per.numerator())
                .divide(BigDecimal.valueOf(per.denominator()), 0, RoundingMode.HALF_UP)
                .min(BigDecimal.valueOf(1_000_000))
                .max(BigDecimal.valueOf(5_000))
                .intValueExact();
        return new Tempo(written.beat(), milli);
    }

    /** Where play goes back to another loudness, the nearest mark to the one that held there; hairpins lie between two. */
    private Optional<Mark> dynamicAtEntry(PlayedMeasure played, Measure measure) {
        boolean goesBack = played.index() > 0
                && performance.measures().get(played.index() - 1).written() + 1 != played.written();
        int before = loudness;
        for (TrebleMoment moment : firstMoments.get(played.index()).stream().toList()) loudness = lastLoudness(moment);
        if (!goesBack || firstMoments.get(played.index()).isEmpty()) return Optional.empty();
        int entry = firstMoments.get(played.index()).get().loudness();
        boolean written = measure.marks().stream()
                .anyMatch(mark -> mark instanceof Mark.Dynamic && mark.offset().isZero());
        if (written || entry == before) return Optional.empty();
        Loudness level = Loudness.values()[Math.min(7, (entry + 50) / 100)];
        return Optional.of(new Mark.Dynamic(MusicalTime.ZERO, level));
    }

    private int lastLoudness(TrebleMoment first) {
        int last = first.loudness();
        for (int i = first.index();
                i < performance.treble().size() && performance.treble().get(i).measure() == first.measure();
                i++) last = performance.treble().get(i).loudness();
        return last;
    }
}
