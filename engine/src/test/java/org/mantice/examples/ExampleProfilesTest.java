package org.mantice.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.file.AccordionFile;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.player.Player;
import org.mantice.plugin.Packs;

class ExampleProfilesTest {
    @ParameterizedTest
    @ValueSource(strings = {"accordion", "player"})
    void everyFileFollowsItsSchema(String kind) throws IOException {
        Schema schema = schema(kind);

        assertThat(files(kind)).hasSize(3).allSatisfy(file -> assertThat(
                        schema.validate(Files.readString(file), InputFormat.JSON))
                .isEmpty());
    }

    @Test
    void aFileIsNamedAfterTheIdInIt() throws IOException {
        assertThat(files("accordion"))
                .allSatisfy(file -> assertThat(file.getFileName().toString())
                        .isEqualTo(AccordionFile.read(file).accordion().id() + AccordionFile.SUFFIX));
        assertThat(files("player"))
                .allSatisfy(file -> assertThat(file.getFileName().toString())
                        .isEqualTo(PlayerFile.read(file).player().id() + PlayerFile.SUFFIX));
    }

    @Test
    void thePupilsAccordionIsSmallAndWorn() throws IOException {
        Accordion small = accordions().stream()
                .filter(accordion -> accordion.treble().keys() == 26)
                .findFirst()
                .orElseThrow();

        assertThat(small.bass().buttons()).isEqualTo(48);
        assertThat(small.treble().switches()).extracting(RegisterSwitch::works).contains(true, false);
        assertThat(accordions())
                .extracting(accordion -> accordion.bellows().turnMillis())
                .allSatisfy(millis ->
                        assertThat(millis).isLessThanOrEqualTo(small.bellows().turnMillis()));
    }

    @Test
    void theAccordionsAreOfThreeSizes() throws IOException {
        assertThat(accordions())
                .extracting(accordion ->
                        accordion.treble().keys() + "/" + accordion.bass().buttons())
                .containsExactly("41/120", "26/48", "34/72");
    }

    @Test
    void thePlayersDifferInHandAndMethod() throws IOException {
        assertThat(players()).extracting(Player::handSpanTenths).doesNotHaveDuplicates();
        assertThat(players()).extracting(Player::bassMethod).doesNotHaveDuplicates();
    }

    @Test
    void everyTasteNamesRulesThatExist() throws IOException {
        List<String> ids = Packs.ofClassPath().providers().stream()
                .flatMap(provider -> provider.rules().stream())
                .map(rule -> rule.info().id())
                .toList();

        assertThat(players())
                .allSatisfy(player -> assertThat(player.taste().weights().keySet())
                        .isNotEmpty()
                        .isSubsetOf(ids));
    }

    private static List<Accordion> accordions() throws IOException {
        return files("accordion").stream()
                .map(file -> AccordionFile.read(file).accordion())
                .toList();
    }

    private static List<Player> players() throws IOException {
        return files("player").stream()
                .map(file -> PlayerFile.read(file).player())
                .toList();
    }

    private static List<Path> files(String kind) throws IOException {
        try (Stream<Path> files = Files.list(ExampleFiles.folder(kind + "s"))) {
            return files.sorted().toList();
        }
    }

    private static Schema schema(String kind) throws IOException {
        try (InputStream in = AccordionFile.class.getResourceAsStream("/org/mantice/schema/" + kind + ".schema.json")) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
        }
    }
}
