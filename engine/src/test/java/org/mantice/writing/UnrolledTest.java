package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.Settings;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.VariationPlan;
import org.mantice.plan.VariationPlan.PassDecision;
import org.mantice.tune.Barlines;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class UnrolledTest {
    private static final Accordion ACCORDION =
            AccordionPresets.find("full-41-key-120-bass").orElseThrow();

    private static Performance once(Tune tune) {
        return Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(1).build());
    }

    private static VariationPlan plan(PassDecision... passes) {
        return new VariationPlan(List.of(passes), new TreeMap<>(), List.of());
    }

    private static String keys(Tune tune) {
        return tune.measures().stream()
                .flatMap(measure -> measure.melody().stream())
                .flatMap(event -> event.notes().stream())
                .map(note -> note.pitch() + (note.tiedBack() ? "<" : "") + (note.tiedForward() ? ">" : ""))
                .collect(Collectors.joining(" "));
    }

    private static List<Mark> marks(Tune tune, int measure) {
        return tune.measure(measure).marks();
    }

    /** O58: A with two endings is played A 1 A 2, and each pass carries its own register. */
    @Test
    void eachPassCarriesItsOwnRegisterAndOctave() {
        Tune tune = Tunes.melody("2/4", "@start C4 h | @ending1 @stop @end D4 h | @ending2 @stop @double E4 h");
        Performance performance = once(tune);
        VariationPlan plan = plan(new PassDecision(1, "bassoon", 0), new PassDecision(2, "master", 1));

        Tune unrolled = MusicXmlWriter.unrolled(performance, new PassRegisters(performance, plan, ACCORDION));

        assertThat(keys(unrolled)).isEqualTo("C4 D4 C5 E5");
        assertThat(marks(unrolled, 0)).contains(new Mark.Registration(MusicalTime.ZERO, false, 0, true));
        assertThat(marks(unrolled, 2))
                .anyMatch(mark ->
                        mark instanceof Mark.Registration sign && sign.high() && sign.low() && sign.middle() > 0);
        assertThat(marks(unrolled, 1)).isEmpty();
        assertThat(Written.text(MusicXmlWriter.write(unrolled))).doesNotContain("<repeat", "<ending", "time-only");
        assertThat(Written.read(MusicXmlWriter.write(unrolled)).tune()).isEqualTo(unrolled);
    }

    @Test
    void eachPassCarriesTheChordThatItPlays() {
        Tune tune = Tunes.melody("2/4", "\"C\" C4 h | \"G(Em)\" D4 h | E4 q, \"(A7)\" F4 q");
        Settings twice = SettingsBuilder.of(tune).timesThrough(2).build();

        Tune unrolled = MusicXmlWriter.unrolled(Performer.perform(tune, twice), Marking.NONE);

        assertThat(unrolled.measures().stream().map(Measure::chords).toList())
                .isEqualTo(Tunes.melody(
                                "2/4",
                                "\"C\" C4 h | \"G\" D4 h | E4 q, \"(A7)\" F4 q"
                                        + " | \"C\" C4 h | \"Em\" D4 h | E4 q, \"(A7)\" F4 q")
                        .measures()
                        .stream()
                        .map(Measure::chords)
                        .toList());
    }

    @Test
    void whereChordsInBracketsAreLeftOutNoneIsWritten() {
        Tune tune = Tunes.melody("2/4", "\"C\" C4 h | \"(G)(Em)\" D4 h | \"F\" E4 h");
        Settings without = SettingsBuilder.of(tune)
                .timesThrough(1)
                .chords(new ChordsPlayed(ChordsPlayed.Alternates.ALWAYS, false))
                .build();

        Tune unrolled = MusicXmlWriter.unrolled(Performer.perform(tune, without), Marking.NONE);

        assertThat(unrolled.measure(1).chords()).isEmpty();
    }

    @Test
    void aSignStandsOnlyWhereTheRegisterChanges() {
        Tune tune = Tunes.melody("2/4", "@start C4 h | @end D4 h");
        Performance performance = once(tune);
        VariationPlan plan = plan(new PassDecision(1, "clarinet", 0), new PassDecision(2, "clarinet", 0));

        Tune unrolled = MusicXmlWriter.unrolled(performance, new PassRegisters(performance, plan, ACCORDION));

        List<Mark> signs = unrolled.measures().stream()
                .flatMap(measure -> measure.marks().stream())
                .filter(Mark.Registration.class::isInstance)
                .toList();
        assertThat(signs).containsExactly(new Mark.Registration(MusicalTime.ZERO, false, 1, false));
    }

    @Test
    void noRepeatsAndJumpsAreLeftAndMeasuresAreNumberedAnew() {
        Tune tune = Tunes.melody("3/4", "@pickup G4 q | @start C4 h. | @fine @end D4 h. | @dc E4 h.");

        Tune unrolled = MusicXmlWriter.unrolled(once(tune), Marking.NONE);

        assertThat(unrolled.measures().stream().map(Measure::number).toList())
                .containsExactly("X1", "1", "2", "3", "4", "5", "X2", "6", "7", "8", "9");
        assertThat(unrolled.measures())
                .allMatch(measure -> !measure.barlines().repeatStart()
                        && measure.barlines().repeatEnd().isEmpty()
                        && measure.barlines().jump().isEmpty()
                        && !measure.barlines().fine());
        Barlines last = unrolled.measure(unrolled.measures().size() - 1).barlines();
        assertThat(last.doubleBar()).isTrue();
    }

    @Test
    void whatHeldTheFirstTimeIsWrittenAgainWherePlayGoesBack() {
        Tune tune = Tunes.melody(
                "4/4", "\"C\" !p !tempo=100 C4 w | @start C4 w | @end \"G\" !f !tempo=80 D4 w | \"F\" E4 w");

        Tune unrolled = MusicXmlWriter.unrolled(once(tune), Marking.NONE);

        Measure again = unrolled.measure(3);
        assertThat(again.chords())
                .extracting(chord -> chord.symbol().toString())
                .containsExactly("C");
        assertThat(again.marks())
                .contains(
                        new Mark.TempoChange(MusicalTime.ZERO, Tempo.quarters(100)),
                        new Mark.Dynamic(MusicalTime.ZERO, Loudness.P));
        assertThat(unrolled.measure(1).marks()).isEmpty();
        assertThat(unrolled.measure(1).chords()).isEmpty();
    }

    @Test
    void tiesStayWhereBothEndsMeet() {
        Tune tune = Tunes.melody("2/4", "@start C4 h | @ending1 @stop @end ~C4 q, D4~ q | @ending2 @stop ~D4 h");
        List<String> written = new ArrayList<>();

        written.add(keys(MusicXmlWriter.unrolled(
                once(Tunes.melody("2/4", "@start C4~ h | @ending1 @stop @end ~C4 h | @ending2 @stop D4 h")),
                Marking.NONE)));
        written.add(keys(MusicXmlWriter.unrolled(once(tune), Marking.NONE)));

        assertThat(written).containsExactly("C4> C4< C4 D4", "C4 C4 D4 C4 D4");
    }

    @Test
    void aTempoChosenForTheStartScalesWrittenChanges() {
        Tune tune = Tunes.melody("4/4", "!tempo=100 C4 w | !tempo=50 D4 w");
        Performance slow = Performer.perform(
                tune,
                SettingsBuilder.of(tune)
                        .tempo(Tempo.quarters(80))
                        .timesThrough(1)
                        .build());

        Tune unrolled = MusicXmlWriter.unrolled(slow, Marking.NONE);

        assertThat(marks(unrolled, 0)).containsExactly(new Mark.TempoChange(MusicalTime.ZERO, Tempo.quarters(80)));
        assertThat(marks(unrolled, 1)).containsExactly(new Mark.TempoChange(MusicalTime.ZERO, Tempo.quarters(40)));
    }
}
