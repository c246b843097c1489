package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.tune;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.Calls.Answer;
import org.mantice.file.PatternFile;
import org.mantice.pattern.BassPatterns;

/** Patterns of the left hand on the command line. */
class PatternCallsTest {
    private static final Path WALTZ = tune("lanterns-at-the-weir");

    @TempDir
    Path folder;

    @Test
    void planSaysWhichPatternIsAssumedAndWhy() {
        Answer answer = call("plan", WALTZ, "--alternatives", 1);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("left hand: waltz (assumed from the dance)");
    }

    @Test
    void patternsAreChosenBySectionAndPassAndKeptInPlanFiles() throws IOException {
        Answer answer = call(
                "plan",
                WALTZ,
                "--alternatives",
                1,
                "--times",
                2,
                "--pattern",
                "waltz-with-runs",
                "--pattern",
                "sustained@1-4/2",
                "--left-hand",
                "bass-only@5",
                "--out",
                folder);

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out())
                .contains("waltz with bass runs", "held chords", "waltz with bass runs, bass only")
                .doesNotContain("assumed from the dance");
        Answer check = call("check", folder.resolve("lanterns-at-the-weir.plan.json"));
        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.out()).contains("priced anew: the same");
    }

    @Test
    void patternsOfAFileAreKnown() throws IOException {
        Path file = folder.resolve("mine" + PatternFile.SUFFIX);
        String shipped = call("patterns", "--json").out();
        String mine = shipped.replaceAll("\"id\" : \"([a-z0-9-]+)\"", "\"id\" : \"my-$1\"");
        Files.writeString(file, mine);

        assertThat(call("patterns", file).out()).contains("my-waltz: Waltz");
        assertThat(call("check", file).out()).contains(BassPatterns.shipped().size() + " patterns of the left hand");
        Answer plan = call("plan", WALTZ, "--alternatives", 1, "--pattern-file", file, "--pattern", "my-waltz");
        assertThat(plan.code()).as(plan.err()).isZero();
        assertThat(plan.out()).contains("left hand: waltz\n");
    }

    @Test
    void everyShippedPatternIsListed() {
        Answer answer = call("patterns");

        assertThat(answer.code()).isZero();
        BassPatterns.shipped().forEach(pattern -> assertThat(answer.out()).contains("\n" + pattern.id() + ": "));
        assertThat(answer.out()).contains("before another bass B0> R1 R2");
    }

    @Test
    void wrongPatternsAreRefusedWithWhatIsAllowed() throws IOException {
        refused("pattern is valse; allowed: slow-waltz, waltz", "--pattern", "valse");
        refused("left-hand is loud; allowed: full, bass-only, chords-only, silent", "--left-hand", "loud");
        refused("pattern is waltz@; allowed: WHAT", "--pattern", "waltz@");
        Answer measure = call("plan", WALTZ, "--pattern", "waltz@900");
        assertThat(measure.err()).contains("measure in pattern is 900; allowed: ");
        Answer meter = call("plan", WALTZ, "--pattern", "polka");
        assertThat(meter.err()).contains("fits no measure in 3/4; allowed: slow-waltz, waltz");
        Answer pass = call("plan", WALTZ, "--times", 1, "--pattern", "waltz/9");
        assertThat(pass.err()).contains("pass of a pattern is 9; allowed: 1 to ");
        Path damaged = folder.resolve("damaged" + PatternFile.SUFFIX);
        Files.writeString(damaged, "{\n\"format\": \"mantice-patterns\"");
        Answer file = call("plan", WALTZ, "--pattern-file", damaged);
        assertThat(file.code()).isNotZero();
        assertThat(file.err()).contains("line 2").contains("ends in the middle");
    }

    private static void refused(String words, String... options) {
        Answer answer = call("plan", WALTZ, options[0], options[1]);

        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err()).contains(words);
    }
}
