package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.tune;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.app.Calls.Answer;

class CommandLineTest {
    @TempDir
    Path folder;

    @Test
    void startWithoutArgumentsAndDisplayPlansTheShippedExample() {
        Answer answer = call();

        assertThat(answer.code()).isZero();
        assertThat(answer.err().lines())
                .singleElement()
                .asString()
                .startsWith("There is no display, so here is the command line: ");
        assertThat(answer.out())
                .contains("Lanterns at the Weir", "turns of the bellows", "(assumed)", "OUT@", "estimates");
    }

    @Test
    void aFileAloneIsForTheWindow() {
        Answer answer = call(tune("the-rusty-gate"));

        assertThat(answer.err()).startsWith("There is no display to show a window on");
    }

    @Test
    void planComparesPlansAndNamesWhatIsAssumed() {
        Answer answer = call("plan", tune("the-rusty-gate"), "--alternatives", 4);

        assertThat(answer.code()).isZero();
        assertThat(answer.out()).contains("best", "plan factor on air", "cost in position changes", "times through");
    }

    @Test
    void tempoTimesAndKeyAreTakenFromTheCall() {
        Answer answer = call("plan", tune("lanterns-at-the-weir"), "--tempo", 150, "--times", 2, "--transpose", -2);

        assertThat(answer.code()).isZero();
        assertThat(answer.out()).contains("tempo 1/4=150,", "times through 2,", "transposed by -2");
    }

