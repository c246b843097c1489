package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Barlines;

/** Invented snippets about repeats, endings and jumps. */
class PlayOrderReadingTest {
    private static final String FORWARD = Xml.barline("left", "<repeat direction=\"forward\"/>");
    private static final String BACKWARD =
            Xml.barline("right", "<bar-style>light-heavy</bar-style><repeat direction=\"backward\"/>");
    private static final String NOTE = Xml.note("C4", 16);

    private static String start(String numbers) {
        return Xml.barline("left", "<ending number=\"" + numbers + "\" type=\"start\"/>");
    }

    private static String stop(String numbers, String more) {
        return Xml.barline("right", "<ending number=\"" + numbers + "\" type=\"stop\"/>" + more);
    }

    /** One word per measure. */
    private static String shown(ReadTune read) {
        return read.tune().measures().stream()
                .map(measure -> shown(measure.barlines()))
                .collect(Collectors.joining(" "));
    }

    private static String shown(Barlines signs) {
        StringBuilder text = new StringBuilder();
        if (signs.repeatStart()) text.append("|:");
        if (signs.segno()) text.append("S");
        if (signs.coda()) text.append("O");
        if (!signs.endingStart().isEmpty())
            text.append(signs.endingStart().toString().replace(" ", ""));
        text.append("-");
        if (signs.endingStop()) text.append("]");
        signs.repeatEnd().ifPresent(times -> text.append(":|").append(times));
        if (signs.repeatEnd().isPresent() && !signs.repeatAfterJump()) text.append("once");
        if (signs.toCoda()) text.append("toO");
        if (signs.fine()) text.append("F");
        signs.jump().ifPresent(jump -> text.append(jump == Barlines.Jump.DA_CAPO ? "DC" : "DS"));
        return text.toString();
    }

