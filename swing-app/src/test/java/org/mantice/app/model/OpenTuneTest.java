package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneReader;

class OpenTuneTest {
    @Test
    void aTuneIsCalledByItsTitle() {
        assertThat(new OpenTune("somewhere/reed.abc", read("T:Reed and Willow\n"), Optional.empty()).name())
                .isEqualTo("Reed and Willow");
    }

    @ParameterizedTest
    @ValueSource(strings = {"reed.abc", "some where/reed.abc", "C:\\tunes\\reed.abc"})
    void oneWithoutTitleIsCalledByItsFile(String file) {
        assertThat(new OpenTune(file, read(""), Optional.empty()).name()).isEqualTo("reed.abc");
    }

    private static ReadTune read(String title) {
        String text = "X:1\n" + title + "M:3/4\nL:1/4\nK:G\nGAB|\n";
        return new TuneReader().read("reed.abc", text.getBytes(StandardCharsets.UTF_8), ReadOptions.DEFAULT);
    }
}
