package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/** Invented snippets about directions. */
class MarksReadingTest {
    private static final MusicalTime ZERO = MusicalTime.ZERO;
    private static final MusicalTime HALF = MusicalTime.of(1, 2);
    private static final String NOTE = Xml.note("C4", 16);

    private static List<Mark> marks(String... measures) {
        return read(measures).tune().measure(0).marks();
    }

    private static ReadTune read(String... measures) {
        return Xml.read(Xml.score(measures));
    }

    private static List<String> skipped(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    private static String metronome(String unit, String perMinute) {
        return "<metronome><beat-unit>" + unit + "<per-minute>" + perMinute + "</per-minute></metronome>";
    }

    @Test
    void dynamicsInDirectionsAtNotesAndInNumbers() {
        assertThat(marks(Xml.direction("<dynamics><mf/></dynamics>") + Xml.note("C4", 8)
                        + Xml.note("D4", 4, "<notations><dynamics><pp/></dynamics></notations>")
                        + "<sound dynamics=\"107\"/>" + Xml.note("E4", 4)))
                .containsExactly(
                        new Mark.Dynamic(ZERO, Loudness.MF),
                        new Mark.Dynamic(HALF, Loudness.PP),
                        new Mark.Dynamic(MusicalTime.of(3, 4), Loudness.F));
    }

    @Test
    void accentedDynamicsAreListed() {
        assertThat(skipped(read(Xml.direction("<dynamics><sfz/></dynamics>") + NOTE)))
                .containsExactly("left out: dynamic mark sfz (measure 1)");
    }

    /** O35; MusicXML 4.0, element sound: percent of a default forte, MIDI velocity 90. */
    @Test
    void dynamicsInPercentBecomeVelocities() {
        assertThat(DynamicsPercent.velocity(new BigDecimal("100"))).isEqualTo(90);
        assertThat(DynamicsPercent.velocity(new BigDecimal("71.11"))).isEqualTo(64);
        assertThat(DynamicsPercent.velocity(new BigDecimal("54.44"))).isEqualTo(49);
        assertThat(DynamicsPercent.velocity(new BigDecimal("1000"))).isEqualTo(127);
        assertThatThrownBy(() -> DynamicsPercent.velocity(new BigDecimal("-1")))
                .hasMessage("percent is -1; allowed: 0 or more");
    }

    @Test
    void hairpinsAreClosed() {
        String up = Xml.direction("<wedge type=\"crescendo\"/>");
        String down = Xml.direction("<wedge type=\"diminuendo\"/>");
        String stop = Xml.direction("<wedge type=\"stop\"/>");
        ReadTune read = read(stop + up + Xml.note("C4", 8) + stop + down + Xml.note("C4", 8));

        assertThat(read.tune().measure(0).marks())
                .containsExactly(
                        new Mark.HairpinStart(ZERO, true),
                        new Mark.HairpinEnd(HALF),
                        new Mark.HairpinStart(HALF, false),
                        new Mark.HairpinEnd(MusicalTime.WHOLE));
        assertThat(skipped(read))
                .containsExactly(
                        "left out: hairpin without its other end (measure 1)",
                        "changed: hairpin without an end, closed at the next one or at the end (measure 1)");
    }

    @Test
    void tempoByMetronomeMarkAndByPlayback() {
        assertThat(marks(Xml.direction(metronome("quarter</beat-unit><beat-unit-dot/>", "60"), "<sound tempo=\"90\"/>")
                        + NOTE))
                .containsExactly(new Mark.TempoChange(ZERO, new Tempo(MusicalTime.of(3, 8), 60_000)));
        assertThat(marks("<sound tempo=\"72.5\"/>" + NOTE))
                .containsExactly(new Mark.TempoChange(ZERO, new Tempo(MusicalTime.QUARTER, 72_500)));
    }

    @Test
    void aTempoThatIsNotANumberGivesWayToPlaybackOrIsReadAtItsMiddle() {
        String range = metronome("quarter</beat-unit>", "60-72");
        ReadTune both = read(Xml.direction(range, "<sound tempo=\"64\"/>") + NOTE);
        ReadTune alone = read(Xml.direction(range)
                + Xml.note("C4", 8)
                + Xml.direction(metronome("half</beat-unit>", "c. 80"))
                + Xml.note("C4", 8));

        assertThat(both.tune().measure(0).marks()).containsExactly(new Mark.TempoChange(ZERO, Tempo.quarters(64)));
        assertThat(skipped(both)).containsExactly("left out: tempo mark \"60-72\" (measure 1)");
        assertThat(alone.tune().measure(0).marks())
                .containsExactly(
                        new Mark.TempoChange(ZERO, Tempo.quarters(66)),
                        new Mark.TempoChange(HALF, new Tempo(HALF, 80_000)));
        assertThat(skipped(alone))
                .containsExactly(
                        "changed: tempo mark \"60-72\" read as 1/4=66 (measure 1)",
                        "changed: tempo mark \"c. 80\" read as 1/2=80 (measure 1)");
    }

    @Test
    void impossibleTemposAreListed() {
        assertThat(skipped(read("<sound tempo=\"0\"/>" + NOTE)))
                .containsExactly("left out: tempo mark \"0\" (measure 1)");
    }

    @Test
    void rehearsalMarksAndWordsAreKept() {
        assertThat(marks(Xml.direction("<rehearsal>B</rehearsal>") + Xml.words("with a swing") + NOTE))
                .containsExactly(new Mark.Rehearsal(ZERO, "B"), new Mark.Words(ZERO, "with a swing"));
    }

    /** O33; MusicXML 4.0: middle 1 to 3, and at least one dot although the schema lets none through. */
    @Test
    void accordionRegistrationsAreChecked() {
        String sign = "<accordion-registration>%s</accordion-registration>";
        assertThat(marks(Xml.direction(sign.formatted(
                                "<accordion-high/><accordion-middle>2</accordion-middle><accordion-low/>"))
                        + NOTE))
                .containsExactly(new Mark.Registration(ZERO, true, 2, true));
        for (String middle : List.of("0", "4"))
            assertThat(skipped(read(Xml.direction(sign.formatted("<accordion-middle>" + middle + "</accordion-middle>"))
                            + NOTE)))
                    .containsExactly("left out: accordion registration with " + middle + " middle dots (measure 1)");
        ReadTune empty = read(Xml.direction(sign.formatted("")) + NOTE);
        assertThat(empty.tune().measure(0).marks()).isEmpty();
        assertThat(skipped(empty)).containsExactly("left out: accordion registration without a dot (measure 1)");
    }

    @Test
    void directionsThatMeanNothingHereAreListed() {
        assertThat(skipped(read(Xml.direction("<pedal type=\"start\"/>") + "<figured-bass/>"
                        + Xml.direction(
                                "<metronome><beat-unit>quarter</beat-unit><beat-unit>half</beat-unit></metronome>")
                        + NOTE)))
                .containsExactly(
                        "left out: pedal (measure 1)",
                        "left out: figured bass (measure 1)",
                        "left out: tempo mark \"between two note values\" (measure 1)");
    }

    @Test
    void anOffsetMovesADirection() {
        assertThat(marks(Xml.direction("<dynamics><f/></dynamics>", "<offset>8</offset>") + NOTE))
                .containsExactly(new Mark.Dynamic(HALF, Loudness.F));
    }

    @Test
    void titleAndDance() {
        String head = "<work><work-title>Six Tunes</work-title></work><movement-title> The  Pond\n </movement-title>"
                + "<part-list>";
        ReadTune read = Xml.read(Xml.score(Xml.words("Slow Waltz") + NOTE).replace("<part-list>", head));

        assertThat(read.tune().title()).isEqualTo("The Pond");
        assertThat(read.tune().dance()).isEqualTo(Optional.of("slow waltz"));
        assertThat(read(NOTE).tune().dance()).isEmpty();
    }

    @Test
    void crescendoInWordsLastsToTheNextLoudnessMarkIfOneFollows() {
        ReadTune read = read(
                Xml.words("cresc.") + NOTE,
                Xml.note("C4", 8) + Xml.direction("<dynamics><f/></dynamics>") + Xml.note("C4", 8),
                Xml.words("dim.") + NOTE);

        assertThat(read.tune().measure(0).marks())
                .containsExactly(new Mark.Words(ZERO, "cresc."), new Mark.HairpinStart(ZERO, true));
        assertThat(read.tune().measure(1).marks())
                .containsExactly(new Mark.HairpinEnd(HALF), new Mark.Dynamic(HALF, Loudness.F));
        assertThat(read.tune().measure(2).marks()).containsExactly(new Mark.Words(ZERO, "dim."));
        assertThat(read.skipped()).isEmpty();
    }
}
