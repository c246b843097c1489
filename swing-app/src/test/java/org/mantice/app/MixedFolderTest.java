package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.Calls.Answer;
import org.mantice.file.PlanFile;
import org.mantice.reading.TuneReader;

/** The command line on a folder of mixed files, found by what they hold. */
class MixedFolderTest {
    @TempDir
    private Path temporary;

    private Path folder;
    private Path out;

    @BeforeEach
    void fill() throws IOException {
        folder = MixedFolder.fill(temporary.resolve("Zoë's tunes"));
        out = temporary.resolve("ce qu'on a fait");
    }

    private void tellsOthersOnly(Answer answer) {
        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.err().lines().filter(line -> line.endsWith(": no tune, left out")))
                .containsExactlyInAnyOrderElementsOf(MixedFolder.OTHERS.stream()
                        .map(other -> folder.resolve(other) + ": no tune, left out")
                        .toList());
    }

    @Test
    void checkReadsEveryTuneAndTellsWhatIsNone() {
        Answer answer = call("check", folder);

        tellsOthersOnly(answer);
        for (String name : MixedFolder.TUNES.keySet())
            assertThat(answer.out()).contains(MixedFolder.find(folder, name) + ": ");
        assertThat(answer.out()).doesNotContain("Hidden", ".hidden");
    }

    @Test
    void planPlansEachAndItsPlansAreCheckedAndExplainedAsAFolder() throws IOException {
        Answer planned = call("plan", folder, "--alternatives", 1, "--out", out);

        tellsOthersOnly(planned);
        assertThat(planned.err())
                .contains(MixedFolder.TUNES.size() + " tunes: " + MixedFolder.TUNES.size() + " planned");
        try (Stream<Path> plans = Files.list(out)) {
            assertThat(plans.map(plan -> PlanFile.read(plan).document().tune().title()))
                    .containsExactlyInAnyOrderElementsOf(MixedFolder.TUNES.values());
        }
        assertThat(call("check", out).out().lines())
                .hasSize(MixedFolder.TUNES.size())
                .allMatch(line -> line.endsWith("priced anew: the same"));
        Answer explained = call("explain", out);
        assertThat(explained.code()).as(explained.err()).isZero();
        assertThat(explained.out())
                .contains(out.resolve("d'été à Noël.plan.json").toString());
    }

    @Test
    void writeWritesEachAndWhatIsWrittenReadsBack() throws IOException {
        tellsOthersOnly(call("write", folder, "--out", out));

        try (Stream<Path> written = Files.list(out)) {
            assertThat(written.map(file -> new TuneReader().read(file).tune().title()))
                    .containsExactlyInAnyOrderElementsOf(MixedFolder.TUNES.values());
        }
    }

    @Test
    void aPlanThatCannotBeExplainedNeverStopsTheRest() throws IOException {
        call("plan", MixedFolder.find(folder, "wide.abc"), "--alternatives", 1, "--out", out);
        Files.writeString(out.resolve("a damaged one.plan.json"), "{");

        Answer answer = call("explain", out);

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.err().lines()).singleElement().asString().contains("a damaged one.plan.json");
        assertThat(answer.out()).contains("wide.plan.json");
    }

    @Test
    void aPlanIsKnownByItsContentWhateverItsName() throws IOException {
        call("plan", MixedFolder.find(folder, "wide.abc"), "--alternatives", 1, "--out", out);
        Path renamed = Files.move(out.resolve("wide.plan.json"), out.resolve("renamed by someone"));

        assertThat(call("check", renamed).out()).contains("priced anew: the same");
    }

    @Test
    void aFolderWithoutAnyTuneIsAWrongCall() throws IOException {
        Path letters = Files.createDirectory(temporary.resolve("letters"));
        Files.writeString(letters.resolve("letter.txt"), "Dear Runa");

        Answer answer = call("plan", letters);

        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err()).contains("nothing to do in folder");
    }
}
