package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.StradellaBass;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.performance.Performance;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.WrittenPlace;

/** What the meter asks of the left hand; common practice, no source. */
class PatternBeatsTest {
    private static final MusicalTime DOTTED_QUARTER = MusicalTime.of(3, 8);

    private static List<Beat> beatsOf(Performance performance) {
        return LeftHandBeats.of(performance, StradellaBass.ofSize(120));
    }

    /** Each beat as part, chord and offset: {@code "B C 0"}; {@code b} where the bass should change. */
    private static String beats(Performance performance) {
        return beatsOf(performance).stream().map(PatternBeatsTest::words).collect(Collectors.joining(", "));
    }

    private static String words(Beat beat) {
        Wanted.OfChord chord = (Wanted.OfChord) beat.wanted();
        String part =
                switch (chord.part()) {
                    case BASS -> chord.changeDue() ? "b" : "B";
                    case CHORD -> "C";
                    case BOTH -> "H";
                };
        return part + " " + chord.chord() + " " + beat.place().offset();
    }

    private static String in(Meter meter, String chords) {
        return beats(PlayedTune.of(meter, Tempo.quarters(100), 1, chords + "|N.C."));
    }

    @Test
    void waltzIsBassChordChordAndTheBassTakesTurnsWhileTheChordLasts() {
        assertThat(in(Meter.of(3, 4), "C|C|C"))
                .isEqualTo("B C 0, C C 1/4, C C 1/2, b C 0, C C 1/4, C C 1/2, B C 0, C C 1/4, C C 1/2");
    }

    @Test
    void newChordBeginsWithItsRoot() {
        assertThat(in(Meter.of(3, 4), "C|G|C"))
                .startsWith("B C 0")
                .contains("B G 0")
                .doesNotContain("b ");
    }

    @Test
    void duplesAlternateWithinTheMeasure() {
        assertThat(in(Meter.of(4, 4), "C|C")).startsWith("B C 0, C C 1/4, b C 1/2, C C 3/4, B C 0");
        assertThat(in(Meter.of(2, 2), "C")).isEqualTo("B C 0, C C 1/4, b C 1/2, C C 3/4");
        assertThat(in(Meter.of(2, 4), "C")).isEqualTo("B C 0, C C 1/8, b C 1/4, C C 3/8");
    }

    @Test
    void sixEightIsPlayedInTwo() {
        assertThat(in(Meter.of(6, 8), "C|C")).isEqualTo("B C 0, C C 3/8, b C 0, C C 3/8");
    }

    @Test
    void otherMetersFollowTheirGroups() {
        assertThat(in(Meter.of(9, 8), "C")).isEqualTo("B C 0, C C 3/8, C C 3/4");
        assertThat(in(Meter.of(12, 8), "C")).isEqualTo("B C 0, C C 3/8, b C 3/4, C C 9/8");
        assertThat(in(Meter.of(5, 4), "C")).isEqualTo("B C 0, C C 1/4, C C 1/2, b C 3/4, C C 1");
        assertThat(in(new Meter(List.of(3, 2), 4), "C")).isEqualTo("B C 0, C C 1/4, C C 1/2, b C 3/4, C C 1");
        assertThat(in(Meter.of(7, 8), "C")).isEqualTo("B C 0, C C 1/8, b C 1/4, C C 3/8, B C 1/2, C C 5/8, C C 3/4");
        assertThat(in(new Meter(List.of(3, 2, 2), 8), "C"))
                .isEqualTo("B C 0, C C 1/8, C C 1/4, b C 3/8, C C 1/2, B C 5/8, C C 3/4");
    }

    @Test
    void freeTimeHoldsTheChord() {
        List<Beat> beats = beatsOf(PlayedTune.of(Meter.FREE, Tempo.quarters(60), 1, "C|Am"));

        assertThat(beats).extracting(PatternBeatsTest::words).containsExactly("H C 0", "H Am 0");
        assertThat(beats.get(0).releaseMicros()).isEqualTo(3_800_000);
    }

    @Test
    void chordThatBeginsOffThePatternBeginsWithItsBass() {
        assertThat(in(Meter.of(4, 4), "C G@1/2")).isEqualTo("B C 0, C C 1/4, B G 1/2, C G 3/4");
        assertThat(in(Meter.of(4, 4), "C G@1/4")).isEqualTo("H C 0, B G 1/4, C G 1/2, C G 3/4");
        assertThat(in(Meter.of(3, 4), "C G@1/4")).isEqualTo("H C 0, B G 1/4, C G 1/2");
    }

    @Test
    void chordOfASingleStepIsPlayedWithItsBassAtOnce() {
        assertThat(in(Meter.of(3, 4), "C G@1/2")).isEqualTo("B C 0, C C 1/4, H G 1/2");
    }

    @Test
    void chordBetweenStepsIsNotLost() {
        assertThat(in(Meter.of(4, 4), "C G@7/8")).isEqualTo("B C 0, C C 1/4, b C 1/2, C C 3/4, H G 7/8");
    }

    @Test
    void repeatedSymbolDoesNotCutThePattern() {
        assertThat(in(Meter.of(4, 4), "C C")).isEqualTo(in(Meter.of(4, 4), "C"));
    }

    @Test
    void pickupAndNoChordAreSilent() {
        assertThat(in(Meter.of(3, 4), "(C|N.C.|C")).isEqualTo("B C 0, C C 1/4, C C 1/2");
    }

