package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mantice.app.words.Words;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class ChordPlacesTest {
    private static final Words ENGLISH = Words.of(java.util.Locale.ENGLISH);

    private static Tune tune(String meter, String melody) {
        return Tunes.melody(meter, melody);
    }

    private static SheetPainter painter(Tune tune) {
        return new SheetPainter(Sheets.bare(tune, new Reading.AsWritten()), ENGLISH, 1200, 8);
    }

    private static MusicalTime time(long numerator, long denominator) {
        return MusicalTime.of(numerator, denominator);
    }

    @Test
    void everyBeatEveryNoteAndEveryChordIsAPlace() {
        Measure measure = tune("4/4", "\"C\" C4 q, D4 e, E4 e, F4 h").measure(0);

        assertThat(ChordPlaces.of(measure)).containsExactly(time(0, 1), time(1, 4), time(3, 8), time(1, 2), time(3, 4));
    }

    @Test
    void ofCompoundMeasuresTheBeatsAreDotted() {
        Measure measure = tune("6/8", "C4 h.").measure(0);

        assertThat(ChordPlaces.of(measure)).containsExactly(time(0, 1), time(3, 8));
    }

    @Test
    void aPickupHasTheLastBeats() {
        Measure measure = Tunes.melody("3/4", "@pickup C4 q | C4 h.").measure(0);

        assertThat(ChordPlaces.of(measure)).containsExactly(time(0, 1));
    }

    @Test
    void eachPlaceOfTheTuneCanBePointedAtOnTheSheetInOrder() {
        Tune tune = tune("4/4", "C4 q, D4 q, E4 q, F4 q | \"G7\" G4 w | C6 q, C6 q, C4 h");
        SheetPainter painter = painter(tune);

        List<WrittenPlace> wanted = new java.util.ArrayList<>();
        for (int i = 0; i < 3; i++)
            for (MusicalTime offset : ChordPlaces.of(tune.measure(i))) wanted.add(new WrittenPlace(i, offset));
        assertThat(painter.chords()).extracting(target -> target.spot().place()).isEqualTo(wanted);
        for (ChordTarget target : painter.chords())
            assertThat(painter.chordAt(
                                    target.bounds().getCenterX(),
                                    target.bounds().getCenterY())
                            .map(ChordTarget::spot))
                    .as(target + "")
                    .contains(target.spot());
    }

    @Test
    void aSymbolIsFoundBeforeTheEmptyPlacesThatItCovers() {
        Tune tune = tune("4/4", "\"Cmaj7\" C4 e, D4 e, E4 e, F4 e, G4 h");
        SheetPainter painter = painter(tune);

        ChordTarget symbol = painter.chords().get(0);

        assertThat(symbol.taken()).isTrue();
        assertThat(painter.chordAt(
                        symbol.bounds().getMaxX() - 1, symbol.bounds().getCenterY()))
                .contains(symbol);
    }

    @Test
    void theRoomForChordsIsThereBeforeTheFirstIsTyped() {
        Tune bare = tune("4/4", "C4 q, D4 q, E4 q, F4 q | G4 w");
        Tune withChord = tune("4/4", "\"C\" C4 q, D4 q, E4 q, F4 q | G4 w");

        assertThat(painter(withChord).height()).isEqualTo(painter(bare).height());
        assertThat(painter(withChord).chords().get(1).bounds())
                .isEqualTo(painter(bare).chords().get(1).bounds());
    }

    @Test
    void aProposedChordIsInBracketsAndSlanted() {
        Tune written = tune("4/4", "\"G7\" G4 w");
        Tune proposed = new Tune("", Optional.empty(), List.of(Chords.proposed(written.measure(0))));

        SheetFonts.Outline plain = ChordText.outline(written.measure(0).chords().get(0));
        SheetFonts.Outline marked =
                ChordText.outline(proposed.measure(0).chords().get(0));

        assertThat(marked).isEqualTo(SheetFonts.text("[G7]", SheetFonts.Face.BOLD_ITALIC, Engraving.CHORD_SIZE));
        assertThat(marked.advance()).isGreaterThan(plain.advance());
        assertThat(marked).isNotEqualTo(SheetFonts.text("[G7]", SheetFonts.Face.BOLD, Engraving.CHORD_SIZE));
    }

    /** Measures whose chords nobody wrote. */
    private static final class Chords {
        static Measure proposed(Measure measure) {
            return measure.withChords(measure.chords().stream()
                    .map(chord -> new org.mantice.tune.PlacedChord(chord.offset(), chord.symbol(), true))
                    .toList());
        }
    }
}
