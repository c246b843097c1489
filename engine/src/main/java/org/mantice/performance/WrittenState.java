package org.mantice.performance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/**
 * What holds where nothing is written: the chord, tempo and loudness on entering each written measure are those that
 * held when play first came to it, so that a measure sounds the same each time but for chords written for later passes.
 */
final class WrittenState {
    /** A fermata makes its event half as long again. Estimate. */
    static final MusicalTime FERMATA = MusicalTime.of(3, 2);

    /** From an offset of a measure on, a whole note lasts so long. */
    record Pace(MusicalTime offset, MusicalTime microsPerWhole) {}

    /** A chord from an offset of a measure on. */
    record Harmony(MusicalTime offset, Optional<ChordSymbol> chord) {}

    /** What holds on entering a measure; of two chords at one place each pass takes its own. */
    private record Entry(Optional<PlacedChord> chord, MusicalTime microsPerWhole, int loudness) {}

    private final Tune tune;
    private final ChordsPlayed chords;
    private final LoudnessCurve curve;
    private final MusicalTime scale;
    private final List<Entry> entries;

    WrittenState(Tune tune, Settings settings, List<Integer> order) {
        this.tune = tune;
        this.chords = settings.chords();
        this.curve = new LoudnessCurve(tune);
        MusicalTime chosen = settings.tempo().microsPerWholeNote();
        this.scale = chosen.dividedBy(Assumptions.startTempo(tune).microsPerWholeNote());
        int loudness = LoudnessCurve.STEP * settings.loudness().ordinal();
        Entry start = new Entry(Optional.empty(), chosen, loudness);
        this.entries = new ArrayList<>(Collections.nCopies(tune.measures().size(), start));
        boolean[] entered = new boolean[entries.size()];
        for (int i = 0; i < order.size(); i++) {
            int measure = order.get(i);
            if (!entered[measure] && i > 0) entries.set(measure, after(order.get(i - 1)));
            entered[measure] = true;
        }
    }

    private Entry after(int measure) {
        Measure written = tune.measure(measure);
        Entry entry = entries.get(measure);
        Optional<PlacedChord> chord = entry.chord();
        for (PlacedChord placed : written.chords()) if (chords.plays(placed)) chord = Optional.of(placed);
        MusicalTime pace = entry.microsPerWhole();
        for (Mark mark : written.marks()) if (mark instanceof Mark.TempoChange change) pace = scaled(change.tempo());
        return new Entry(chord, pace, loudness(measure, written.length()));
    }

    /** Hundredths of a step at a place. */
    int loudness(int measure, MusicalTime offset) {
        return curve.at(measure, offset, entries.get(measure).loudness());
    }

    /**
     * The first one begins with the measure; empty until the first chord symbol of the tune.
     *
     * @param pass from 1
     */
    List<Harmony> harmony(int measure, int pass) {
        Measure written = tune.measure(measure);
        List<Harmony> spans = new ArrayList<>();
        spans.add(new Harmony(MusicalTime.ZERO, entries.get(measure).chord().flatMap(placed -> symbol(placed, pass))));
        for (PlacedChord placed : written.chords()) {
            if (!placed.offset().isBefore(written.length())) break;
            Optional<ChordSymbol> symbol = symbol(placed, pass);
            if (symbol.isEmpty()) continue;
            MusicalTime offset = placed.offset().max(MusicalTime.ZERO);
            if (spans.get(spans.size() - 1).offset().equals(offset)) spans.remove(spans.size() - 1);
            spans.add(new Harmony(offset, symbol));
        }
        return spans;
    }

    private Optional<ChordSymbol> symbol(PlacedChord placed, int pass) {
        return chords.inPass(placed, pass).map(PlacedChord::symbol);
    }

    /** The first one begins with the measure; fermatas are part of it. */
    List<Pace> paces(int measure) {
        Measure written = tune.measure(measure);
        List<Pace> plain = new ArrayList<>();
        plain.add(new Pace(MusicalTime.ZERO, entries.get(measure).microsPerWhole()));
        for (Mark mark : written.marks())
            if (mark instanceof Mark.TempoChange change && change.offset().isBefore(written.length())) {
                MusicalTime offset = change.offset().max(MusicalTime.ZERO);
                if (plain.get(plain.size() - 1).offset().equals(offset)) plain.remove(plain.size() - 1);
                plain.add(new Pace(offset, scaled(change.tempo())));
            }
        return withFermatas(written, plain);
    }

    private static List<Pace> withFermatas(Measure written, List<Pace> plain) {
        List<MelodyEvent> held = written.melody().stream()
                .filter(event -> event.marks().fermata())
                .toList();
        if (held.isEmpty()) return plain;
        List<MusicalTime> cuts = new ArrayList<>();
        plain.forEach(pace -> cuts.add(pace.offset()));
        held.forEach(event -> {
            cuts.add(event.offset());
            if (event.end().isBefore(written.length())) cuts.add(event.end());
        });
        List<Pace> paces = new ArrayList<>();
        for (MusicalTime cut : cuts.stream().sorted().distinct().toList()) {
            MusicalTime micros = plain.get(0).microsPerWhole();
            for (Pace pace : plain) if (!cut.isBefore(pace.offset())) micros = pace.microsPerWhole();
            boolean inFermata =
                    held.stream().anyMatch(event -> !cut.isBefore(event.offset()) && cut.isBefore(event.end()));
            paces.add(new Pace(cut, inFermata ? micros.times(FERMATA) : micros));
        }
        return paces;
    }

    private MusicalTime scaled(Tempo tempo) {
        return tempo.microsPerWholeNote().times(scale);
    }
}
