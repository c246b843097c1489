package org.mantice.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.editing.TuneEdit;
import org.mantice.fault.FilePlace;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassRow;
import org.mantice.json.JsonFileException;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.BassPatterns;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Settings;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Figures;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.reading.ChordText;
import org.mantice.rule.GiveWay;
import org.mantice.rule.HandMove;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

/** The schema check is by an outside validator after JSON Schema 2020-12 (json-schema.org). */
class PlanFileTest {
    private static final FilePlace HERE = FilePlace.of("here.plan.json");
    private static final Tune TUNE = Tunes.melody(
            "3/4",
            "\"C\" C4 q, E4 q, G4 q | \"G7\" F4 h. | R q, \"C\" E4+G4 h | \"(Am7)(F)\" C5 q, A4 q, E4 q | \"G7/B\" D4 h. | \"C\" C4 h.");

    private final Planning planning =
            planning(SettingsBuilder.of(TUNE).timesThrough(2).build());

    private static Planning planning(Settings settings) {
        return new Planner(Packs.ofClassPath().providers())
                .prepare(new PlanRequest(
                        TUNE,
                        AccordionPresets.get("full-41-key-120-bass"),
                        PlayerPresets.get("medium-hand"),
                        settings,
                        List.of(
                                new Lock.Octave(OptionalInt.of(2), 0),
                                new Lock.Finger(OptionalInt.empty(), new WrittenPlace(0, MusicalTime.ZERO), 0, 1)),
                        3));
    }

    @TempDir
    Path folder;

    @Test
    void everyPlanIsValidUnderTheShippedSchema() throws IOException {
        Schema schema = schema();
        for (Plan plan : plans()) {
            String json = file(plan).json();

            assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
            assertThat(schema.validate(
                            json.replaceFirst("\"direction\" : \"OUT\"", "\"direction\" : \"UP\""), InputFormat.JSON))
                    .isNotEmpty();
        }
    }

    private static Schema schema() throws IOException {
        try (InputStream in = PlanFile.class.getResourceAsStream("/org/mantice/schema/plan.schema.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(text).contains("\"$schema\": \"https://json-schema.org/draft/2020-12/schema\"");
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
        }
    }

    @Test
    void schemaNamesEveryValueOfOurEnums() throws IOException {
        JsonNode schema;
        try (InputStream in = PlanFile.class.getResourceAsStream("/org/mantice/schema/plan.schema.json")) {
            schema = new ObjectMapper().readTree(in);
        }
        List<String> named = new ArrayList<>();
        schema.findValues("enum").forEach(list -> list.forEach(value -> named.add(value.asText())));
        for (Enum<?>[] values : List.<Enum<?>[]>of(
                HandMove.values(),
                GiveWay.values(),
                BassRow.values(),
                Loudness.values(),
                ChordsPlayed.Alternates.values(),
                LeftHandPlan.Jump.values(),
                BellowsPlan.Direction.values(),
                Mode.values(),
                Barlines.Jump.values(),
                ChordText.Letters.values()))
            assertThat(named).contains(Arrays.stream(values).map(Enum::name).toArray(String[]::new));
    }

    @Test
    void readBackIsTheSameDocumentAndPricesTheSame() {
        for (Plan plan : plans()) {
            PlanFile written = file(plan);

            PlanDocument read = PlanFile.parse(written.bytes(), HERE).document();

            assertThat(read).isEqualTo(written.document());
            assertThat(planning.rescore(read.plan())).isEqualTo(plan);
            assertThat(read.explanation().cost()).isEqualTo(read.cost());
        }
    }

    /** A plan from before patterns were chosen has no such field. */
    @Test
    void planWithoutChosenPatternsIsReadAsOneThatFollowsTheMeter() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        PlanFile written = file(plans().get(0));
        ObjectNode tree = (ObjectNode) mapper.readTree(written.bytes());
        tree.put("version", "0.1").remove("patterns");
        ((ObjectNode) tree.path("settings")).remove("leftHand");

