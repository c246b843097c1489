package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.tune;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.Calls.Answer;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.work.Opened;
import org.mantice.app.work.TuneOpening;
import org.mantice.editing.TuneEdit;
import org.mantice.file.PlanFile;
import org.mantice.plugin.Packs;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Barlines;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Plans of a tune that was edited in the window, on the command line. */
class EditedPlanTest {
    private static final String NAME = "the-rusty-gate";

    @TempDir
    Path folder;

    private Path plan;
    private Path unedited;

    @BeforeEach
    void planEdited() throws IOException {
        Path copy = folder.resolve(NAME + ".musicxml");
        Files.copy(tune(NAME), copy);
        PlannerModel model = new PlannerModel(Packs.ofClassPath(), new DirectBackground(), Planners.SETUP);
        model.open(((Opened.Tune) TuneOpening.open(copy)).tune());
        unedited = written(model, "unedited");
        int last = new TuneReader().read(copy).tune().measures().size() - 1;
        model.edit(
                new TuneEdit.SetChord(at(1), "Ebmaj7"),
                new TuneEdit.SetTempo(at(0), Optional.of(Tempo.quarters(77))),
                new TuneEdit.SetBarlines(0, Barlines.PLAIN),
                new TuneEdit.SetBarlines(last, Barlines.PLAIN));
        plan = written(model, "edited");
    }

    private Path written(PlannerModel model, String name) {
        Path file = folder.resolve(name + PlanFile.SUFFIX);
        List<PlanFile> files = new ArrayList<>();
        model.planFile(files::add);
        files.get(0).write(file);
        return file;
    }

    private static WrittenPlace at(int measure) {
        return new WrittenPlace(measure, MusicalTime.ZERO);
    }

    @Test
    void isPricedAnewOnTheEditedTune() {
        Answer answer = call("check", plan, unedited);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines().toList().get(0)).contains("with 4 edits", "priced anew: the same");
        assertThat(answer.out().lines().toList().get(1))
                .contains("priced anew: the same")
                .doesNotContain("edits");
    }

    @Test
    void explainsAPlaceAndWhatElseWasPossible() {
        Answer answer = call("explain", plan, "2");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.err()).isEmpty();
        assertThat(answer.out()).contains("possible here (jump-cost)");
    }

    @Test
    void isComparedWithThePlanOfTheUneditedTune() {
        Answer answer = call("compare", unedited, plan);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("the tune was not edited alike for both", "decisions differ", "measure 2");
        assertThat(call("compare", plan, plan).out())
                .contains("0 decisions differ")
                .doesNotContain("edited alike");
    }

    @Test
    void writesTheEditedTune() {
        Answer answer = call("write", plan, "--out", folder.resolve("out"));

        assertThat(answer.code()).as(answer.err()).isZero();
        Tune tune = new TuneReader()
                .read(folder.resolve("out").resolve("edited.musicxml"))
                .tune();
        assertThat(tune.measures()).anyMatch(measure -> measure.chords().stream()
                .anyMatch(chord -> chord.symbol().toString().equals("Ebmaj7")));
        assertThat(tune.measure(0).marks())
                .anyMatch(mark -> mark instanceof Mark.TempoChange change
                        && change.tempo().equals(Tempo.quarters(77)));
    }

    @Test
    void editsThatDoNotFitAreRefusedInOneLine() throws IOException {
        String json = Files.readString(plan);
        assertThat(json).contains("\"edit\" : \"set-chord\"");
        Files.writeString(
                plan, json.replaceFirst("(\"edit\" : \"set-chord\",\\s+\"place\" : \\{\\s+\"measure\" : )1", "$1999"));

        for (Object[] words : new Object[][] {
            {"check", plan}, {"explain", plan, "2"}, {"compare", plan, unedited}, {"write", plan, "--out", folder}
        }) {
            Answer answer = call(words);

            assertThat(answer.code()).as(String.valueOf(words[0])).isNotZero();
            assertThat(answer.err().lines())
                    .as(String.valueOf(words[0]))
                    .singleElement()
                    .asString()
                    .contains("edit 1 is in written measure 1000; allowed: 1 to ");
        }
    }
}
