package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.mantice.examples.MusicXmlSchema;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneReader;
import org.xml.sax.InputSource;

/** Reads and validates what was written. */
final class Written {
    private Written() {}

    static ReadTune read(byte[] bytes) {
        return new TuneReader().read("written.musicxml", bytes, ReadOptions.DEFAULT);
    }

    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** As any other program reads it: nothing tells who wrote the file. */
    static ReadTune readWithoutOurName(byte[] bytes) {
        String text = text(bytes);
        assertThat(text).contains("<software>Mantice</software>");
        return read(text.replace("<software>Mantice</software>", "").getBytes(StandardCharsets.UTF_8));
    }

    static MusicXmlSchema schema() throws Exception {
        Optional<MusicXmlSchema> schema = MusicXmlSchema.find();
        Assumptions.assumeTrue(schema.isPresent(), "the corpus with the schema is absent");
        return schema.orElseThrow();
    }

    static List<String> problems(MusicXmlSchema schema, byte[] bytes) throws Exception {
        return schema.problems(new InputSource(new ByteArrayInputStream(bytes)));
    }
}
