package org.mantice.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.fault.FilePlace;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.ButtonGeometry;
import org.mantice.instrument.SingleButtons;
import org.mantice.instrument.StradellaBass;
import org.mantice.json.JsonFile;
import org.mantice.json.JsonFileException;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;

class ProfileFileTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final FilePlace PLACE = FilePlace.of("mine.json");
    private static final Accordion FULL = worn(AccordionPresets.get("full-41-key-120-bass"));
    private static final Player MEDIUM = new Player(
            "anna",
            "Anna",
            95,
            PlayerPresets.get("medium-hand").bassMethod(),
            PlayerPresets.get("medium-hand").jumps(),
            true,
            PlayerPresets.get("medium-hand").taste().with("bellows.evenness", 1_500));

    @TempDir
    Path folder;

    /** With a gap, a broken button, a moved row and measured places. */
    private static Accordion worn(Accordion preset) {
        StradellaBass usual = preset.bass().displaced(BassRow.DIMINISHED, -1);
        ButtonGeometry measured = new ButtonGeometry(
                17_500, 14_000, 8_000, 9_000, Map.of(BassRow.COUNTERBASS, new ButtonGeometry.Offset(-500, 250)), true);
        SingleButtons singles = usual.singles()
                .withMissing(Set.of(new BassButton(BassRow.BASS, -9)))
                .withBroken(Set.of(new BassButton(BassRow.BASS, 10)));
        return new Accordion(
                preset.id(),
                preset.name(),
                preset.treble(),
                new StradellaBass(usual.rows(), singles, measured, usual.sound()),
                preset.bellows());
    }

    private static Schema schema(String name) throws IOException {
        try (InputStream in = schemaStream(name)) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
        }
    }

    private static InputStream schemaStream(String name) {
        return AccordionFile.class.getResourceAsStream("/org/mantice/schema/" + name + ".schema.json");
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static byte[] bytes(JsonNode node) {
        return node.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static ObjectNode accordionTree() {
        return tree(AccordionFile.of(FULL).bytes());
    }

    private static ObjectNode playerTree() {
        return tree(PlayerFile.of(MEDIUM).bytes());
    }

    private static ObjectNode tree(byte[] bytes) {
        try {
            return (ObjectNode) MAPPER.readTree(bytes);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void the_schemas_are_of_draft_2020_12() throws IOException {
        for (String name : List.of("accordion", "player"))
            try (InputStream in = schemaStream(name)) {
                assertThat(MAPPER.readTree(in).path("$schema").asText())
                        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
            }
    }

    @Test
    void every_accordion_preset_comes_back_from_its_file_and_fits_the_schema() throws IOException {
        Schema schema = schema("accordion");
        for (Accordion accordion : AccordionPresets.all()) {
            Path file = folder.resolve(accordion.id() + AccordionFile.SUFFIX);
            AccordionFile.of(accordion).write(file);

            assertThat(AccordionFile.read(file).accordion()).isEqualTo(accordion);
            assertThat(AccordionFile.read(file).bytes())
                    .isEqualTo(AccordionFile.of(accordion).bytes());
            assertThat(schema.validate(text(AccordionFile.of(accordion).bytes()), InputFormat.JSON))
                    .isEmpty();
        }
    }

    @Test
    void every_player_preset_comes_back_from_its_file_and_fits_the_schema() throws IOException {
        Schema schema = schema("player");
        List<Player> players = new ArrayList<>(PlayerPresets.all());
        players.add(MEDIUM);
        for (Player player : players) {
            Path file = folder.resolve(player.id() + PlayerFile.SUFFIX);
            PlayerFile.of(player).write(file);

            assertThat(PlayerFile.read(file).player()).isEqualTo(player);
            assertThat(PlayerFile.read(file).bytes())
                    .isEqualTo(PlayerFile.of(player).bytes());
            assertThat(schema.validate(text(PlayerFile.of(player).bytes()), InputFormat.JSON))
                    .isEmpty();
        }
    }

    @Test
    void an_instrument_without_bass_comes_back_from_its_file() throws IOException {
        Accordion without = new Accordion("no-bass", "No bass", FULL.treble(), StradellaBass.none(), FULL.bellows());

        byte[] bytes = AccordionFile.of(without).bytes();

        assertThat(AccordionFile.parse(bytes, PLACE).accordion()).isEqualTo(without);
        assertThat(schema("accordion").validate(text(bytes), InputFormat.JSON)).isEmpty();
    }

    /** Files of ours as version 0.1 wrote them; every later version must read them. */
    @Test
    void stored_files_of_version_0_1_are_read() throws IOException {
        try (InputStream accordion = getClass().getResourceAsStream("0.1/village.accordion.json");
                InputStream player = getClass().getResourceAsStream("0.1/anna.player.json")) {
            byte[] stored = accordion.readAllBytes();
            AccordionFile file = AccordionFile.parse(stored, PLACE);
            assertThat(file.accordion().bass()).isEqualTo(StradellaBass.ofSize(72));
            assertThat(schema("accordion").validate(text(stored), InputFormat.JSON))
                    .isEmpty();
            JsonNode again = tree(file.bytes());
            assertThat(again.at("/version").asText()).isEqualTo("0.2");
            assertThat(again.at("/bass/columns").isMissingNode()).isTrue();
            assertThat(AccordionFile.parse(file.bytes(), PLACE).accordion()).isEqualTo(file.accordion());
            assertThat(PlayerFile.parse(player.readAllBytes(), PLACE).player()).isEqualTo(MEDIUM);
        }
    }

    /** As 0.2 writes it: rows of their own, one of them moved, a gap, a broken button, measured places. */
    @Test
    void the_stored_accordion_of_version_0_2_is_read() throws IOException {
        try (InputStream stored = getClass().getResourceAsStream("0.2/ragged.accordion.json")) {
            StradellaBass bass = AccordionFile.parse(stored.readAllBytes(), PLACE)
                    .accordion()
                    .bass();

            assertThat(bass.rows()).hasSize(5);
            assertThat(bass.buttons()).isEqualTo(12 + 16 + 16 + 12 + 12 - 1);
            assertThat(bass.place(new BassButton(BassRow.DIMINISHED, 0))).isEqualTo(-1);
            assertThat(bass.singles().broken()).containsExactly(new BassButton(BassRow.MINOR, 3));
            assertThat(bass.markedPlaces()).containsExactly(-4, 0);
            assertThat(bass.geometry().measured()).isTrue();
        }
    }

    @Test
    void fields_that_we_do_not_know_are_kept_wherever_they_stand() {
        ObjectNode tree = accordionTree();
        tree.put("owner", "village band");
        tree.withObject("/treble").putObject("pads").put("material", "felt");
        ((ObjectNode) tree.at("/treble/switches/2")).put("colour", "ivory");
        ((ObjectNode) tree.at("/bellows/volumes/1")).put("note", "measured twice");
        ((ObjectNode) tree.at("/bellows/appetites/banks")).put("quint", 700);
        tree.putArray("repairs").add(1.50).add("new straps");

        AccordionFile file = AccordionFile.parse(bytes(tree), PLACE);
        RenamedSwitches renamed = new RenamedSwitches(file.accordion());
        JsonNode again = tree(file.with(renamed.accordion()).bytes());

        assertThat(again.at("/name").asText()).isEqualTo("Renamed");
        assertThat(again.at("/owner").asText()).isEqualTo("village band");
        assertThat(again.at("/treble/pads/material").asText()).isEqualTo("felt");
        assertThat(again.at("/treble/switches/1/id")).isEqualTo(tree.at("/treble/switches/2/id"));
        assertThat(again.at("/treble/switches/1/colour").asText()).isEqualTo("ivory");
        assertThat(again.at("/bellows/volumes/1/note").asText()).isEqualTo("measured twice");
        assertThat(again.at("/bellows/appetites/banks/quint").asInt()).isEqualTo(700);
        assertThat(again.at("/repairs")).isEqualTo(tree.at("/repairs"));
    }

    /** Another name and no first switch. */
    private record RenamedSwitches(Accordion before) {
        Accordion accordion() {
            var treble = new org.mantice.instrument.TrebleKeyboard(
                    before.treble().lowestMidi(),
                    before.treble().highestMidi(),
                    before.treble().whiteKeyMicrons(),
                    before.treble()
                            .switches()
                            .subList(1, before.treble().switches().size()));
            return new Accordion(before.id(), "Renamed", treble, before.bass(), before.bellows());
        }
    }

    @Test
    void numbers_that_we_do_not_know_keep_every_digit() {
        String text = text(PlayerFile.of(MEDIUM).bytes())
                .replaceFirst("\\{", "{ \"pi\": 3.14159265358979323846264338327950, \"long\": 12345678901234567890,");

        assertThat(text(PlayerFile.parse(text.getBytes(StandardCharsets.UTF_8), PLACE)
                        .bytes()))
                .contains("3.14159265358979323846264338327950", "12345678901234567890");
    }

    @Test
    void a_weight_taken_out_stays_out_when_written_again() {
        PlayerFile file = PlayerFile.parse(PlayerFile.of(MEDIUM).bytes(), PLACE);

        assertThat(text(file.with(PlayerPresets.get("large-hand")).bytes())).doesNotContain("bellows.evenness");
    }

    @Test
    void a_newer_minor_version_is_read_and_keeps_its_number() {
        ObjectNode tree = playerTree().put("version", "0.7").put("later", true);

        PlayerFile file = PlayerFile.parse(bytes(tree), PLACE);

        assertThat(tree(file.bytes())).isEqualTo(tree);
    }

    @Test
    void a_newer_major_version_is_refused() {
        assertThatThrownBy(() -> PlayerFile.parse(bytes(playerTree().put("version", "1.0")), PLACE))
                .isInstanceOf(JsonFileException.class)
                .hasMessage("mine.json, line 1: /version is \"1.0\", which a newer Mantice wrote; "
                        + "allowed: 0.0 to 0.*");
    }

    @Test
    void a_file_of_another_kind_is_refused() {
        assertThatThrownBy(() -> PlayerFile.parse(AccordionFile.of(FULL).bytes(), PLACE))
                .hasMessage("mine.json, line 2: /format is \"mantice-accordion\"; allowed: \"mantice-player\"");
    }

    /** A field of the accordion by its pointer with a value that is not allowed. */
    record Wrong(String pointer, String value, String message) {
        @Override
        public String toString() {
            return pointer + " = " + value;
        }
    }

    static Stream<Wrong> wrongInAccordion() {
        return Stream.of(
                new Wrong("/version", "\"one\"", "/version is \"one\"; allowed: as \"0.1\""),
                new Wrong("/id", "\"My Box\"", "/id is 'My Box'; allowed: up to 64 lower case letters"),
                new Wrong("/name", "\"  \"", "/name is '  '; allowed: 1 to 200 characters"),
                new Wrong("/name", "5", "/name is 5; allowed: a text"),
                new Wrong("/treble", "[]", "/treble is a list; allowed: an object"),
                new Wrong("/treble/lowestMidi", "20", "/treble/lowestMidi is 20; allowed: 21 to 108"),
                new Wrong("/treble/lowestMidi", "53.5", "/treble/lowestMidi is 53.5; allowed: a whole number"),
                new Wrong("/treble/lowestMidi", "1e999999999", "/treble/lowestMidi is 1E+999999999; allowed: a whole"),
                new Wrong("/treble/lowestMidi", "null", "/treble/lowestMidi is null; allowed: a whole number"),
                new Wrong("/treble/highestMidi", "109", "/treble/highestMidi is 109; allowed: 53 to 108"),
                new Wrong("/treble/whiteKeyMicrons", "9999", "whiteKeyMicrons is 9999; allowed: 10000 to 30000"),
                new Wrong("/treble/switches", "[]", "/treble/switches is empty; allowed: one or more"),
                new Wrong("/treble/switches", "{}", "/treble/switches is an object; allowed: a list of objects"),
                new Wrong("/treble/switches/1", "3", "/treble/switches/1 is 3; allowed: an object"),
                new Wrong("/treble/switches/1/id", "\"piccolo\"", "/treble: switches share an id; allowed: each id"),
                new Wrong("/treble/switches/1/id", "\"\"", "/treble/switches/1/id is ''; allowed: up to 64"),
                new Wrong("/treble/switches/1/name", "\"\"", "/treble/switches/1/name is ''; allowed: 1 to 200"),
                new Wrong("/treble/switches/1/banks", "[]", "/treble/switches/1/banks is empty; allowed: one or more"),
                new Wrong(
                        "/treble/switches/1/banks/0", "\"middle\"", "banks/0 is \"middle\"; allowed: low-16, middle-8"),
                new Wrong("/treble/switches/1/works", "1", "/treble/switches/1/works is 1; allowed: true or false"),
                new Wrong("/treble/switches/1/reachMillis", "10001", "reachMillis is 10001; allowed: 0 to 10000"),
                new Wrong("/bass/rows", "\"all\"", "/bass/rows is \"all\"; allowed: a list of objects"),
                new Wrong("/bass/rows/0/firstColumn", "15", "/bass/rows/0/firstColumn is 15; allowed: -14 to 14"),
                new Wrong("/bass/rows/1/columns", "25", "/bass/rows/1/columns is 25; allowed: 1 to 24"),
                new Wrong("/bass/rows/1/columns", "0", "/bass/rows/1/columns is 0; allowed: 1 to 24"),
                new Wrong("/bass/rows/5/shift", "-4", "/bass/rows/5/shift is -4; allowed: -3 to 3"),
                new Wrong(
                        "/bass/rows/0/row", "\"treble\"", "/bass/rows/0/row is \"treble\"; allowed: counterbass, bass"),
                new Wrong("/bass/rows/1/row", "\"major\"", "/bass/rows is twice MAJOR; allowed: each kind once"),
                new Wrong("/bass/broken/0/column", "25", "/bass/broken/0/column is 25; allowed: -24 to 24"),
                new Wrong("/bass/broken/0/column", "14", "/bass/broken is C## bass"),
                new Wrong("/bass/marked/0/row", "\"none\"", "/bass/marked/0/row is \"none\"; allowed: counterbass"),
                new Wrong("/bass/marked/1/column", "-4", "/bass/marked/1/column is -4; allowed: each once"),
                new Wrong("/bass/missing/0/column", "0", "/bass/marked is C bass; allowed: no button that is missing"),
                new Wrong("/bass/geometry/offsets/0/alongMicrons", "20001", "alongMicrons is 20001; allowed: -20000"),
                new Wrong("/bass/geometry/offsets/0/row", "\"x\"", "/bass/geometry/offsets/0/row is \"x\"; allowed"),
                new Wrong("/bass/geometry/measured", "1", "/bass/geometry/measured is 1; allowed: true or false"),
                new Wrong("/bass/lowestBassMidi", "61", "/bass/lowestBassMidi is 61; allowed: 12 to 60"),
                new Wrong("/bass/lowestChordMidi", "23", "/bass/lowestChordMidi is 23; allowed: 24 to 84"),
                new Wrong("/bass/geometry/columnMicrons", "4999", "columnMicrons is 4999; allowed: 5000 to 40000"),
                new Wrong("/bass/geometry/rowMicrons", "40001", "rowMicrons is 40001; allowed: 5000 to 40000"),
                new Wrong("/bass/geometry/driftMicrons", "-1", "driftMicrons is -1; allowed: 0 to 17500"),
                new Wrong("/bass/geometry/buttonMicrons", "1999", "buttonMicrons is 1999; allowed: 2000 to 20000"),
                new Wrong("/bass/reedsPerBassButton", "9", "/bass/reedsPerBassButton is 9; allowed: 1 to 8"),
                new Wrong("/bass/reedsPerChordButton", "17", "/bass/reedsPerChordButton is 17; allowed: 1 to 16"),
                new Wrong("/bellows/volumes", "[]", "/bellows/volumes is a table of 0 rows; allowed: 2 to 100 rows"),
                new Wrong("/bellows/volumes/0/openingMm", "1", "/bellows/volumes/0/openingMm is 1; allowed: 0"),
                new Wrong("/bellows/volumes/2/openingMm", "1001", "volumes/2/openingMm is 1001; allowed: 0 to 1000"),
                new Wrong("/bellows/volumes/2/openingMm", "1", "volumes/2/openingMm is 1; allowed: 44 to 1000"),
                new Wrong("/bellows/volumes/2/millilitres", "-1", "volumes/2/millilitres is -1; allowed: 0 to 100000"),
                new Wrong("/bellows/comfortableOpeningMm", "351", "comfortableOpeningMm is 351; allowed: 1 to 350"),
                new Wrong("/bellows/fullOpeningMm", "1001", "/bellows/fullOpeningMm is 1001; allowed: 1 to 1000"),
                new Wrong("/bellows/capacityReedSeconds", "9", "capacityReedSeconds is 9; allowed: 10 to 2000"),
                new Wrong("/bellows/appetites/banks/low-16", "0", "appetites/banks/low-16 is 0; allowed: 1 to 20000"),
                new Wrong("/bellows/appetites/bassButton", "0", "appetites/bassButton is 0; allowed: 1 to 100000"),
                new Wrong("/bellows/appetites/chordButton", "100001", "chordButton is 100001; allowed: 1 to 100000"),
                new Wrong("/bellows/appetites/loudness/mf", "999", "appetites/loudness/mf is 999; allowed: 1000"),
                new Wrong("/bellows/appetites/loudness/f", "0", "appetites/loudness/f is 0; allowed: 1000 to 20000"),
                new Wrong("/bellows/turnMillis", "1001", "/bellows/turnMillis is 1001; allowed: 0 to 1000"),
                new Wrong(
                        "/bellows/turnMillis", "\"fast\"", "/bellows/turnMillis is \"fast\"; allowed: a whole number"),
                new Wrong("/bellows/measured", "\"no\"", "/bellows/measured is \"no\"; allowed: true or false"));
    }

    @ParameterizedTest
    @MethodSource("wrongInAccordion")
    void a_wrong_value_of_an_accordion_is_refused_with_field_value_and_range(Wrong wrong) throws IOException {
        ObjectNode tree = accordionTree();
        set(tree, wrong);

        assertThatThrownBy(() -> AccordionFile.parse(tree.toPrettyString().getBytes(StandardCharsets.UTF_8), PLACE))
                .isInstanceOf(JsonFileException.class)
                .hasMessageStartingWith("mine.json, line ")
                .hasMessageContaining(wrong.message())
                .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
    }

    /** What only the program checks, since it concerns two fields at once. */
    private static final Set<String> BEYOND_SCHEMA = Set.of(
            "/treble/switches/1/id = \"piccolo\"",
            "/bass/rows/1/row = \"major\"",
            "/bass/broken/0/column = 14",
            "/bass/missing/0/column = 0",
            "/bellows/volumes/0/openingMm = 1",
            "/bellows/volumes/2/openingMm = 1",
            "/bellows/comfortableOpeningMm = 351");

    @ParameterizedTest
    @MethodSource("wrongInAccordion")
    void the_schema_refuses_what_the_program_refuses(Wrong wrong) throws IOException {
        ObjectNode tree = accordionTree();
        set(tree, wrong);

        if (BEYOND_SCHEMA.contains(wrong.toString()))
            assertThat(schema("accordion").validate(tree)).isEmpty();
        else assertThat(schema("accordion").validate(tree)).isNotEmpty();
    }

    static Stream<Wrong> wrongInPlayer() {
        return Stream.of(
                new Wrong("/id", "\"-\"", "/id is '-'; allowed: up to 64 lower case letters"),
                new Wrong("/name", "true", "/name is true; allowed: a text"),
                new Wrong("/handSpanTenths", "49", "/handSpanTenths is 49; allowed: 50 to 140"),
                new Wrong("/handSpanTenths", "99999999999", "/handSpanTenths is 99999999999; allowed: a whole number"),
                new Wrong("/bassMethod", "\"thumbs\"", "/bassMethod is \"thumbs\"; allowed: four-three-two, three-two"),
                new Wrong("/jumps/startMillis", "-1", "/jumps/startMillis is -1; allowed: 0 to 1000"),
                new Wrong("/jumps/millisPerBit", "0", "/jumps/millisPerBit is 0; allowed: 1 to 1000"),
                new Wrong("/mayTurnInHeldNote", "0", "/mayTurnInHeldNote is 0; allowed: true or false"),
                new Wrong("/taste/weights", "[1]", "/taste/weights is a list; allowed: an object"),
                new Wrong("/taste/weights/bellows.evenness", "-1", "/taste/weights/bellows.evenness"),
                new Wrong("/taste/weights/odd~1id", "100001", "/taste/weights/odd~1id"),
                new Wrong("/taste/weights/odd~1id", "{}", "/taste/weights/odd~1id is an object; allowed: a whole"));
    }

    @ParameterizedTest
    @MethodSource("wrongInPlayer")
    void a_wrong_value_of_a_player_is_refused_with_field_value_and_range(Wrong wrong) throws IOException {
        ObjectNode tree = playerTree();
        set(tree, wrong);

        assertThat(schema("player").validate(tree)).isNotEmpty();
        assertThatThrownBy(() -> PlayerFile.parse(tree.toPrettyString().getBytes(StandardCharsets.UTF_8), PLACE))
                .isInstanceOf(JsonFileException.class)
                .hasMessageContaining(wrong.message())
                .hasMessageContaining("allowed: ");
    }

    private static void set(ObjectNode tree, Wrong wrong) throws IOException {
        int cut = wrong.pointer().lastIndexOf('/');
        JsonNode parent = tree.at(wrong.pointer().substring(0, cut));
        String name = wrong.pointer().substring(cut + 1).replace("~1", "/");
        JsonNode value = JsonFile.parse(
                        ("{\"value\":" + wrong.value() + "}").getBytes(StandardCharsets.UTF_8), PLACE, 1_000)
                .root()
                .get("value");
        if (parent instanceof ArrayNode array) array.set(Integer.parseInt(name), value);
        else ((ObjectNode) parent).set(name, value);
    }

    @Test
    void every_field_that_is_missing_is_named() {
        List<String> pointers = new ArrayList<>();
        collect(accordionTree(), "", pointers);
        assertThat(pointers).hasSizeGreaterThan(100);
        for (String pointer : pointers) {
            if (pointer.matches("/bellows/appetites/(banks|loudness)/.*")) continue;
            ObjectNode tree = accordionTree();
            int cut = pointer.lastIndexOf('/');
            ((ObjectNode) tree.at(pointer.substring(0, cut))).remove(pointer.substring(cut + 1));

            assertThatThrownBy(() -> AccordionFile.parse(bytes(tree), PLACE))
                    .isInstanceOf(JsonFileException.class)
                    .hasMessageContaining(pointer + " is missing; allowed: ");
        }
    }

    private static void collect(JsonNode node, String pointer, List<String> pointers) {
        if (node instanceof ObjectNode object)
            object.properties().forEach(field -> {
                pointers.add(pointer + "/" + field.getKey());
                collect(field.getValue(), pointer + "/" + field.getKey(), pointers);
            });
        else for (int i = 0; i < node.size(); i++) collect(node.get(i), pointer + "/" + i, pointers);
    }

    @Test
    void a_bank_without_an_appetite_and_a_loudness_that_is_missing_are_named() {
        ObjectNode bank = accordionTree();
        ((ObjectNode) bank.at("/bellows/appetites/banks")).remove("high-4");
        ObjectNode loudness = accordionTree();
        ((ObjectNode) loudness.at("/bellows/appetites/loudness")).remove("mp");

        assertThatThrownBy(() -> AccordionFile.parse(bytes(bank), PLACE))
                .hasMessageContaining("appetites.banks lacks HIGH_4, which switch piccolo selects");
        assertThatThrownBy(() -> AccordionFile.parse(bytes(loudness), PLACE))
                .hasMessageContaining("/bellows/appetites: loudness lacks MP; allowed: every loudness once");
    }
}
