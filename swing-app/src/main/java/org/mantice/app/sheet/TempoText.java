package org.mantice.app.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.mantice.app.words.Words;
import org.mantice.performance.Assumptions;
import org.mantice.performance.Settings;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/** Metronome marks: that of the settings at the start, later ones in the same proportion as written. */
final class TempoText {
    private static final double SCALE = 0.7;

    private final SheetMeasures sheet;
    private final Settings settings;
    private final Tune tune;
    private final Words words;

    TempoText(SheetMeasures sheet, Settings settings, Tune tune, Words words) {
        this.sheet = sheet;
        this.settings = settings;
        this.tune = tune;
        this.words = words;
    }

    Row atStart() {
        double beats = settings.tempo().milliBeatsPerMinute() / 1000.0;
        return row(
                settings.tempo().beat(),
                settings.tempoAssumed() ? words.text("staff.tempoAssumed", beats) : words.text("staff.tempo", beats));
    }

    /** A written mark at or before the first note of the first cell, in whose place the settings' stands. */
    boolean isAtStart(int cell, Mark.TempoChange change) {
        if (cell > 0) return false;
        Measure measure = sheet.measure(0);
        Optional<MusicalTime> firstNote = measure.melody().stream()
                .filter(event -> !event.isRest())
                .map(MelodyEvent::offset)
                .findFirst();
        return firstNote.isEmpty() || !firstNote.get().isBefore(change.offset());
    }

    Row of(Mark.TempoChange change) {
        Tempo written = change.tempo();
        MusicalTime chosen = settings.tempo().microsPerWholeNote();
        MusicalTime scale = Assumptions.startTempo(tune).microsPerWholeNote().dividedBy(chosen);
        BigDecimal beats = BigDecimal.valueOf(written.milliBeatsPerMinute(), 3)
                .multiply(BigDecimal.valueOf(scale.numerator()))
                .divide(BigDecimal.valueOf(scale.denominator()), 1, RoundingMode.HALF_UP);
        return row(written.beat(), words.text("staff.tempo", beats));
    }

    private static Row row(MusicalTime beat, String text) {
        NoteValue value = NoteValue.of(beat).orElse(new NoteValue(NoteValue.QUARTER, 0));
        Row row = Row.glyph(NoteGlyphs.metronome(value), SCALE);
        for (int dot = 0; dot < value.dots(); dot++) row = row.then(Row.glyph(Glyph.MET_AUGMENTATION_DOT, SCALE));
        return row.then(new Row(
                List.of(new Row.Part(SheetFonts.text(text, SheetFonts.Face.PLAIN, Engraving.WORDS_SIZE), 1)), false));
    }
}
