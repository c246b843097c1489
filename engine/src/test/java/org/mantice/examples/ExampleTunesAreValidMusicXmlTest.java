package org.mantice.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Source: W3C MusicXML 4.0, musicxml.xsd. */
class ExampleTunesAreValidMusicXmlTest {
    private static Optional<MusicXmlSchema> schema = Optional.empty();

    @BeforeAll
    static void findSchema() throws SAXException {
        schema = MusicXmlSchema.find();
        assumeTrue(schema.isPresent(), "the corpus with the MusicXML 4.0 schema is not here");
    }

    static Stream<Path> tunes() throws IOException {
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            return files.filter(file -> file.toString().endsWith(".musicxml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void aTuneFollowsTheSchema(Path tune) throws Exception {
        assertThat(schema.orElseThrow().problems(new InputSource(tune.toUri().toString())))
                .isEmpty();
    }

    @Test
    void thereAreEightTunes() throws IOException {
        assertThat(tunes()).hasSize(8);
    }

    @Test
    void theSchemaFindsAPlantedError() throws Exception {
        String text = Files.readString(tunes().findFirst().orElseThrow());

        String spoilt = text.replaceFirst("<octave>4</octave>", "<octave>high</octave>");

        assertThat(spoilt).isNotEqualTo(text);
        assertThat(schema.orElseThrow().problems(new InputSource(new StringReader(spoilt))))
                .isNotEmpty()
                .anyMatch(problem -> problem.contains("octave"));
    }
}
