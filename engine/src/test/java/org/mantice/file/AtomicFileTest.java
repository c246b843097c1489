package org.mantice.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_new_file_is_written_and_nothing_else() throws IOException {
        AtomicFile.write(folder.resolve("a.json"), bytes("one"));

        assertThat(folder.resolve("a.json")).hasContent("one");
        assertThat(names()).containsExactly("a.json");
    }

    @Test
    void the_previous_file_is_kept_beside_the_new_one() throws IOException {
        Path file = folder.resolve("a.json");
        AtomicFile.write(file, bytes("one"));
        AtomicFile.write(file, bytes("two"));
        AtomicFile.write(file, bytes("three"));

        assertThat(file).hasContent("three");
        assertThat(AtomicFile.backupOf(file)).hasContent("two");
        assertThat(names()).containsExactly("a.json", "a.json.bak");
    }

    @Test
    void a_folder_that_is_not_there_is_refused_in_one_line() {
        Path file = folder.resolve("gone").resolve("a.json");

        assertThatThrownBy(() -> AtomicFile.write(file, bytes("one")))
                .isInstanceOf(FileWriteException.class)
                .hasMessage(file + ": cannot be written (no such folder); what was there before is unchanged");
    }

    @Test
    void a_folder_in_the_place_of_the_file_stays() throws IOException {
        Path file = Files.createDirectory(folder.resolve("a.json"));

        assertThatThrownBy(() -> AtomicFile.write(file, bytes("one")))
                .isInstanceOf(FileWriteException.class)
                .hasMessageContaining("it is a folder");
        assertThat(file).isEmptyDirectory();
        assertThat(names()).containsExactly("a.json");
    }

    @Test
    void where_the_backup_cannot_be_made_the_file_stays_as_it_was() throws IOException {
        Path file = folder.resolve("a.json");
        AtomicFile.write(file, bytes("one"));
        Files.createDirectories(AtomicFile.backupOf(file).resolve("in the way"));

        assertThatThrownBy(() -> AtomicFile.write(file, bytes("two"))).isInstanceOf(FileWriteException.class);
        assertThat(file).hasContent("one");
        assertThat(names()).containsExactly("a.json", "a.json.bak");
    }

    @Test
    void a_symbolic_link_keeps_pointing_to_the_file() throws IOException {
        Path target = folder.resolve("target.json");
        Path link = folder.resolve("link.json");
        AtomicFile.write(target, bytes("one"));
        try {
            Files.createSymbolicLink(link, target);
        } catch (IOException | UnsupportedOperationException e) {
            Assumptions.abort("no symbolic links here: " + e.getMessage());
        }

        AtomicFile.write(link, bytes("two"));

        assertThat(link).isSymbolicLink();
        assertThat(target).hasContent("two");
    }

    @Test
    void a_reader_never_sees_half_a_file() throws Exception {
        Path file = folder.resolve("a.json");
        String one = "1".repeat(200_000);
        String two = "2".repeat(200_000);
        AtomicFile.write(file, bytes(one));
        Thread writer = new Thread(() -> {
            for (int i = 0; i < 30; i++) AtomicFile.write(file, bytes(i % 2 == 0 ? two : one));
        });
        writer.start();

        int reads = 0;
        do {
            assertThat(Files.readString(file)).isIn(one, two);
            reads++;
        } while (writer.isAlive());

        writer.join();
        assertThat(reads).isPositive();
    }
}
