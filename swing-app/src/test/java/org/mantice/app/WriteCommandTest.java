package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.examples;
import static org.mantice.app.Calls.tune;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.app.Calls.Answer;
import org.mantice.file.PlanFile;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Mark;
import org.mantice.tune.Tune;

class WriteCommandTest {
    @TempDir
    Path folder;

    private static Tune read(Path file) {
        return new TuneReader().read(file).tune();
    }

    @ParameterizedTest
    @ValueSource(strings = {"musicxml", "mxl"})
    void tunesAreWrittenAndAreTheSameTunes(String format) {
        Answer answer =
                call("write", tune("the-rusty-gate"), tune("the-ropewalk-march"), "--out", folder, "--as", format);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines()).hasSize(2).allMatch(line -> line.endsWith("." + format));
        for (String name : new String[] {"the-rusty-gate", "the-ropewalk-march"})
            assertThat(read(folder.resolve(name + "." + format))).isEqualTo(read(tune(name)));
    }

    @Test
    void everyTimeThroughIsWrittenOutOnRequest() {
        Answer answer = call("write", tune("the-rusty-gate"), "--out", folder, "--unrolled", "--times", 2);

        assertThat(answer.code()).as(answer.err()).isZero();
        Tune unrolled = read(folder.resolve("the-rusty-gate.musicxml"));
        assertThat(unrolled.measures())
                .hasSizeGreaterThanOrEqualTo(
                        2 * read(tune("the-rusty-gate")).measures().size());
        assertThat(unrolled.measures())
                .allMatch(measure -> measure.barlines().repeatEnd().isEmpty());
    }

    @Test
    void aPlansTuneCarriesTheRegistersOfItsPasses() {
        Answer answer = call("write", examples().resolve("plans/lanterns-at-the-weir.plan.json"), "--out", folder);

        assertThat(answer.code()).as(answer.err()).isZero();
        Tune written = read(folder.resolve("lanterns-at-the-weir.musicxml"));
        assertThat(written.measures())
                .anyMatch(measure -> measure.marks().stream().anyMatch(Mark.Registration.class::isInstance));
    }

    @Test
    void aPlansLeftHandIsWrittenAsABassStaffOnRequest() {
        Path plan = examples().resolve("plans/lanterns-at-the-weir.plan.json");

        Answer answer = call("write", plan, "--out", folder, "--bass-staff");

        assertThat(answer.code()).as(answer.err()).isZero();
        Tune written = read(folder.resolve("lanterns-at-the-weir.musicxml"));
        long pressed = PlanFile.read(plan).document().plan().leftHand().events().stream()
                .mapToLong(event -> event.buttons().size())
                .sum();
        assertThat(written.measures().stream()
                        .flatMap(measure -> measure.bass().stream())
                        .filter(event -> !event.isRest()))
                .hasSize((int) pressed);
    }

    @Test
    void aBassStaffIsWrittenOfPlansAlone() {
        Answer answer = call("write", tune("the-rusty-gate"), "--out", folder, "--bass-staff");

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.err()).contains("--bass-staff", "allowed: for plans");
        assertThat(folder.resolve("the-rusty-gate.musicxml")).doesNotExist();
    }

    @Test
    void aTuneIsNeverWrittenOverItselfAndABadOneNeverStopsTheRest() throws IOException {
        Path own = Files.copy(tune("the-rusty-gate"), folder.resolve("own.musicxml"));
        byte[] before = Files.readAllBytes(own);
        Files.writeString(folder.resolve("bad.musicxml"), "<score-partwise>");

        Answer answer = call("write", own, folder.resolve("bad.musicxml"), tune("the-ropewalk-march"), "--out", folder);

        assertThat(answer.code()).isEqualTo(1);
        assertThat(Files.readAllBytes(own)).isEqualTo(before);
        assertThat(answer.err().lines()).hasSize(2);
        assertThat(answer.err()).contains("own.musicxml: out is the tune's own folder", "bad.musicxml");
        assertThat(folder.resolve("the-ropewalk-march.musicxml")).exists();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "write x.musicxml",
                "write x.musicxml --out o --as pdf",
                "write x.musicxml --out o --unrolled --times 0"
            })
    void aWrongCallIsOneLine(String words) {
        Answer answer = call((Object[]) words.split(" "));

        assertThat(answer.code()).as(answer.err()).isEqualTo(2);
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).contains("allowed");
    }
}