    @Test
    void silentBeforeTheFirstSymbol() {
        assertThat(in(Meter.of(3, 4), "%|C")).isEqualTo("B C 0, C C 1/4, C C 1/2");
    }

    @Test
    void lastMeasureStopsAfterBassAndChord() {
        List<Beat> beats = beatsOf(PlayedTune.of(Meter.of(3, 4), Tempo.quarters(100), 1, "C"));

        assertThat(beats).extracting(PatternBeatsTest::words).containsExactly("B C 0", "C C 1/4");
        assertThat(beats.get(1).releaseMicros()).isLessThan(1_200_000);
    }

    @Test
    void stepsTooShortForTheHandArePlayedInFewer() {
        Performance fast = PlayedTune.of(Meter.of(3, 8), new Tempo(DOTTED_QUARTER, 130_000), 1, "C|C|N.C.");

        assertThat(beats(fast)).isEqualTo("H C 0, H C 0");
    }

    @Test
    void notesSoundForTheirShare() {
        List<Beat> beats = beatsOf(PlayedTune.of(Meter.of(3, 4), Tempo.quarters(120), 1, "C|C"));

        assertThat(beats.get(0).releaseMicros()).isEqualTo(300_000);
        assertThat(beats.get(1).releaseMicros()).isEqualTo(750_000);
        assertThat(LeftHandScore.availableMillis(beats.get(0), beats.get(1))).isEqualTo(200);
    }

    @Test
    void slowWaltzIsPlayedBroader() {
        List<Beat> beats = beatsOf(PlayedTune.of(Meter.of(3, 4), Tempo.quarters(60), 1, "C|C"));

        assertThat(beats.get(0).releaseMicros()).isEqualTo(900_000);
        assertThat(beats.get(1).releaseMicros()).isEqualTo(1_700_000);
    }

    @Test
    void everyPassIsPlayed() {
        assertThat(beatsOf(PlayedTune.of(Meter.of(3, 4), Tempo.quarters(100), 3, "C|G")))
                .extracting(Beat::pass)
                .containsExactly(1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3, 3, 3, 3);
    }

    private static String asked(Meter meter, String chords, Choice... choices) {
        Accompaniment asked = Accompaniment.NONE;
        for (Choice choice : choices) asked = asked.with(choice);
        return beats(PlayedTune.of(meter, Tempo.quarters(120), 1, chords + "|N.C.", asked));
    }

    private static Choice section(int first, int last, String pattern) {
        return new Choice(first, last, OptionalInt.empty(), Optional.of(pattern), Optional.empty());
    }

    private static Choice hand(Hand hand) {
        return Choice.everywhere(Optional.empty(), Optional.of(hand));
    }

    @Test
    void chosenPatternIsPlayedInItsSectionOnly() {
        assertThat(asked(Meter.of(3, 4), "C|G|C", section(1, 1, "sustained")))
                .isEqualTo("B C 0, C C 1/4, C C 1/2, H G 0, B C 0, C C 1/4, C C 1/2");
        assertThat(asked(Meter.of(4, 4), "C G", section(0, 0, "tango-marcato")))
                .isEqualTo("H C 0, H C 1/4, H G 1/2, H G 3/4");
    }

    @Test
    void handMayPlayAPartOfThePattern() {
        assertThat(asked(Meter.of(3, 4), "C|G", hand(Hand.BASS_ONLY))).isEqualTo("B C 0, B G 0");
        assertThat(asked(Meter.of(3, 4), "C|G@1/2", hand(Hand.CHORDS_ONLY)))
                .isEqualTo("C C 1/4, C C 1/2, C C 1/4, C G 1/2");
        assertThat(asked(Meter.of(3, 4), "C|G", hand(Hand.SILENT))).isEmpty();
    }

    @Test
    void thirdAndFifthThatThePatternAsksForAreNoLongerInTurns() {
        Performance tune = PlayedTune.of(
                Meter.of(4, 4),
                Tempo.quarters(120),
                1,
                "C|N.C.",
                Accompaniment.NONE.with(section(0, 0, "walking-bass")));

        assertThat(LeftHands.words(LeftHands.best(LeftHands.layer(tune, 120))))
                .contains("C bass")
                .containsPattern("E counterbass \\d \\| G bass \\d \\| E counterbass");
    }

    @Test
    void withoutAThirdInReachTheFifthIsPlayed() {
        Performance tune = PlayedTune.of(
                Meter.of(4, 4),
                Tempo.quarters(120),
                1,
                "C|N.C.",
                Accompaniment.NONE.with(section(0, 0, "four-beat-third")));

        assertThat(LeftHands.words(LeftHands.best(LeftHands.layer(tune, 12)))).contains("| G bass");
    }

    @Test
    void patternThatIsChosenTakesThePlaceOfTheWrittenStaff() {
        Performance staff =
                PlayedTune.bass(Meter.of(3, 4), Tempo.quarters(100), 1, MusicalTime.QUARTER, "C2 CM CM|G2 GM GM");
        Performance muted = PlayedTune.asking(staff, Accompaniment.NONE.with(hand(Hand.BASS_ONLY)));

        assertThat(beatsOf(staff)).hasSize(6);
        assertThat(beatsOf(muted))
                .extracting(Beat::place)
                .extracting(WrittenPlace::offset)
                .containsOnly(MusicalTime.ZERO);
        assertThat(beatsOf(PlayedTune.asking(staff, Accompaniment.NONE.with(section(1, 1, "waltz")))))
                .extracting(Beat::measure)
                .containsExactly(0, 0, 0);
    }
}
