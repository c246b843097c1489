package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.RegisterSign.Triple;

/** Names, code points and stops: SMuFL's glyph table. */
class RegisterSignTest {
    @Test
    void well_known_signs_have_their_published_code_points() {
        assertThat(RegisterSign.BASSOON.codePoint()).isEqualTo(0xE8A4);
        assertThat(RegisterSign.CLARINET.codePoint()).isEqualTo(0xE8A1);
        assertThat(RegisterSign.MASTER.codePoint()).isEqualTo(0xE8AD);
    }

    @Test
    void every_sign_agrees_with_the_metadata_of_the_standard() throws Exception {
        String corpus = System.getProperty("mantice.corpus", "");
        Path file = Path.of(corpus, "smufl-metadata", "glyphnames.json");
        Assumptions.assumeTrue(!corpus.isEmpty() && Files.exists(file), "no corpus: " + file + " is not there");
        JsonNode glyphs = new ObjectMapper().readTree(Files.readAllBytes(file));

        for (RegisterSign sign : RegisterSign.values()) {
            JsonNode glyph = glyphs.path(sign.glyphName());
            assertThat(glyph.path("codepoint").asText()).isEqualTo("U+%04X", sign.codePoint());
            assertThat(stops(glyph.path("description").asText())).isEqualTo(sign.banks());
        }
        assertThat(RegisterSign.values()).hasSize(20);
    }

    private static Set<ReedBank> stops(String description) {
        Set<ReedBank> banks = EnumSet.noneOf(ReedBank.class);
        for (String stop : description
                .replaceAll("^Right hand, 3 ranks, | \\(.*\\)$| stop", "")
                .split(" \\+ "))
            banks.add(
                    switch (stop) {
                        case "4'" -> ReedBank.HIGH_4;
                        case "8'" -> ReedBank.MIDDLE_8;
                        case "16'" -> ReedBank.LOW_16;
                        case "lower tremolo 8'" -> ReedBank.TREMOLO_LOWER_8;
                        case "upper tremolo 8'" -> ReedBank.TREMOLO_UPPER_8;
                        default -> throw new AssertionError("unknown stop " + stop);
                    });
        return banks;
    }

    /** Of the eighteen named registers; a tremolo rank alone is written like the clarinet besides. */
    @Test
    void three_triples_are_written_alike_by_two_registers_and_the_rest_by_one() {
        Set<RegisterSign> alone = EnumSet.of(RegisterSign.UPPER_TREMOLO_8, RegisterSign.LOWER_TREMOLO_8);
        Set<Triple> ambiguous = Set.of(new Triple(0, 2, 0), new Triple(1, 2, 0), new Triple(0, 2, 1));

        for (RegisterSign sign : EnumSet.complementOf(EnumSet.copyOf(alone))) {
            List<RegisterSign> alike = RegisterSign.ofTriple(sign.triple()).stream()
                    .filter(other -> !alone.contains(other))
                    .toList();
            if (!ambiguous.contains(sign.triple())) assertThat(alike).containsExactly(sign);
            else assertThat(alike).hasSize(2);
        }
        assertThat(RegisterSign.ofTriple(new Triple(0, 1, 0)))
                .containsExactly(RegisterSign.CLARINET, RegisterSign.UPPER_TREMOLO_8, RegisterSign.LOWER_TREMOLO_8);
    }

    @Test
    void every_set_of_banks_has_a_sign_with_its_octaves_and_number_of_reeds() {
        for (int mask = 1; mask < 32; mask++) {
            Set<ReedBank> banks = EnumSet.noneOf(ReedBank.class);
            for (ReedBank bank : ReedBank.values()) if ((mask & 1 << bank.ordinal()) != 0) banks.add(bank);

            Optional<RegisterSign> sign = RegisterSign.closest(banks);

            assertThat(sign).hasValueSatisfying(one -> assertThat(one.triple()).isEqualTo(Triple.of(banks)));
            assertThat(Triple.of(banks).reedsPerKey()).isEqualTo(banks.size());
        }
        assertThat(RegisterSign.closest(Set.of())).isEmpty();
    }

    @Test
    void the_usual_master_of_four_ranks_has_no_sign_of_its_own() {
        Set<ReedBank> banks = EnumSet.of(ReedBank.LOW_16, ReedBank.MIDDLE_8, ReedBank.TREMOLO_UPPER_8, ReedBank.HIGH_4);

        assertThat(RegisterSign.exactly(banks)).isEmpty();
        assertThat(RegisterSign.closest(banks)).contains(RegisterSign.MASTER);
    }

    /** MusicXML 4.0, accordion-registration: the text asks for at least one, the middle is 1 to 3. */
    @Test
    void a_triple_outside_the_standard_is_refused() {
        assertThatThrownBy(() -> new Triple(0, 0, 0)).hasMessageContaining("at least one bank");
        assertThatThrownBy(() -> new Triple(0, 4, 0)).hasMessage("middle is 4; allowed: 0 to 3");
        assertThatThrownBy(() -> new Triple(2, 1, 0)).hasMessage("high is 2; allowed: 0 or 1");
        assertThatThrownBy(() -> new Triple(0, 1, -1)).hasMessage("low is -1; allowed: 0 or 1");
    }
}
