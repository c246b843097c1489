package org.mantice.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.fault.FilePlace;
import org.mantice.json.JsonFileException;
import org.mantice.pattern.BassPatterns;

class PatternFileTest {
    private static final FilePlace HERE = FilePlace.of("mine.patterns.json");
    private static final String MINE = """
            {
              "format" : "mantice-patterns",
              "version" : "0.1",
              "mood" : "blue",
              "patterns" : [ {
                "id" : "mine",
                "names" : { "en" : "Mine" },
                "source" : "made up",
                "meters" : [ "3/4" ],
                "strokes" : [
                  { "at" : "0", "part" : "bass", "bass" : "turn", "soundsPerMille" : 600, "colour" : 3 },
                  { "at" : "3/2", "part" : "chord", "soundsPerMille" : 500 }
                ],
                "strokesBeforeChange" : [
                  { "at" : "0", "part" : "both", "bass" : "root", "soundsPerMille" : 600 },
                  { "at" : "2", "part" : "bass", "bass" : "run", "soundsPerMille" : 800 }
                ]
              } ]
            }
            """;

    @TempDir
    Path folder;

    private static PatternFile parse(String text) {
        return PatternFile.parse(text.getBytes(StandardCharsets.UTF_8), HERE);
    }

    private static Schema schema() throws IOException {
        try (InputStream in = PatternFile.class.getResourceAsStream("/org/mantice/schema/patterns.schema.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(text).contains("\"$schema\": \"https://json-schema.org/draft/2020-12/schema\"");
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
        }
    }

    @Test
    void shippedPatternsComeBackFromAFileAndFitTheSchema() throws IOException {
        Path file = folder.resolve("all" + PatternFile.SUFFIX);
        PatternFile.of(BassPatterns.shipped()).write(file);

        PatternFile read = PatternFile.read(file);

        assertThat(read.patterns()).isEqualTo(BassPatterns.shipped());
        assertThat(schema().validate(new String(read.bytes(), StandardCharsets.UTF_8), InputFormat.JSON))
                .isEmpty();
        try (InputStream shipped = BassPatterns.class.getResourceAsStream("shipped.patterns.json")) {
            String text = new String(shipped.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(schema().validate(text, InputFormat.JSON)).isEmpty();
        }
    }

    @Test
    void fieldsThatThisVersionDoesNotKnowAreKept() throws IOException {
        PatternFile read = parse(MINE);

        JsonNode again = new ObjectMapper().readTree(read.with(read.patterns()).bytes());

        assertThat(again.path("mood").asText()).isEqualTo("blue");
        assertThat(again.at("/patterns/0/strokes/0/colour").asInt()).isEqualTo(3);
        assertThat(parse(new String(read.bytes(), StandardCharsets.UTF_8)).patterns())
                .isEqualTo(read.patterns());
    }

    /** What is put in the place of what, and the refusal; most of it the schema refuses too. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"at\" : \"3/2\" | \"at\" : \"5\" | /patterns/0/meters | true",
                "\"at\" : \"3/2\" | \"at\" : \"0\" | later than the stroke before | true",
                "\"at\" : \"3/2\" | \"at\" : \"1/0\" | a whole number or a fraction | false",
                "\"at\" : \"3/2\" | \"at\" : 1 | /patterns/0/strokes/1/at is 1; allowed: a text | false",
                "\"at\" : \"3/2\" | \"at\" : \"999\" | /patterns/0/strokes/1/at is 999; allowed: from 0 | true",
                "\"part\" : \"chord\" | \"part\" : \"drum\" | is \"drum\"; allowed: bass, chord, both | false",
                "\"bass\" : \"turn\", | '' | bass is not there | true",
                "\"bass\" : \"turn\" | \"bass\" : \"run\" | /patterns/0/strokes/0/bass is RUN; allowed: another | true",
                "\"bass\" : \"root\" | \"bass\" : \"fifth\" | ROOT together with the chord | true",
                "\"soundsPerMille\" : 500 | \"soundsPerMille\" : 5 | allowed: 50 to 1000 | false",
                "\"id\" : \"mine\" | \"id\" : \"My own\" | /patterns/0/id is My own; allowed: 1 to 64 of a-z | false",
                "{ \"en\" : \"Mine\" } | { \"de\" : \"Meins\" } | one of them en | false",
                "\"3/4\" | \"3/5\" | /patterns/0/meters/0 is 3/5; allowed: as 3/4 or 3+2/8 | false",
                "[ \"3/4\" ] | [ ] | meters is 0 long; allowed: 1 to 64 | false",
                "[ \"3/4\" ] | \"3/4\" | a list of texts | false",
                "\"source\" : \"made up\", | '' | /patterns/0/source is missing | false",
                "\"version\" : \"0.1\" | \"version\" : \"1.0\" | a newer Mantice wrote | false",
            })
    void aWrongValueIsRefusedWithItsPlace(String old, String wrong, String words, boolean schemaAllows)
            throws IOException {
        String text = MINE.replace(old, wrong);
        assertThat(text).isNotEqualTo(MINE);

        assertThatThrownBy(() -> parse(text))
                .isInstanceOf(JsonFileException.class)
                .hasMessageStartingWith("mine.patterns.json, line ")
                .hasMessageContaining(words);
        assertThat(schema().validate(text, InputFormat.JSON).isEmpty()).isEqualTo(schemaAllows);
    }

    @Test
    void filesWithoutMeasureAreRefused() {
        String stroke = "{ \"at\" : \"0\", \"part\" : \"chord\", \"soundsPerMille\" : 500 },";
        String many = MINE.replace("\"strokes\" : [", "\"strokes\" : [" + stroke.repeat(5_000));
        assertThatThrownBy(() -> parse(many)).hasMessageContaining("strokes is 65 long; allowed: 1 to 64");
        assertThatThrownBy(() -> parse(" ".repeat(1_000_001))).hasMessageContaining("at most 1000000");
        assertThatThrownBy(() -> parse(MINE.replace("\"patterns\" : [", "\"patterns\" : [" + "{ },".repeat(200))))
                .hasMessageContaining("0 to 200 patterns");
        assertThatThrownBy(() ->
                        parse("{\"format\":\"mantice-patterns\",\"version\":\"0.1\",\"patterns\":" + "[".repeat(100)))
                .hasMessageContaining("nested more than 64 deep");
    }

    @Test
    void twoPatternsWithOneIdAreRefused() {
        String pattern = MINE.substring(MINE.indexOf("[ {") + 2, MINE.lastIndexOf("]"));
        assertThatThrownBy(() -> parse(MINE.replace("\"patterns\" : [", "\"patterns\" : [" + pattern + ",")))
                .hasMessageContaining("/patterns/1/id is \"mine\"; allowed: one that no other pattern has");
    }
}
