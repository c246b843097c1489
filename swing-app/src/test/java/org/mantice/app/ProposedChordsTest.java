package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.Calls.Answer;
import org.mantice.editing.TuneEdit;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.reading.TuneReader;
import org.mantice.tune.PlacedChord;

/** The command line with chords proposed for bare melodies. */
class ProposedChordsTest {
    @TempDir
    private Path folder;

    private Path bare;
    private Path withChords;

    @BeforeEach
    void writeTunes() throws IOException {
        String head = "X:1\nT:Invented\nM:3/4\nL:1/4\nK:G\n";
        bare = Files.writeString(folder.resolve("bare.abc"), head + "GBd|cAF|GBd|d3|cec|BdB|AFD|G3|]\n");
        withChords = Files.writeString(folder.resolve("with.abc"), head + "\"C\"GBd|cAF|GBd|\"D\"d3|]\n");
    }

    private PlanDocument planned(Path tune, Object... more) {
        Object[] call = {"plan", tune, "--alternatives", 1, "--out", folder.resolve("out")};
        Object[] all = java.util.Arrays.copyOf(call, call.length + more.length);
        System.arraycopy(more, 0, all, call.length, more.length);
        Answer answer = call(all);
        assertThat(answer.code()).as(answer.err()).isZero();
        String name = tune.getFileName().toString().replace(".abc", PlanFile.SUFFIX);
        return PlanFile.read(folder.resolve("out").resolve(name)).document();
    }

    @Test
    void aBareTuneIsPlannedWithProposedChordsAndItsPlanPricedAnewIsTheSame() {
        PlanDocument plan = planned(bare, "--propose-chords");

        assertThat(plan.tune().edits()).containsExactly(new TuneEdit.ProposeChords());
        assertThat(plan.plan().leftHand().events()).isNotEmpty();
        Answer checked = call("check", folder.resolve("out/bare.plan.json"));
        assertThat(checked.code()).as(checked.err()).isZero();
        assertThat(checked.out()).contains("bare.abc with proposed chords, cost ", "priced anew: the same");
        assertThat(call("explain", folder.resolve("out/bare.plan.json"), "2").code())
                .isZero();
    }

    @Test
    void whatIsProposedIsSaidMeasureByMeasure() {
        for (String verb : List.of("plan", "check"))
            assertThat(call(verb, bare, "--propose-chords").out())
                    .contains("  proposed: chord symbols, because the tune has none (1 G, ");
    }

    @Test
    void nothingIsProposedWithoutBeingAskedForNorWhereThereAreChords() {
        assertThat(planned(bare).tune().edits()).isEmpty();
        assertThat(planned(withChords, "--propose-chords").tune().edits()).isEmpty();
        assertThat(call("check", withChords, "--propose-chords").out()).doesNotContain("proposed");
    }

    @Test
    void aBareTuneIsWrittenWithProposedChords() {
        Answer written = call("write", bare, "--propose-chords", "--out", folder.resolve("scores"));

        assertThat(written.code()).as(written.err()).isZero();
        assertThat(new TuneReader()
                        .read(folder.resolve("scores/bare.musicxml")).tune().measures().stream()
                                .flatMap(measure -> measure.chords().stream())
                                .map(PlacedChord::symbol))
                .isNotEmpty();
    }
}
