package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;

/** Places the chord symbols of a part as {@link PlacedChords} tells; "N.C." in words is a symbol too. */
final class ChordLine {
    private final List<MusicalTime> lengths;
    private final ReadReport report;
    private final boolean verbatim;

    /** @param verbatim several symbols may stand at one place, and words are none */
    ChordLine(List<MusicalTime> lengths, ReadReport report, boolean verbatim) {
        this.lengths = lengths;
        this.report = report;
        this.verbatim = verbatim;
    }

    List<List<PlacedChord>> read(List<ScoreMeasure> measures) {
        List<List<PlacedChord>> all = new ArrayList<>();
        List<ScoreChord> early = List.of();
        boolean hasSymbols =
                measures.stream().anyMatch(measure -> !measure.chords().isEmpty());
        for (ScoreMeasure measure : measures) {
            List<ScoreChord> here = new ArrayList<>(measure.chords());
            measure.signs().forEach(sign -> {
                if (sign instanceof ScoreSign.NoChord none) here.add(noChord(none.onset()));
            });
            here.addAll(early);
            if (hasSymbols && !verbatim && here.isEmpty()) here.addAll(inWords(measure, measures));
            early = here.stream()
                    .filter(chord -> isAtEnd(measure, chord))
                    .map(chord -> chord.at(MusicalTime.ZERO))
                    .toList();
            here.removeIf(chord -> isAtEnd(measure, chord));
            all.add(place(measure, here));
        }
        return all;
    }

    /** A symbol after the last note means the next measure, if there is one. */
    private boolean isAtEnd(ScoreMeasure measure, ScoreChord chord) {
        return !chord.onset().isBefore(lengths.get(measure.index())) && measure.index() + 1 < lengths.size();
    }

    private List<PlacedChord> place(ScoreMeasure measure, List<ScoreChord> chords) {
        PlacedChords placed = new PlacedChords(lengths.get(measure.index()), verbatim);
        for (ScoreChord chord : chords) {
            PlacedChords.Outcome outcome = placed.add(chord);
            switch (outcome) {
                case TAKEN -> report.addAllAt(measure.number(), chord.findings());
                case REPEATED -> {}
                case BESIDE ->
                    report.addAt(
                            measure.number(),
                            SkippedWhat.CHORD_BESIDE,
                            chord.symbol().toString());
                case AFTER_END ->
                    report.addAt(
                            measure.number(),
                            SkippedWhat.CHORD_AFTER_END,
                            chord.symbol().toString());
            }
        }
        return placed.chords();
    }

    /**
     * A chord written as words in a measure without symbols, in a part that has symbols elsewhere. Where a section may
     * begin, a letter is rather the name of the section.
     */
    private List<ScoreChord> inWords(ScoreMeasure measure, List<ScoreMeasure> measures) {
        if (measure.index() == 0 || startsSection(measure) || endsSection(measures.get(measure.index() - 1)))
            return List.of();
        List<ScoreChord> chords = new ArrayList<>();
        for (ScoreSign sign : measure.signs())
            if (sign instanceof ScoreSign.Plain plain && plain.mark() instanceof Mark.Words words)
                ChordKindText.symbol(words.text()).ifPresent(symbol -> {
                    Finding finding = Finding.of(SkippedWhat.CHORD_IN_WORDS, words.text());
                    chords.add(new ScoreChord(words.offset(), true, symbol, List.of(finding)));
                });
        return chords;
    }

    private static boolean startsSection(ScoreMeasure measure) {
        return measure.barlines().stream().anyMatch(barline -> barline.location() == ScoreBarline.Location.LEFT);
    }

    private static boolean endsSection(ScoreMeasure measure) {
        return measure.barlines().stream()
                .anyMatch(barline -> barline.location() == ScoreBarline.Location.RIGHT
                        && !barline.style().equals("regular"));
    }

    private static ScoreChord noChord(MusicalTime onset) {
        return new ScoreChord(onset, true, ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.NONE), List.of());
    }
}
