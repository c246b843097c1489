package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.file.PlanFile;

/** The command line with books of tunes in ABC and with folders of mixed files. */
class TuneBookTest {
    @TempDir
    private Path folder;

    private Path book;

    @BeforeEach
    void writeABook() throws IOException {
        StringBuilder text = new StringBuilder("M:4/4\nL:1/4\n\n");
        for (int i = 1; i <= 3; i++)
            text.append("X:")
                    .append(10 * i)
                    .append("\nT:Invented ")
                    .append(i)
                    .append("\nK:C\n\"C\"CEGE|\"G\"DGBd|\n\n");
        book = Files.writeString(folder.resolve("l'été.txt"), text.toString());
    }

    @Test
    void checkListsEveryTuneOfABook() {
        Calls.Answer answer = Calls.call("check", book);

        assertThat(answer.code()).isZero();
        assertThat(answer.out().lines())
                .hasSize(3)
                .first()
                .asString()
                .startsWith(book + ", 10 Invented 1: 2 measures, melody 1, staff 1");
    }

    @Test
    void oneTuneIsPickedByNumberTitleOrPlace() {
        for (String tune : List.of("20", "invented 2", "2", "#2"))
            assertThat(Calls.call("check", book, "--tune", tune).out()).startsWith(book + ": 2 measures");
        Calls.Answer wrong = Calls.call("check", book, "--tune", "Nowhere");
        assertThat(wrong.code()).isNotZero();
        assertThat(wrong.err())
                .contains("there is no tune \"Nowhere\"; allowed: 10 Invented 1, 20 Invented 2, 30 Invented 3");
    }

    @Test
    void everyTuneOfABookIsPlannedIntoAFileOfItsOwnThatFindsItsTuneAgain() throws IOException {
        Path out = folder.resolve("plans");

        Calls.Answer answer = Calls.call("plan", book, "--alternatives", "1", "--out", out);

        assertThat(answer.err()).contains("3 tunes: 3 planned");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("l'été-1.plan.json", "l'été-2.plan.json", "l'été-3.plan.json");
        }
        Path second = out.resolve("l'été-2.plan.json");
        assertThat(PlanFile.read(second).document().tune().entry()).isEqualTo("#2");
        assertThat(PlanFile.read(second).document().tune().title()).isEqualTo("Invented 2");
        assertThat(Calls.call("check", second).out()).contains("priced anew: the same");
    }

    @Test
    void aFolderOfMixedFilesIsReadByContentAndEnding() throws IOException {
        Files.move(book, folder.resolve("book.ABC"));
        Files.copy(Calls.tune("lanterns-at-the-weir"), folder.resolve("lanterns.xml"));
        Files.writeString(folder.resolve("notes.txt"), "no tune", StandardCharsets.UTF_8);

        Calls.Answer answer = Calls.call("check", folder);

        assertThat(answer.code()).isZero();
        assertThat(answer.out().lines().filter(line -> !line.startsWith(" "))).hasSize(4);
    }

    @Test
    void whatIsForgivenIsListedWithItsPlaceAndRefusedInStrictReading() throws IOException {
        Path tune = Files.writeString(folder.resolve("tune.abc"), "X:1\nM:4/4\nL:1/4\nK:C\nCDkEF|\n");

        assertThat(Calls.call("check", tune).out()).contains("  forgiven: k means nothing here (line 5, column 3)");
        Calls.Answer strict = Calls.call("check", tune, "--strict");
        assertThat(strict.code()).isNotZero();
        assertThat(strict.err()).startsWith(tune + ", line 5, column 3: k means nothing here; allowed in strict");
    }

    @Test
    void everyTuneOfABookIsWritten() throws IOException {
        Calls.Answer answer = Calls.call("write", book, "--out", folder.resolve("out"));

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines()).hasSize(3);
    }
}