        assertThat(PlanFile.parse(mapper.writeValueAsBytes(tree), HERE).document())
                .isEqualTo(written.document());
    }

    @Test
    void chosenPatternsAreKeptAndPricedTheSame() throws IOException {
        BassPattern waltz = BassPatterns.shipped().get(1);
        BassPattern own = new BassPattern(
                "own", waltz.names(), "made up", waltz.fit(), waltz.cycle(), waltz.figures(), waltz.pickup());
        Accompaniment asked = new Accompaniment(
                List.of(own),
                List.of(
                        Accompaniment.Choice.everywhere(Optional.of("own"), Optional.empty()),
                        new Accompaniment.Choice(
                                1,
                                2,
                                OptionalInt.of(2),
                                Optional.of("waltz-with-runs"),
                                Optional.of(Accompaniment.Hand.BASS_ONLY))));
        PlanRequest plain = planning.request();
        Planning other = new Planner(Packs.ofClassPath().providers())
                .prepare(new PlanRequest(
                        plain.tune(),
                        plain.accordion(),
                        plain.player(),
                        plain.settings().withLeftHand(asked),
                        List.of(),
                        1));
        Plan plan = ((Alternatives.Found) other.best(plain.player().taste(), List.of())).best();
        PlanDocument document = new PlanDocument(
                "0.1.0",
                new PlanDocument.TuneSource("A tune", "a.musicxml", "0".repeat(64), "", "", List.of()),
                other.request().settings(),
                plain.accordion(),
                plain.player(),
                List.of(),
                List.of(),
                plan,
                Figures.of(plan, other.performance()),
                other.explain(plan, plain.player().taste()));
        PlanFile file = PlanFile.of(document, other.performance());

        PlanDocument read = PlanFile.parse(file.bytes(), HERE).document();

        assertThat(read).isEqualTo(document);
        assertThat(read.settings().leftHand()).isEqualTo(asked);
        assertThat(other.rescore(read.plan())).isEqualTo(plan);
        assertThat(new ObjectMapper().readTree(file.bytes()).at("/patterns").toString())
                .contains("\"pattern\":\"own\"")
                .contains("\"pattern\":\"waltz-with-runs\",\"hand\":\"bass-only\",\"why\":\"chosen\"");
        refused(
                file.json()
                        .replaceFirst(
                                "\"pass\" : 2,(\\s*\"pattern\" : \"waltz-with-runs\",\\s*\"hand\")", "\"pass\" : 0,$1"),
                "/settings/leftHand/choices/1/pass",
                "1 to 1000");
        refused(
                file.json().replaceFirst("\"pattern\" : \"own\"", "\"pattern\" : \"lost\""),
                "/settings/leftHand/choices/0/pattern",
                "slow-waltz");
    }

    @Test
    void editsOfEveryKindAreValidAndReadBack() throws IOException {
        WrittenPlace place = new WrittenPlace(1, MusicalTime.QUARTER);
        Barlines signs = new Barlines(
                true,
                Optional.of(3),
                true,
                List.of(1, 2),
                true,
                true,
                true,
                Optional.of(Barlines.Jump.DAL_SEGNO),
                true,
                true,
                true);
        List<TuneEdit> edits = List.of(
                new TuneEdit.SetChord(place, "B\u266d7 (Dm)", ChordText.Letters.GERMAN),
                new TuneEdit.MoveChord(place, new WrittenPlace(2, MusicalTime.of(1, 12))),
                new TuneEdit.RemoveChord(place),
                new TuneEdit.ProposeChords(),
                new TuneEdit.AcceptChord(place),
                new TuneEdit.AcceptChords(),
                new TuneEdit.DismissProposals(),
                new TuneEdit.SetPhrase(place, true),
                new TuneEdit.SetBarlines(3, signs),
                new TuneEdit.SetBarlines(4, Barlines.PLAIN),
                new TuneEdit.SetTempo(place, Optional.of(Tempo.quarters(90))),
                new TuneEdit.SetTempo(place, Optional.empty()),
                new TuneEdit.SetKey(0, new Key(-3, Mode.DORIAN)));
        assertThat(edits.stream().map(Object::getClass).distinct())
                .hasSameElementsAs(List.of(TuneEdit.class.getPermittedSubclasses()));

        PlanDocument document = withEdits(file(plans().get(0)).document(), edits);
        String json = PlanFile.of(document, planning.performance()).json();

        assertThat(PlanFile.parse(json.getBytes(StandardCharsets.UTF_8), HERE).document())
                .isEqualTo(document);
        assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
        assertThat(schema().validate(json.replace("remove-chord", "drop-chord"), InputFormat.JSON))
                .isNotEmpty();
        refused(json.replace("remove-chord", "drop-chord"), "/tune/edits/2", "drop-chord");
        refused(json.replace("B\u266d7 (Dm)", "Dr. Em"), "/tune/edits/0", "allowed: a chord symbol");
        refused(json.replace("\"begins\" : true", "\"begins\" : \"soon\""), "/tune/edits/7/begins", "true or false");
    }

    private static PlanDocument withEdits(PlanDocument of, List<TuneEdit> edits) {
        PlanDocument.TuneSource tune = of.tune();
        return new PlanDocument(
                of.engine(),
                new PlanDocument.TuneSource(tune.title(), tune.file(), tune.sha256(), tune.part(), tune.entry(), edits),
                of.settings(),
                of.accordion(),
                of.player(),
                of.packs(),
                of.locks(),
                of.plan(),
                of.figures(),
                of.explanation());
    }

    /** As version 0.1 wrote it, which knew no edits; every later version must read it. */
    @Test
    void aStoredPlanOfVersion01IsRead() throws IOException {
        try (InputStream stored = getClass().getResourceAsStream("0.1/two-steps.plan.json")) {
            byte[] bytes = stored.readAllBytes();
            PlanDocument document = PlanFile.parse(bytes, HERE).document();

            assertThat(new String(bytes, StandardCharsets.UTF_8))
                    .contains("\"version\" : \"0.1\"")
                    .doesNotContain("edits");
            assertThat(document.tune().edits()).isEmpty();
            assertThat(document.plan().rightHand().events()).hasSize(5);
            assertThat(document.explanation().cost()).isEqualTo(document.cost());
            assertThat(schema().validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON))
                    .isEmpty();
        }
    }

    @Test
    void writtenFileReplacesTheOldOneWhole() {
        Path file = folder.resolve("waltz.plan.json");
        file(plans().get(0)).write(file);
        file(plans().get(1)).write(file);

        assertThat(PlanFile.read(file).document().plan()).isEqualTo(plans().get(1));
    }

    @Test
    void fieldsThatThisVersionDoesNotKnowAreKept() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode tree = (ObjectNode) mapper.readTree(file(plans().get(0)).bytes());
        tree.put("version", "0.9").put("mood", "blue");
        ((ObjectNode) tree.path("settings")).put("swing", 12);

        PlanFile read = PlanFile.parse(mapper.writeValueAsBytes(tree), HERE);
        PlanFile again = read.with(read.document(), planning.performance());
        JsonNode kept = mapper.readTree(again.bytes());

        assertThat(kept.path("mood").asText()).isEqualTo("blue");
        assertThat(kept.at("/settings/swing").asInt()).isEqualTo(12);
    }

    @Test
    void readBackAndPlannedByItsOwnSettingsItPricesTheSameWhicheverChordsArePlayed() {
        List<String> buttons = new ArrayList<>();
        for (ChordsPlayed.Alternates alternates : ChordsPlayed.Alternates.values())
            for (boolean optional : new boolean[] {true, false}) {
                Settings settings = SettingsBuilder.of(TUNE)
                        .timesThrough(2)
                        .chords(new ChordsPlayed(alternates, optional))
                        .build();
                Planning asked = planning(settings);
                Plan plan = plans(asked).get(0);

                PlanDocument read =
                        PlanFile.parse(file(asked, plan).bytes(), HERE).document();
                Planning again = planning(read.settings());

                assertThat(read.settings()).isEqualTo(settings);
                assertThat(again.rescore(read.plan())).isEqualTo(plan);
                assertThat(read.explanation().cost()).isEqualTo(plan.cost(Taste.PLAIN));
                buttons.add(plan.leftHand().decisions().toString());
            }
        assertThat(buttons.stream().distinct())
                .as("left out, its alternate is left out too")
                .hasSize(4);
    }

    @Test
    void aPlanFromBeforeAlternatesWerePlayedPlaysNone() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode tree = (ObjectNode) mapper.readTree(file(plans().get(0)).bytes());
        ((ObjectNode) tree.path("settings")).remove("chords");

        PlanFile read = PlanFile.parse(mapper.writeValueAsBytes(tree), HERE);

        assertThat(read.document().settings().chords())
                .isEqualTo(new ChordsPlayed(ChordsPlayed.Alternates.NEVER, true));
    }

    @Test
    void aWeightThatWasTakenBackStaysAway() {
        PlanDocument plain = file(plans().get(0)).document();
        PlanDocument weighed = withTaste(plain, Taste.PLAIN.with("bellows.turns", 2_000));

        PlanFile read =
                PlanFile.parse(PlanFile.of(weighed, planning.performance()).bytes(), HERE);
        PlanFile again = read.with(plain, planning.performance());

        assertThat(PlanFile.parse(again.bytes(), HERE).document()).isEqualTo(plain);
    }

    private static PlanDocument withTaste(PlanDocument of, Taste taste) {
        Player p = of.player();
        Player player = new Player(
                p.id(), p.name(), p.handSpanTenths(), p.bassMethod(), p.jumps(), p.mayTurnInHeldNote(), taste);
        return new PlanDocument(
                of.engine(),
                of.tune(),
                of.settings(),
                of.accordion(),
                player,
                of.packs(),
                of.locks(),
                of.plan(),
                of.figures(),
                of.explanation());
    }

    @Test
    void everyNoteStrokeAndButtonSaysWhereItIs() throws IOException {
        JsonNode tree = new ObjectMapper().readTree(file(plans().get(0)).bytes());
        for (String list : new String[] {"/plan/rightHand/events", "/plan/bellows/strokes", "/plan/leftHand/events"}) {
            assertThat(tree.at(list)).as(list).isNotEmpty();
            for (JsonNode event : tree.at(list)) {
                assertThat(event.at("/at/pass").asInt()).isPositive();
                assertThat(event.at("/at/measure").asText()).isNotBlank();
                assertThat(event.at("/at/beat").asText()).isNotBlank();
            }
        }
        assertThat(tree.at("/plan/rightHand/events").size())
                .isEqualTo(planning.performance().treble().size());
    }

    @Test
    void everyStrokeSaysWhereItEndsAndItsShareOfTheComfortableOpening() throws IOException {
        JsonNode strokes =
                new ObjectMapper().readTree(file(plans().get(0)).bytes()).at("/plan/bellows/strokes");
        int comfortable = planning.request().accordion().bellows().comfortableMillilitres();

        assertThat(strokes.size()).isGreaterThan(1);
        for (int i = 0; i < strokes.size(); i++) {
            JsonNode stroke = strokes.get(i);
            if (i + 1 < strokes.size())
                assertThat(stroke.path("until")).isEqualTo(strokes.get(i + 1).path("at"));
            assertThat(stroke.at("/until/pass").asInt()).isPositive();
            assertThat(stroke.at("/until/measure").asText()).isNotBlank();
            assertThat(stroke.path("startPerMilleOfComfortable").asLong(-1))
                    .isEqualTo(stroke.path("startMillilitres").asLong() * 1_000 / comfortable);
            assertThat(stroke.path("endPerMilleOfComfortable").asLong(-1))
                    .isEqualTo(stroke.path("endMillilitres").asLong() * 1_000 / comfortable);
        }
    }

    @Test
    void wrongValuesAreRefusedWithPointerAndLine() {
        String json = file(plans().get(0)).json();
        refused(
                json.replaceFirst("\"handPlace\" : (\\d+)", "\"handPlace\" : \"high\""),
                "/plan/rightHand/events/0/handPlace",
                "line");
        refused(json.replaceFirst("\"timesThrough\" : 2", "\"timesThrough\" : 99"), "/settings", "1 to 20");
        refused(json.replaceFirst("\"explanation\" :", "\"expl\" :"), "/explanation", "missing");
        refused(json.replaceFirst("\"onset\" : \"\\d+\"", "\"onset\" : \"soon\""), "onset", "3/4");
        refused(json.replace("\"version\" : \"0.2\"", "\"version\" : \"2.0\""), "/version", "newer");
    }

    private static void refused(String json, String pointer, String words) {
        assertThatThrownBy(() -> PlanFile.parse(json.getBytes(StandardCharsets.UTF_8), HERE))
                .isInstanceOf(JsonFileException.class)
                .hasMessageStartingWith("here.plan.json")
                .hasMessageContaining(pointer)
                .hasMessageContaining(words);
    }

    private List<Plan> plans() {
        return plans(planning);
    }

    private static List<Plan> plans(Planning planning) {
        PlanRequest request = planning.request();
        return ((Alternatives.Found)
                        planning.alternatives(request.player().taste(), request.locks(), 3, plan -> {}, () -> false))
                .plans();
    }

    private PlanFile file(Plan plan) {
        return file(planning, plan);
    }

    private static PlanFile file(Planning planning, Plan plan) {
        PlanRequest request = planning.request();
        PlanDocument document = new PlanDocument(
                "0.1.0",
                new PlanDocument.TuneSource("A tune", "a.musicxml", "0".repeat(64), "", "", List.of()),
                request.settings(),
                request.accordion(),
                request.player(),
                List.of(new PlanDocument.PackUsed(
                        "mantice.variation", "0.1.0", "class path", List.of("variation.growing"))),
                request.locks(),
                plan,
                Figures.of(plan, planning.performance()),
                planning.explain(plan, request.player().taste()));
        return PlanFile.of(document, planning.performance());
    }
}
