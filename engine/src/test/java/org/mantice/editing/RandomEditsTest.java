package org.mantice.editing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mantice.examples.ExampleFiles;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;

/** What holds for whatever is edited in whichever order. */
class RandomEditsTest {
    private static final int SEEDS = 12;
    private static final int EDITS = 30;

    private static List<Tune> examples() throws Exception {
        List<Tune> tunes = new ArrayList<>();
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            for (Path file : files.sorted().toList())
                tunes.add(new TuneReader().read(file).tune());
        }
        return tunes;
    }

    @Test
    void no_edit_touches_a_note_or_the_length_of_a_measure() throws Exception {
        Set<Class<?>> kinds = new HashSet<>();
        for (Tune tune : examples())
            for (long seed = 0; seed < SEEDS; seed++) {
                List<TuneEdit> edits = RandomEdits.of(tune, EDITS, seed);
                edits.forEach(edit -> kinds.add(edit.getClass()));

                Tune edited = Edits.apply(tune, edits).tune();

                assertThat(edited.measures())
                        .extracting(Measure::number, Measure::length, Measure::meter, Measure::pickup)
                        .isEqualTo(tune.measures().stream()
                                .map(each -> tuple(each.number(), each.length(), each.meter(), each.pickup()))
                                .toList());
                assertThat(edited.measures().stream().map(Measure::melody).toList())
                        .isEqualTo(tune.measures().stream().map(Measure::melody).toList());
                assertThat(edited.measures().stream().map(Measure::bass).toList())
                        .isEqualTo(tune.measures().stream().map(Measure::bass).toList());
            }
        assertThat(kinds).hasSameElementsAs(List.of(TuneEdit.class.getPermittedSubclasses()));
    }

    @Test
    void all_at_once_is_the_same_as_one_after_the_other() throws Exception {
        for (Tune tune : examples())
            for (long seed = 0; seed < SEEDS; seed++) {
                List<TuneEdit> edits = RandomEdits.of(tune, EDITS, seed);
                EditedTune step = EditedTune.unedited(tune);
                for (int i = 0; i < edits.size(); i++) step = Edits.apply(step, edits.subList(i, i + 1), i + 1);

                assertThat(Edits.apply(tune, edits)).isEqualTo(step);
            }
    }
}
