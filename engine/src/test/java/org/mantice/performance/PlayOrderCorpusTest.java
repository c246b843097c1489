package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** The order of play against unrolled files and written descriptions that come with public test collections. */
class PlayOrderCorpusTest {
    private static Tune tune(Path file) {
        return new TuneReader().read(file).tune();
    }

    /** Onset, length and keys of everything that is struck, once through. */
    private static List<String> sounding(Path file) {
        Tune tune = tune(file);
        return Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(1).build()).treble().stream()
                .map(moment -> moment.onset() + " " + moment.duration() + " "
                        + moment.notes().stream().map(PlayedNote::midi).toList())
                .toList();
    }

    /** "Play order equals the results that come with the files": partitura's unfolding tests, four tunes. */
    @ParameterizedTest
    @CsvSource({"complex", "dacapo", "timeline", "volta_numbers"})
    void unrolling_gives_the_notes_of_the_result_that_comes_with_the_file(String name) {
        Path folder = Corpus.folder("musicxml-misc");

        assertThat(sounding(folder.resolve("test_unfold_" + name + ".xml")))
                .isEqualTo(sounding(folder.resolve("test_unfold_" + name + "_result.xml")))
                .isNotEmpty();
    }

    /**
     * As the descriptions in the files tell it, and as a musician would read them; measures from 1. The other files 45*
     * have no note and are not read as tunes; their signs are repeated in {@link PlayOrderTest}.
     */
    @ParameterizedTest
    @CsvSource({
        "45b-RepeatWithAlternatives, 1 2 1 3 4",
        "45g-Repeats-NotEnded, 1 2",
        "45h-Repeats-Partial, 1 2 3 1 2 3 4 5",
        "45i-Repeats-Nested, 1 2 3 3 4 1 5 5 6 7",
        "45k-Repeats-Chords-FiguredBass, 1 2 1 3 4"
    })
    void repeats_of_the_public_test_suite_are_read_as_described(String name, String order) {
        Tune tune = tune(Corpus.folder("musicxml-test-suite").resolve(name + ".xml"));

        assertThat(PlayOrder.of(tune).stream().map(i -> String.valueOf(i + 1)).collect(Collectors.joining(" ")))
                .isEqualTo(order);
    }

    @ParameterizedTest
    @CsvSource({"test_staverepetitions_coda_etc, 1 2 3 1 2 4 5", "OSMD_function_Test_Repeat, 1 1 2 3 4 3 4"})
    void repeats_and_jumps_of_other_public_files_are_read_as_a_musician_would(String name, String order) {
        Tune tune = tune(Corpus.folder("musicxml-misc").resolve(name + ".musicxml"));

        assertThat(PlayOrder.of(tune).stream().map(i -> String.valueOf(i + 1)).collect(Collectors.joining(" ")))
                .isEqualTo(order);
    }

    @Test
    void every_tune_that_can_be_read_can_be_performed() {
        List<String> performed = new ArrayList<>();
        for (String folder : List.of("mxl-leadsheets-pd", "musicxml-misc", "musicxml-test-suite"))
            for (Corpus.Numbered file : Corpus.files(folder, ".mxl", ".xml", ".musicxml")) {
                try {
                    Performance performance = Performer.perform(tune(file.path()));
                    assertThat(performance.treble())
                            .as(folder + " " + file.index())
                            .isNotEmpty();
                    performed.add(folder);
                } catch (TuneReadException e) {
                    assertThat(folder).as("refused: " + file.index()).isNotEqualTo("mxl-leadsheets-pd");
                }
            }

        System.out.println("performed: "
                + performed.stream()
                        .collect(Collectors.groupingBy(folder -> folder, TreeMap::new, Collectors.counting())));
        assertThat(performed).contains("mxl-leadsheets-pd");
    }
}
