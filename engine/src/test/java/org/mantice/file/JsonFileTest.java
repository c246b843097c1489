package org.mantice.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.fault.FilePlace;
import org.mantice.instrument.AccordionPresets;
import org.mantice.json.JsonFileException;

class JsonFileTest {
    private static final FilePlace PLACE = FilePlace.of("mine.json");

    @TempDir
    Path folder;

    private static void refused(String text, String message) {
        assertThatThrownBy(() -> AccordionFile.parse(text.getBytes(StandardCharsets.UTF_8), PLACE))
                .isInstanceOf(JsonFileException.class)
                .hasMessage(message);
    }

    @Test
    void an_empty_file_is_refused() {
        refused("", "mine.json: the file is empty; allowed: a JSON object");
        refused(" \n\t", "mine.json: the file is empty; allowed: a JSON object");
    }

    @Test
    void a_file_that_ends_in_the_middle_is_refused_with_the_line() {
        refused(
                "{\n\"id\": \"a\",\n",
                "mine.json, line 3: the file ends in the middle; " + "allowed: a complete JSON object");
    }

    @Test
    void another_value_than_an_object_is_refused() {
        refused("[1]", "mine.json: the file holds a list; allowed: a JSON object");
        refused("5", "mine.json: the file holds 5; allowed: a JSON object");
    }

    @Test
    void a_field_that_comes_twice_is_refused_with_the_line() {
        refused(
                "{\"id\": 1,\n\"id\": 2}",
                "mine.json, line 2: the field \"id\" comes twice in one object; " + "allowed: once");
    }

    @Test
    void deep_nesting_is_refused() {
        String message = ": values are nested more than 64 deep; allowed: at most 64";
        refused("{\"a\":" + "[".repeat(65), "mine.json, line 1" + message);
        refused("{\"a\":" + "{\"a\":".repeat(100_000), "mine.json, line 1" + message);
    }

    @Test
    void what_is_no_json_is_refused_in_one_line() {
        for (String text : new String[] {
            "{\"id\": NaN}",
            "{\"id\": Infinity}",
            "{'id': 1}",
            "{\"id\": 01}",
            "{\"id\": 1,}",
            "{id: 1}",
            "{} trailing",
            "{} {}",
            "{\"id\": \"a\nb\"}",
            "// comment\n{}",
            "hello",
            "<score-partwise/>",
            "{\"a\":\"\\x\"}"
        })
            assertThatThrownBy(() -> AccordionFile.parse(text.getBytes(StandardCharsets.UTF_8), PLACE))
                    .as(text)
                    .isInstanceOf(JsonFileException.class)
                    .hasMessageMatching(
                            "mine\\.json, line [0-9]+: the JSON is damaged \\(.*\\); allowed: JSON after RFC 8259");
    }

    @Test
    void other_encodings_than_utf_8_are_refused_and_a_byte_order_mark_is_not() {
        byte[] latin = "{\"name\": \"Börse\"}".getBytes(StandardCharsets.ISO_8859_1);
        byte[] good = AccordionFile.of(AccordionPresets.get("standard-34-key-72-bass"))
                .bytes();
        byte[] marked = ("\uFEFF" + new String(good, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);

        assertThatThrownBy(() -> AccordionFile.parse(latin, PLACE))
                .hasMessage("mine.json: the text is not valid UTF-8; allowed: UTF-8");
        assertThatThrownBy(() -> AccordionFile.parse("{}".getBytes(Charset.forName("UTF-16")), PLACE))
                .isInstanceOf(JsonFileException.class);
        assertThat(AccordionFile.parse(marked, PLACE).accordion().id()).isEqualTo("standard-34-key-72-bass");
    }

    @Test
    void a_huge_file_is_refused_unread() throws IOException {
        Path file = folder.resolve("huge.accordion.json");
        Files.write(file, new byte[1_000_001]);

        assertThatThrownBy(() -> AccordionFile.read(file))
                .hasMessage(file + ": the file has 1000001 bytes; allowed: at most 1000000");
    }

    @Test
    void a_file_that_is_not_there_and_a_folder_are_refused() {
        Path missing = folder.resolve("missing.accordion.json");

        assertThatThrownBy(() -> AccordionFile.read(missing)).hasMessage(missing + ": no such file");
        assertThatThrownBy(() -> AccordionFile.read(folder)).hasMessage(folder + ": cannot be read: it is a folder");
    }

    @Test
    void every_cut_of_a_good_file_is_refused_in_one_line() {
        byte[] good = AccordionFile.of(AccordionPresets.get("beginner-26-key-12-bass"))
                .bytes();
        int last = new String(good, StandardCharsets.UTF_8).lastIndexOf('}');
        for (int length = 0; length <= last; length += 7) {
            byte[] cut = Arrays.copyOf(good, length);
            assertThatThrownBy(() -> AccordionFile.parse(cut, PLACE))
                    .isInstanceOf(JsonFileException.class)
                    .satisfies(
                            e -> assertThat(e.getMessage()).doesNotContain("\n").hasSizeLessThan(700));
        }
    }

    @Test
    void a_byte_changed_at_random_is_read_or_refused_in_one_line() {
        Random random = new Random(20_260_101);
        byte[] good = AccordionFile.of(AccordionPresets.get("beginner-26-key-12-bass"))
                .bytes();
        int refused = 0;
        for (int i = 0; i < 2_000; i++) {
            byte[] changed = good.clone();
            changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            try {
                AccordionFile.parse(changed, PLACE);
            } catch (JsonFileException e) {
                refused++;
                assertThat(e.getMessage())
                        .startsWith("mine.json")
                        .doesNotContain("\n")
                        .hasSizeLessThan(700);
            }
        }
        assertThat(refused).isGreaterThan(1_000);
    }

    @Test
    void a_long_value_is_cut_in_the_message() {
        String text = "{\"format\": \"" + "x".repeat(100_000) + "\"}";

        assertThatThrownBy(() -> AccordionFile.parse(text.getBytes(StandardCharsets.UTF_8), PLACE))
                .satisfies(e -> assertThat(e.getMessage()).contains("…").hasSizeLessThan(400));
    }
}