    @Test
    void planFilesAreWrittenCheckedExplainedAndCompared() throws IOException {
        Path out = folder.resolve("plans");
        Answer plan = call("plan", tune("seven-geese-in-the-schoolyard"), "--out", out);
        assertThat(plan.code()).as(plan.err()).isZero();
        Path first;
        Path second;
        try (Stream<Path> files = Files.list(out)) {
            Object[] written = files.sorted().toArray();
            assertThat(written).hasSizeGreaterThanOrEqualTo(2);
            first = (Path) written[0];
            second = (Path) written[1];
        }

        Answer check = call("check", first, second);
        Answer explain = call("explain", first);
        Answer place = call("explain", first, "3", "--pass", 1);
        Answer compare = call("compare", first, second);

        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.out().lines()).hasSize(2).allMatch(line -> line.endsWith("priced anew: the same"));
        assertThat(explain.code()).isZero();
        assertThat(explain.out().lines().count()).isGreaterThan(20);
        assertThat(place.code()).as(place.err()).isZero();
        assertThat(place.out()).contains("what each would cost more", "finger");
        assertThat(compare.code()).as(compare.err()).isZero();
        assertThat(compare.out()).containsPattern("\\d+ decisions? differ").contains("what the second costs more");
    }

    @Test
    void jsonOnStandardOutputIsTheBestPlanAndNothingElse() throws IOException {
        Answer answer = call("plan", tune("five-steps-to-the-ferry"), "--json");

        JsonNode tree = new ObjectMapper().readTree(answer.out());

        assertThat(answer.code()).isZero();
        assertThat(tree.path("format").asText()).isEqualTo("mantice-plan");
        assertThat(tree.at("/plan/label").asText()).isEqualTo("best");
        assertThat(tree.at("/plan/rightHand/events").size()).isGreaterThan(20);
        long sum =
                tree.path("explanation").path("children").findValues("nothing").size();
        for (JsonNode layer : tree.path("explanation").path("children"))
            sum += layer.path("cost").asLong();
        assertThat(sum).isEqualTo(tree.path("costMicropoints").asLong()).isPositive();
    }

    @Test
    void sameCallPrintsTheSameTwice() {
        Object[] words = {"plan", tune("the-rusty-gate"), "--json", "--alternatives", 3};

        assertThat(call(words).out()).isEqualTo(call(words).out());
    }

    @Test
    void folderIsPlannedWholeAndOneBadFileNeverStopsTheRest() throws IOException {
        Files.copy(tune("five-steps-to-the-ferry"), folder.resolve("a.musicxml"));
        Files.writeString(folder.resolve("b.musicxml"), "<score-partwise><part-list>");
        Files.copy(tune("lanterns-at-the-weir"), folder.resolve("c.musicxml"));

        Answer answer = call("plan", folder);

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out()).contains("Five Steps to the Ferry", "Lanterns at the Weir");
        assertThat(answer.err())
                .contains("b.musicxml")
                .contains("3 tunes: 2 planned, 0 not playable as asked, 1 could not");
        assertThat(answer.err().lines()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan",
                "plan x.musicxml --accordion no-such-accordion",
                "plan x.musicxml --alternatives 0",
                "plan x.musicxml --tempo fast",
                "plan x.musicxml --without no.rule",
                "plan x.musicxml --weight variation.growing",
                "sing x.musicxml",
                "explain",
                "plan x.musicxml --colour red"
            })
    void wrongCallIsOneLineThatSaysWhatIsAllowed(String words) {
        Answer answer = call((Object[]) words.split(" "));

        assertThat(answer.code()).as(answer.err()).isEqualTo(2);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).doesNotContain("Exception").contains("allowed");
    }

    @Test
    void badTunesAreOneLineEachWithoutATrace() throws IOException {
        String whole = Files.readString(tune("five-steps-to-the-ferry"));
        Files.writeString(folder.resolve("truncated.musicxml"), whole.substring(0, whole.length() / 2));
        Files.createFile(folder.resolve("empty.musicxml"));
        Files.write(folder.resolve("binary.musicxml"), new byte[] {0, 1, 2, 3, (byte) 200, 0, 7});
        Files.writeString(folder.resolve("silent.musicxml"), whole.replaceAll("(?s)<pitch>.*?</pitch>", "<rest/>"));
        for (String name : new String[] {"truncated", "empty", "binary", "silent", "nowhere"}) {
            Answer answer = call("plan", folder.resolve(name + ".musicxml"));

            assertThat(answer.code()).as(name + answer.out()).isEqualTo(1);
            assertThat(answer.err().lines()).as(name).hasSize(1);
            assertThat(answer.err())
                    .contains(name + ".musicxml")
                    .doesNotContain("Exception")
                    .doesNotContain("\tat ");
        }
    }

    @Test
    void badPlanFilesAreOneLineEachWithThePlace() throws IOException {
        Path out = folder.resolve("plans");
        call("plan", tune("five-steps-to-the-ferry"), "--alternatives", 1, "--out", out);
        Path plan = out.resolve("five-steps-to-the-ferry.plan.json");
        String json = Files.readString(plan);
        Path bad = folder.resolve("bad.plan.json");
        String[][] cases = {
            {json.substring(0, json.length() / 2), "ends in the middle"},
            {json.replaceFirst("\"version\" : \"0\\.\\d+\"", "\"version\" : \"7.0\""), "a newer Mantice"},
            {json.replace("\"timesThrough\" : ", "\"timesThrough\" : 9"), "timesThrough"},
            {
                json.replaceFirst("\"fingers\" : \\[\\s*\\d", "\"fingers\" : [ \"x\""),
                "fingers/0 is \"x\"; allowed: a whole number"
            },
            {"[]", "a JSON object"},
            {"", "is empty"},
            {json.replaceFirst("\"engine\" :", "\"engine\" : \"again\", \"engine\" :"), "comes twice"},
        };
        for (String[] one : cases) {
            Files.writeString(bad, one[0]);

            Answer answer = call("check", bad);

            assertThat(answer.code()).as(one[1] + answer.out()).isEqualTo(1);
            assertThat(answer.err().lines()).as(answer.err()).hasSize(1);
            assertThat(answer.err()).contains("bad.plan.json").contains(one[1]).doesNotContain("\tat ");
        }
    }

    @Test
    void contradictoryLocksAreNamed() {
        Answer answer = call(
                "plan",
                tune("five-steps-to-the-ferry"),
                "--lock",
                "octave=0",
                "--lock",
                "register=bassoon",
                "--lock",
                "pass1:register=master");

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out())
                .contains("not playable as asked", "bassoon", "master")
                .doesNotContain("octave 0");
    }

    @Test
    void lockIsKeptInEveryPlan() {
        Answer answer = call("plan", tune("five-steps-to-the-ferry"), "--lock", "finger@1:1=2", "--details");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).containsPattern("(?m)^ +1 .*C4:2");
    }

    @Test
    void accordionTooSmallGetsRemedies() {
        Answer answer = call("plan", tune("fog-over-grebe-holm"), "--accordion", "student-26-key-48-bass");

        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out()).contains("not playable as asked", "Notes without a key", "remedy:");
    }

    @Test
    void buttonsAreLockedByTheirNames() {
        Answer kept = call(
                "plan",
                tune("five-steps-to-the-ferry"),
                "--lock",
                "buttons@2:3=E counterbass",
                "--details",
                "--alternatives",
                1);
        Answer unknown = call("plan", tune("five-steps-to-the-ferry"), "--lock", "buttons@2:3=H bass");
        Answer torn = call(
                "plan",
                tune("five-steps-to-the-ferry"),
                "--lock",
                "buttons@2:3=E counterbass",
                "--lock",
                "buttons@2:3=G bass");

        assertThat(kept.code()).as(kept.out()).isZero();
        assertThat(kept.out()).containsPattern("(?m)^ +2 .*_E:\\d");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("H bass", "as C bass");
        assertThat(torn.code()).isEqualTo(1);
        assertThat(torn.out()).contains("E counterbass", "G bass");
    }
}
