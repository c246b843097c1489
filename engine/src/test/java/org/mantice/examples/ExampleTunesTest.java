package org.mantice.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.performance.PlayOrder;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneReader;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassEvent;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

class ExampleTunesTest {
    private static final List<String> NAMES = List.of(
            "five-steps-to-the-ferry",
            "fog-over-grebe-holm",
            "lanterns-at-the-weir",
            "seven-geese-in-the-schoolyard",
            "the-millers-wet-boots",
            "the-ropewalk-march",
            "the-rusty-gate",
            "what-the-harbour-bell-said");

    @Test
    void everyTuneIsReadWholeAndHasChordsAndATitle() {
        assertThat(NAMES).allSatisfy(name -> {
            ReadTune read = read(name);

            assertThat(read.skipped()).isEmpty();
            assertThat(read.tune().title()).isNotBlank();
            assertThat(read.tune().hasChords()).isTrue();
        });
    }

    /** Counted by hand from repeats, endings, D.C. and D.S.; a pickup counts as a measure. */
    @ParameterizedTest
    @CsvSource({
        "five-steps-to-the-ferry, 32",
        "fog-over-grebe-holm, 24",
        "lanterns-at-the-weir, 49",
        "seven-geese-in-the-schoolyard, 33",
        "the-millers-wet-boots, 40",
        "the-ropewalk-march, 49",
        "the-rusty-gate, 30",
        "what-the-harbour-bell-said, 24"
    })
    void aTuneIsPlayedForAsManyMeasuresAsItsSignsSay(String name, int measures) {
        assertThat(PlayOrder.of(tune(name))).hasSize(measures);
    }

    /** 41 keys are F3 to A6. */
    @Test
    void everyTuneLiesOnFortyOneKeys() {
        assertThat(NAMES).allSatisfy(name -> {
            assertThat(compass(name).getMin()).isGreaterThanOrEqualTo(53);
            assertThat(compass(name).getMax()).isLessThanOrEqualTo(93);
        });
    }

    @Test
    void theBeginnersTuneHasFiveNotesUnderOneHand() {
        IntSummaryStatistics compass = compass("five-steps-to-the-ferry");

        assertThat(compass.getMin()).isEqualTo(60);
        assertThat(compass.getMax()).isEqualTo(67);
    }

    @Test
    void theSlowAirIsWide() {
        IntSummaryStatistics compass = compass("fog-over-grebe-holm");

        assertThat(compass.getMin()).isEqualTo(55);
        assertThat(compass.getMax()).isEqualTo(88);
    }

    @Test
    void halfOfTheTunesNameATempo() {
        assertThat(NAMES).filteredOn(ExampleTunesTest::namesATempo).hasSize(4);
    }

    @ParameterizedTest
    @ValueSource(strings = "the-millers-wet-boots")
    void everyWrittenChordButtonAgreesWithTheChordSymbol(String name) {
        for (Measure measure : tune(name).measures()) {
            for (BassEvent event : measure.bass()) {
                if (event.chord().isEmpty()) continue;
                ChordSymbol symbol = symbolAt(measure, event);
                assertThat(event.pitches())
                        .as("measure %s", measure.number())
                        .singleElement()
                        .satisfies(pitch -> assertThat(Math.floorMod(pitch.midi(), 12))
                                .isEqualTo(symbol.root().pitchClass()));
                assertThat(kind(event.chord().get())).isEqualTo(symbol.kind());
            }
        }
    }

    private static ChordKind kind(BassChordType type) {
        return switch (type) {
            case MAJOR -> ChordKind.MAJOR;
            case MINOR -> ChordKind.MINOR;
            case SEVENTH -> ChordKind.DOMINANT;
            case DIMINISHED -> ChordKind.DIMINISHED;
        };
    }

    private static ChordSymbol symbolAt(Measure measure, BassEvent event) {
        List<PlacedChord> before = measure.chords().stream()
                .filter(chord -> chord.offset().compareTo(event.offset()) <= 0)
                .toList();
        return before.get(before.size() - 1).symbol();
    }

    private static boolean namesATempo(String name) {
        return tune(name).measures().stream()
                .flatMap(measure -> measure.marks().stream())
                .anyMatch(Mark.TempoChange.class::isInstance);
    }

    private static IntSummaryStatistics compass(String name) {
        return tune(name).measures().stream()
                .flatMap(measure -> measure.melody().stream())
                .flatMap(event -> Stream.concat(
                        event.notes().stream(), event.graces().notes().stream().flatMap(List::stream)))
                .mapToInt(note -> note.pitch().midi())
                .summaryStatistics();
    }

    private static Tune tune(String name) {
        return read(name).tune();
    }

    private static ReadTune read(String name) {
        return new TuneReader().read(ExampleFiles.folder("tunes").resolve(name + ".musicxml"));
    }
}