    private static List<String> skipped(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    @Test
    void repeatsWithTheirTimes() {
        ReadTune read = Xml.read(Xml.score(
                FORWARD + NOTE,
                NOTE + Xml.barline("right", "<repeat direction=\"backward\" times=\"3\" after-jump=\"no\"/>"),
                NOTE + Xml.barline("right", "<repeat direction=\"backward\" times=\"1\"/>"),
                NOTE + Xml.barline("right", "<repeat direction=\"backward\" times=\"many\"/>")));

        assertThat(shown(read)).isEqualTo("|:- -:|3once - -:|2");
        assertThat(skipped(read))
                .containsExactly(
                        "left out: repeat played once (measure 3)",
                        "changed: repeat \"many\" times read as 2 (measure 4)");
    }

    @Test
    void repeatSignsAtTheOtherSideOfABarline() {
        ReadTune read = Xml.read(Xml.score(
                NOTE + Xml.barline("right", "<repeat direction=\"forward\"/>"),
                NOTE,
                Xml.barline("left", "<repeat direction=\"backward\"/>") + NOTE));

        assertThat(shown(read)).isEqualTo("- |:-:|2 -");
    }

    @Test
    void endingsWithListsOfNumbers() {
        ReadTune read = Xml.read(Xml.score(
                NOTE,
                start("1, 3") + NOTE,
                NOTE + stop("1, 3", "<repeat direction=\"backward\"/>"),
                start("2") + NOTE + stop("2", "<repeat direction=\"backward\"/>"),
                start("4") + NOTE + Xml.barline("right", "<ending number=\"4\" type=\"discontinue\"/>")));

        assertThat(shown(read)).isEqualTo("- [1,3]- -]:|2 [2]-]:|2 [4]-]");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void endingsWithoutNumbersFollowOn() {
        ReadTune read = Xml.read(Xml.score(
                NOTE,
                start("") + NOTE + stop("", "<repeat direction=\"backward\"/>"),
                start("") + NOTE + stop("", "")));

        assertThat(shown(read)).isEqualTo("- [1]-]:|2 [2]-]");
        assertThat(skipped(read))
                .containsExactly(
                        "changed: ending \"\" read as 1 (measure 2)", "changed: ending \"\" read as 2 (measure 3)");
    }

    @Test
    void anEndingThatStopsBeforeItsRepeatReachesToIt() {
        ReadTune read = Xml.read(Xml.score(
                FORWARD + NOTE, start("1") + NOTE + stop("1", ""), NOTE + BACKWARD, start("2") + NOTE + stop("2", "")));

        assertThat(shown(read)).isEqualTo("|:- [1]- -]:|2 [2]-]");
        assertThat(skipped(read)).containsExactly("changed: ending \"1\" reaches to its repeat (measure 2)");
    }

    @Test
    void endingsWithoutAnEndAreClosedAndEndsWithoutAStartListed() {
        ReadTune read =
                Xml.read(Xml.score(NOTE + stop("2", ""), start("1") + NOTE + BACKWARD, start("2") + NOTE, NOTE));

        assertThat(shown(read)).isEqualTo("- [1]-]:|2 [2]-] -");
        assertThat(skipped(read))
                .containsExactly(
                        "left out: ending without a start (measure 1)",
                        "changed: ending \"1\" had no end (measure 2)",
                        "changed: ending \"2\" had no end (measure 3)");
    }

    @Test
    void anEndingThatNothingRepeatsToIsLeftOut() {
        ReadTune read = Xml.read(Xml.score(NOTE, start("3") + NOTE + stop("3", ""), NOTE));

        assertThat(shown(read)).isEqualTo("- - -");
        assertThat(skipped(read)).containsExactly("left out: ending 3, to which nothing repeats (measure 2)");
    }

    @Test
    void endings1And2WithoutARepeatGetIt() {
        ReadTune read = Xml.read(
                Xml.score(FORWARD + NOTE, start("1") + NOTE + stop("1", ""), start("2") + NOTE + stop("2", ""), NOTE));

        assertThat(shown(read)).isEqualTo("|:- [1]-]:|2 [2]-] -");
        assertThat(skipped(read)).containsExactly("changed: repeat missing after ending 1, added (measure 2)");
    }

    @Test
    void jumpsByPlaybackAttributes() {
        ReadTune read = Xml.read(Xml.score(
                NOTE,
                Xml.direction("<segno/>", "<sound segno=\"s\"/>") + NOTE,
                NOTE + Xml.direction("<words>To Coda</words>", "<sound tocoda=\"c\"/>"),
                NOTE + Xml.direction("<words>D.S. al Coda</words>", "<sound dalsegno=\"s\"/>"),
                Xml.direction("<coda/>", "<sound coda=\"c\"/>") + NOTE));

        assertThat(shown(read)).isEqualTo("- S- -toO -DS O-");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void jumpsByWordsAndSigns() {
        ReadTune read = Xml.read(Xml.score(
                Xml.direction("<segno/>") + NOTE,
                NOTE + Xml.direction("<coda/>"),
                NOTE + Xml.words("D. S. al Coda"),
                Xml.direction("<coda/>") + NOTE));

        assertThat(shown(read)).isEqualTo("S- -toO -DS O-");
    }

    @Test
    void aSingleCodaSignBeforeTheJumpIsWhereOneLeaves() {
        ReadTune read = Xml.read(Xml.score(NOTE + Xml.direction("<coda/>"), NOTE + Xml.words("D.C. al Coda"), NOTE));

        assertThat(shown(read)).isEqualTo("-toO -DC O-");
    }

    @Test
    void daCapoAlFineInItsSpellings() {
        for (String words :
                List.of("D.C. al Fine", "D. C. al Fine", "Da Capo al Fine", "da capo", "DC al Fine", "D.C.")) {
            ReadTune read = Xml.read(Xml.score(NOTE + Xml.words("Fine"), NOTE + Xml.words(words)));
            assertThat(shown(read)).as(words).isEqualTo("-F -DC");
            assertThat(read.tune().measure(1).marks()).isEmpty();
        }
    }

    @Test
    void wordsThatOnlyBeginLikeAJumpStayWords() {
        for (String words : List.of("Dancing", "fine tune", "Codas are short", "d.cresc")) {
            ReadTune read = Xml.read(Xml.score(NOTE + Xml.words(words)));
            assertThat(shown(read)).as(words).isEqualTo("-");
            assertThat(read.tune().measure(0).marks()).hasSize(1);
        }
    }

    @Test
    void dalSegnoWithoutASegnoIsListed() {
        ReadTune read = Xml.read(Xml.score(NOTE, NOTE + Xml.words("D.S. al Fine")));

        assertThat(shown(read)).isEqualTo("- -");
        assertThat(skipped(read)).containsExactly("left out: D.S. without a segno (measure 2)");
    }

    @Test
    void aSegnoAtTheEndOfAMeasureBelongsToTheNextOneAndInTheMiddleToItsOwn() {
        ReadTune read = Xml.read(Xml.score(
                NOTE + Xml.direction("<segno/>"), Xml.note("C4", 8) + Xml.direction("<segno/>") + Xml.note("C4", 8)));

        assertThat(shown(read)).isEqualTo("- S-");
        assertThat(skipped(read)).containsExactly("changed: segno in mid-measure moved to the barline (measure 2)");
    }

    @Test
    void repeatsInMidMeasureSplitIt() {
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 12)
                        + Xml.barline("middle", "<repeat direction=\"backward\"/>")
                        + Xml.barline("middle", "<repeat direction=\"forward\"/>")
                        + Xml.harmony("G", "major")
                        + Xml.note("D4", 4),
                NOTE + BACKWARD));

        assertThat(shown(read)).isEqualTo("-:|2 |:- -:|2");
        assertThat(read.tune().measures())
                .extracting(measure -> measure.length().toString())
                .containsExactly("3/4", "1/4", "1");
        assertThat(read.tune().measures())
                .extracting(measure -> measure.pickup())
                .containsExactly(false, true, false);
        assertThat(read.tune().measure(1).chords().get(0).offset().isZero()).isTrue();
        assertThat(skipped(read)).containsExactly("changed: measure split at a repeat in its middle (measure 1)");
    }

    @Test
    void doubleBars() {
        ReadTune read = Xml.read(Xml.score(
                NOTE + Xml.barline("right", "<bar-style>light-light</bar-style>"),
                NOTE,
                Xml.barline("left", "<bar-style>light-light</bar-style>")
                        + NOTE
                        + Xml.barline("right", "<bar-style>dotted</bar-style>")));

        assertThat(read.tune().measures())
                .extracting(measure -> measure.barlines().doubleBar())
                .containsExactly(true, true, false);
    }

    @Test
    void repeatsOfAnotherPartCountWhereTheMelodyHasNone() {
        String other = "<part id=\"P2\"><measure number=\"1\">" + Xml.ATTRIBUTES + Xml.note("C3", 16) + BACKWARD
                + "</measure></part></score-partwise>";
        ReadTune read = Xml.read(Xml.score(NOTE).replace("</score-partwise>", other));

        assertThat(shown(read)).isEqualTo("-:|2");
        assertThat(skipped(read)).contains("assumed: repeats and jumps of part P2 belong to the melody");
    }
}
