package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.tune;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.Calls.Answer;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.PassChoice;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;
import org.mantice.rule.TurnPlace;

/** Bad input from the command to the message: one line each, nothing else lost, no hang. */
class BadInputTest {
    private static final String CONTAINER =
            "<container><rootfiles><rootfile full-path=\"score.xml\"/></rootfiles></container>";
    private static final int MEGABYTE = 1024 * 1024;

    @TempDir
    Path folder;

    private static void assertOneLine(Answer answer, Path file) {
        assertThat(answer.code()).as(answer.out() + answer.err()).isEqualTo(1);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).as(answer.err()).hasSize(1);
        assertThat(answer.err()).contains(file.getFileName().toString()).doesNotContain("Exception", "OutOfMemory");
    }

    private Path archive(String name, int megabytesOfBlanks, String music) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
            zip.write(CONTAINER.getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("score.xml"));
            zip.write(music.getBytes(StandardCharsets.UTF_8));
            byte[] blanks = " ".repeat(MEGABYTE).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < megabytesOfBlanks; i++) zip.write(blanks);
        }
        return file;
    }

    private static String entityBomb() {
        StringBuilder doctype =
                new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE score-partwise [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 30; i++)
            doctype.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        return doctype + "]><score-partwise><movement-title>&a29;</movement-title></score-partwise>";
    }

    @Test
    void zipBombIsOneLine() throws IOException {
        Path file = archive("bomb.mxl", 200, "<score-partwise>");
        assertThat(file).satisfies(bomb -> assertThat(Files.size(bomb)).isLessThan(MEGABYTE));

        assertOneLine(call("plan", file), file);
    }

    @Test
    void entityBombIsOneLinePlainAndInAnArchive() throws IOException {
        Path plain = folder.resolve("bomb.musicxml");
        Files.writeString(plain, entityBomb());
        Path packed = archive("packed.mxl", 0, entityBomb());

        assertOneLine(call("plan", plain), plain);
        assertOneLine(call("plan", packed), packed);
    }

    @Test
    void bombsInAFolderNeverStopTheRest() throws IOException {
        archive("a-bomb.mxl", 100, "<score-partwise>");
        Files.writeString(folder.resolve("b-bomb.musicxml"), entityBomb());
        Files.copy(tune("five-steps-to-the-ferry"), folder.resolve("c.musicxml"));

        Answer answer = call("plan", folder, "--alternatives", 1);

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out()).contains("Five Steps to the Ferry");
        assertThat(answer.err()).contains("a-bomb.mxl", "b-bomb.musicxml", "1 planned");
    }

    static Stream<Arguments> oddRules() {
        return Stream.of("throw new IllegalStateException(\"sulks\");", "return -5;")
                .flatMap(cost -> Stream.of(
                        Arguments.of(RuleSet.REPEAT_VARIATION, PassChoice.class, cost),
                        Arguments.of(RuleSet.JUMP_COST, ButtonMoment.class, cost),
                        Arguments.of(RuleSet.BELLOWS_POLICY, TurnPlace.class, cost),
                        Arguments.of(RuleSet.FINGERING_SPAN, FingerMoment.class, cost)));
    }

    @ParameterizedTest
    @MethodSource("oddRules")
    void ruleThatThrowsOrGivesANegativeNumberIsNamedWithThePlaceAndCanBeLeftOut(
            RuleSet set, Class<? extends Step> reach, String cost) throws IOException {
        Path packs = folder.resolve("packs");
        OneRulePack.write(packs.resolve("stranger.jar"), folder.resolve("work"), set, reach, cost);
        Path file = tune("five-steps-to-the-ferry");

        Answer failed = call("plan", file, "--packs", packs, "--alternatives", 1);
        Answer without = call("plan", file, "--packs", packs, "--without", OneRulePack.RULE, "--alternatives", 1);

        assertThat(failed.code()).as(failed.out() + failed.err()).isEqualTo(1);
        assertThat(failed.out()).isEmpty();
        assertThat(failed.err().lines()).as(failed.err()).hasSize(1);
        assertThat(failed.err())
                .contains(OneRulePack.RULE, "pass 1", cost.contains("sulks") ? "sulks" : "-5", "--without")
                .doesNotContain("\tat ");
        assertThat(without.code()).as(without.err()).isZero();
        assertThat(without.out())
                .isEqualTo(call("plan", file, "--alternatives", 1).out());
    }

    @Test
    void tuneWithoutChordSymbolsIsPlannedAndTheSilentLeftHandIsSaid() throws IOException {
        Path file = folder.resolve("no-chords.musicxml");
        String whole = Files.readString(tune("five-steps-to-the-ferry"));
        Files.writeString(file, whole.replaceAll("(?s)<harmony.*?</harmony>", ""));

        Answer answer = call("plan", file, "--json");
        JsonNode plan = new ObjectMapper().readTree(answer.out()).path("plan");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(plan.at("/leftHand/events").size()).isZero();
        assertThat(plan.at("/rightHand/events").size()).isPositive();
        assertThat(call("plan", file).out()).containsIgnoringCase("no chord");
    }

    @Test
    void accordionWithoutBassIsPlannedForTheRightHandAndTheSilentLeftHandIsSaid() throws IOException {
        Path accordion = folder.resolve("treble-only.accordion.json");
        JsonNode profile = new ObjectMapper()
                .readTree(Calls.examples()
                        .resolve("accordions")
                        .resolve("runas-34-key-72-bass.accordion.json")
                        .toFile());
        ((ObjectNode) profile.path("bass")).putArray("rows");
        ((ObjectNode) profile.path("bass")).putArray("marked");
        Files.writeString(accordion, profile.toPrettyString());

        Answer answer = call("plan", tune("the-rusty-gate"), "--accordion", accordion, "--json");
        JsonNode plan = new ObjectMapper().readTree(answer.out()).path("plan");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(plan.at("/leftHand/events").size()).isZero();
        assertThat(plan.at("/bellows/strokes").size()).isPositive();
        assertThat(call("plan", tune("the-rusty-gate"), "--accordion", accordion)
                        .out())
                .containsIgnoringCase("no bass");
    }

    /** The only clock in a test: the rule never comes back, so a hang guard is what is tested. */
    @Test
    void ruleThatNeverComesBackIsNamedAndTheProgramEnds() throws IOException {
        Path packs = folder.resolve("packs");
        OneRulePack.write(
                packs.resolve("stranger.jar"),
                folder.resolve("work"),
                RuleSet.REPEAT_VARIATION,
                PassChoice.class,
                "while (step != null) java.util.concurrent.locks.LockSupport.parkNanos(1_000_000L); return 0;");
        Path file = Calls.tune("five-steps-to-the-ferry");

        Answer hanging = call("plan", file, "--packs", packs, "--patience", 2);
        Answer without = call("plan", file, "--packs", packs, "--without", OneRulePack.RULE, "--alternatives", 1);

        assertThat(hanging.code()).isEqualTo(1);
        assertThat(hanging.err().lines()).hasSize(1);
        assertThat(hanging.err()).contains(OneRulePack.RULE, "does not come back", "--without");
        assertThat(without.code()).as(without.err()).isZero();
    }

    @Test
    void otherXmlInAFolderIsNoTune() throws IOException {
        Files.copy(Calls.tune("five-steps-to-the-ferry"), folder.resolve("tune.xml"));
        Files.writeString(folder.resolve("pom.xml"), "<project><modelVersion>4.0.0</modelVersion></project>");

        Answer answer = call("plan", folder, "--alternatives", 1);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("Five Steps to the Ferry");
    }
}
