package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.examples;
import static org.mantice.app.Calls.tune;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.Calls.Answer;

/** Calls that ask for what is not there: refused once, before anything is planned or printed. */
class WrongCallsTest {
    @TempDir
    Path folder;

    private static void refused(Answer answer, String message) {
        assertThat(answer.code()).as(answer.err() + answer.out()).isEqualTo(2);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).as(answer.err()).hasSize(1);
        assertThat(answer.err()).contains(message, "allowed").doesNotContain("Exception");
    }

    private Path planOfFiveSteps() {
        Answer answer = call("plan", tune("five-steps-to-the-ferry"), "--alternatives", 1, "--out", folder);
        assertThat(answer.code()).as(answer.err()).isZero();
        return folder.resolve("five-steps-to-the-ferry.plan.json");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--times | 21 | times is 21; allowed: 1 to 20",
                "--times | 0 | times is 0",
                "--tempo | 4 | tempo is 4; allowed: 5 to 1000",
                "--tempo | 2000000000 | tempo is 2000000000",
                "--transpose | 12 | transpose is 12; allowed: -11 to 11",
                "--loudness | loud | loudness is loud; allowed: ppp",
                "--part | '' | part is blank",
                "--weight | no.rule=3 | no.rule; allowed: variation.",
                "--weight | bellows.turns=100001 | 100001",
                "--lock | octave=5 | octave=5 is 5; allowed: -1, 0, 1",
                "--lock | finger@1:1=6 | finger@1:1=6 is 6; allowed: 1 to 5",
                "--lock | turn@3:1=maybe | maybe; allowed: yes, no",
                "--lock | turn=yes | has no place",
                "--lock | register@3=master | has a place",
                "--lock | sing | lock is sing",
                "--packs | nowhere-at-all | packs is nowhere-at-all; allowed: a folder",
            })
    void valueThatIsWrongForEveryTuneIsRefusedOnceWhateverTheTunes(String option, String value, String message) {
        refused(call("plan", tune("the-rusty-gate"), tune("lanterns-at-the-weir"), option, value), message);
    }

    @Test
    void folderThatCannotBeMadeForTheOutputIsRefusedBeforePlanning() throws IOException {
        Path file = Files.writeString(folder.resolve("a file"), "not a folder");

        refused(call("plan", tune("the-rusty-gate"), "--out", file.resolve("below")), "out is ");
        refused(call("plan", tune("the-rusty-gate"), "--out", file), "out is ");
    }

    @Test
    void folderWithoutTunesIsSaidAndNotTakenForWorkDone() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        refused(call("plan", empty), "nothing to do in folder");
        refused(call("check", empty), "nothing to do in folder");
    }

    @Test
    void lockForAPassThatIsNotPlayedIsRefused() {
        Answer answer = call("plan", tune("five-steps-to-the-ferry"), "--times", 1, "--lock", "pass9:register=master");

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err()).contains("pass in a lock is 9; allowed: 1 to ");
    }

    @Test
    void placesThatAreNotThereAreRefusedAndNothingElseIsPrinted() {
        Path plan = planOfFiveSteps();

        refused(call("explain", plan, "99"), "measure is 99");
        refused(call("explain", plan, "x:1"), "measure is x");
        refused(call("explain", plan, "1:9"), "beat is 9 in measure 1");
        refused(call("explain", plan, "1", "--pass", 9), "pass is 9; allowed: 1 to ");
        refused(call("explain", plan, "1", "--pass", 0), "pass is 0; allowed: 1 to ");
    }

    @Test
    void checkOfAFolderReadsTunesPlansAndProfiles() throws IOException {
        planOfFiveSteps();
        Files.copy(tune("the-rusty-gate"), folder.resolve("gate.musicxml"));
        Files.copy(examples().resolve("players/pim-haldersen.player.json"), folder.resolve("pim.player.json"));
        Files.copy(
                examples().resolve("accordions/pims-26-key-48-bass.accordion.json"),
                folder.resolve("pim.accordion.json"));

        Answer answer = call("check", folder);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("priced anew: the same", "accordion Pim", "player Pim", "gate.musicxml: ");
    }

    @Test
    void planMadeWithoutARuleIsCheckedAndExplainedWithoutIt() {
        Path plan = folder.resolve("five-steps-to-the-ferry.plan.json");
        call(
                "plan",
                tune("five-steps-to-the-ferry"),
                "--alternatives",
                1,
                "--out",
                folder,
                "--without",
                "bellows.turns");

        Answer check = call("check", plan);
        Answer explain = call("explain", plan, "2");

        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.out()).contains("priced anew: the same");
        assertThat(explain.code()).as(explain.err()).isZero();
    }

    @Test
    void planMadeWithARuleThatIsNotHereNamesTheRuleAndItsPack() throws IOException {
        Path plan = planOfFiveSteps();
        Files.writeString(
                plan, Files.readString(plan).replaceFirst("(\"rules\" : \\[)", "$1 \"teacher.soft-landing\", "));

        Answer check = call("check", plan);

        assertThat(check.code()).isEqualTo(1);
        assertThat(check.err()).contains("rule teacher.soft-landing", "--packs").doesNotContain("Exception");
        refused(call("explain", plan, "2"), "rule teacher.soft-landing");
    }

    @Test
    void twentyTimesThroughStillFitOnAPage() {
        Answer answer = call("plan", tune("five-steps-to-the-ferry"), "--times", 20, "--alternatives", 1);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines()).allMatch(line -> line.length() < 200);
    }

    @Test
    void tuneThatIsNotPlayableLeavesStandardOutputToJson() {
        Answer answer = call("plan", tune("fog-over-grebe-holm"), "--accordion", "student-26-key-48-bass", "--json");

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err()).contains("not playable as asked", "remedy:");
    }

    @Test
    void namesWithSpacesApostrophesAndAccentsAreFiles() throws IOException {
        Path odd = Files.createDirectories(folder.resolve("l'été, à la fête"));
        Files.copy(tune("five-steps-to-the-ferry"), odd.resolve("Pim's \"été\" #1.musicxml"));

        Answer plan = call("plan", odd, "--alternatives", 1, "--out", odd.resolve("plans of Pim"));
        Answer check = call("check", odd.resolve("plans of Pim"));

        assertThat(plan.code()).as(plan.err()).isZero();
        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.out()).contains("priced anew: the same");
    }

    @Test
    void jarThatIsNoJarIsNamedAndTheRestGoesOn() throws IOException {
        Path packs = Files.createDirectory(folder.resolve("packs"));
        Files.writeString(packs.resolve("broken.jar"), "not a jar");

        Answer answer = call("plan", tune("five-steps-to-the-ferry"), "--alternatives", 1, "--packs", packs);

        assertThat(answer.code()).isZero();
        assertThat(answer.err()).contains("broken.jar: is not a jar that can be read");
        assertThat(answer.out()).contains("best");
    }

    @Test
    void instrumentWithoutBassAndTuneWithoutChordsAreSaidAndPlannedForTheRightHand() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode profile = (ObjectNode) mapper.readTree(examples()
                .resolve("accordions/pims-26-key-48-bass.accordion.json")
                .toFile());
        ((ObjectNode) profile.path("bass"))
                .put("columns", 0)
                .put("firstColumn", 0)
                .putArray("rows");
        Path bare = folder.resolve("bare.accordion.json");
        mapper.writeValue(bare.toFile(), profile);
        Path plain = folder.resolve("plain.musicxml");
        Files.writeString(
                plain, Files.readString(tune("five-steps-to-the-ferry")).replaceAll("(?s)<harmony.*?</harmony>", ""));

        Answer withoutBass = call("plan", tune("five-steps-to-the-ferry"), "--accordion", bare);
        Answer withoutChords = call("plan", plain);

        assertThat(withoutBass.code()).as(withoutBass.err()).isZero();
        assertThat(withoutBass.out()).contains("The left hand is silent: the instrument has no bass side.", "best");
        assertThat(withoutChords.code()).as(withoutChords.err()).isZero();
        assertThat(withoutChords.out()).contains("The left hand is silent: no chords and no bass are written.", "best");
    }

    @Test
    void placesInMessagesAreCountedAsInTheCall() {
        Answer fingers = call(
                "plan",
                tune("lanterns-at-the-weir"),
                "--lock",
                "finger@3:1=1",
                "--lock",
                "octave=0",
                "--lock",
                "finger@3:1=2");
        Answer turns = call("plan", tune("lanterns-at-the-weir"), "--lock", "turn@3:1=yes", "--lock", "turn@3:1=no");

        assertThat(fingers.code()).isEqualTo(1);
        assertThat(fingers.out())
                .contains(
                        "contradict",
                        "finger 1 on note 1 at measure 3, beat 1",
                        "finger 2 on note 1 at measure 3, beat 1")
                .doesNotContain("octave");
        assertThat(turns.out()).contains("a turn at measure 3, beat 1 and no turn at measure 3, beat 1");
    }

    @Test
    void differencesNameThePlacesAsTheReaderCountsThem() {
        call("plan", tune("lanterns-at-the-weir"), "--alternatives", 1, "--out", folder.resolve("1"));
        call(
                "plan",
                tune("lanterns-at-the-weir"),
                "--alternatives",
                1,
                "--out",
                folder.resolve("2"),
                "--lock",
                "finger@0:3=2");
        String name = "lanterns-at-the-weir.plan.json";

        Answer compare = call(
                "compare",
                folder.resolve("1").resolve(name),
                folder.resolve("2").resolve(name));

        assertThat(compare.code()).as(compare.err()).isZero();
        assertThat(compare.out()).contains("pass 1, measure 0, beat 3: finger ");
    }

    @Test
    void planFilesEditedByHandAreRefusedWithAReason() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        byte[] whole = Files.readAllBytes(planOfFiveSteps());
        Path edited = folder.resolve("edited.plan.json");

        ObjectNode moment = (ObjectNode) mapper.readTree(whole);
        ((ObjectNode) moment.at("/plan/rightHand/events/0")).put("moment", 99_999);
        ObjectNode stroke = (ObjectNode) mapper.readTree(whole);
        ((ArrayNode) stroke.at("/plan/bellows/strokes")).remove(1);
        ObjectNode pass = (ObjectNode) mapper.readTree(whole);
        ((ArrayNode) pass.at("/plan/variation/passes")).remove(1);
        for (ObjectNode tree : List.of(moment, stroke, pass)) {
            mapper.writeValue(edited.toFile(), tree);

            Answer check = call("check", edited);

            assertThat(check.code()).as(check.err()).isEqualTo(1);
            assertThat(check.err().lines()).hasSize(1);
            assertThat(check.err()).contains("edited.plan.json").doesNotContain("Exception");
            assertThat(call("explain", edited, "3").err()).doesNotContain("the program failed");
        }
    }

    @Test
    void halvesOfAMeasureSplitAtARepeatAreOneMeasureToTheReader() throws IOException {
        Path split = folder.resolve("split.musicxml");
        Files.writeString(split, """
                <score-partwise version="4.0"><part-list><score-part id="P1"><part-name>M</part-name></score-part>
                </part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions>
                <time><beats>4</beats><beat-type>4</beat-type></time></attributes>
                <note><pitch><step>C</step><octave>5</octave></pitch><duration>3</duration></note>
                <barline location="middle"><repeat direction="backward"/></barline>
                <note><pitch><step>D</step><octave>5</octave></pitch><duration>1</duration></note></measure>
                <measure number="2"><note><pitch><step>E</step><octave>5</octave></pitch><duration>4</duration></note>
                </measure></part></score-partwise>
                """);

        Answer answer = call("plan", split, "--alternatives", 1, "--lock", "finger@1:4=3", "--details");
        Answer nowhere = call("plan", split, "--lock", "finger@1:5=3");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("D5:3");
        assertThat(nowhere.err()).contains("beat is 5 in measure 1", "1, 4");
    }
}
