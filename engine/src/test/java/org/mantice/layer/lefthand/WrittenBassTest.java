package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.layer.lefthand.LeftHands.best;
import static org.mantice.layer.lefthand.LeftHands.layer;
import static org.mantice.layer.lefthand.LeftHands.words;

import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.performance.BassMoment;
import org.mantice.performance.Performance;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Sentence;
import org.mantice.tune.BassMarks;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

class WrittenBassTest {
    private static Performance staff(String signs) {
        return PlayedTune.bass(Meter.of(4, 4), Tempo.quarters(100), 1, MusicalTime.QUARTER, signs);
    }

    @Test
    void buttonsAndRhythmAreThoseWritten() {
        LeftHandPlan plan = best(layer(staff("C CM G CM|G G7 D G7|A - Am -|B Bd - -"), 120));

        assertThat(plan.events()).hasSize(12);
        assertThat(plan.events().get(8).place().offset()).isEqualTo(MusicalTime.ZERO);
        assertThat(plan.events().get(9).place().offset()).isEqualTo(MusicalTime.of(1, 2));
        assertThat(words(plan)).startsWith("C bass 4 | C major 3 | G bass 2 | C major 3 | G bass 4 | G seventh 2");
    }

    @Test
    void bassNoteMayBeACounterbassWhereThatIsNearer() {
        LeftHandPlan plan = best(layer(staff("C CM E CM|C CM E CM"), 120));

        assertThat(words(plan)).contains("E counterbass");
    }

    @Test
    void whereTheStaffIsMarkedPlainNotesAreMeantOnTheRowOfBasses() {
        Performance plain = staff("C CM E CM|C CM E CM");
        List<BassMoment> fingered = plain.bass().stream()
                .map(moment -> new BassMoment(
                        moment.index(),
                        moment.measure(),
                        moment.place(),
                        moment.onset(),
                        moment.duration(),
                        moment.onsetMicros(),
                        moment.releaseMicros(),
                        moment.pitches(),
                        moment.chord(),
                        new BassMarks(false, OptionalInt.of(4))))
                .toList();
        Performance marked = new Performance(
                plain.tune(),
                plain.settings(),
                plain.passes(),
                plain.measures(),
                plain.treble(),
                plain.harmony(),
                fingered,
                plain.endMicros());

        assertThat(words(best(layer(marked, 120)))).contains("E bass").doesNotContain("E counterbass");
    }

    @Test
    void letterForARowThatIsMissingFallsBackAndSaysSo() {
        LeftHandPlan plan = best(layer(staff("G G7 D G7"), 48));

        assertThat(words(plan)).contains("G major").doesNotContain("seventh");
        assertThat(plan.events().get(1).substitutions()).contains("the instrument has no seventh row");
        assertThat(plan.events().get(1).missing()).isEqualTo(new TreeSet<>(List.of(5)));
    }

    @Test
    void notesThatTheInstrumentLacksAreSaidAndTheRestGoesOn() {
        LeftHandLayer layer = layer(staff("C CM G# CM"), 8);

        assertThat(words(best(layer))).isEqualTo("C bass 4 | C major 3 | C major 3");
        assertThat(layer.remarks())
                .extracting(Sentence::english)
                .containsExactly(
                        "No buttons of this instrument come near what is written at pass 1, measure 1, beat 3.");
    }

    @Test
    void stoppedRunOnTheBassRowsChangesFingers() {
        LeftHandPlan plan = best(layer(staff("C D E F|G A B C"), 120));

        for (int i = 1; i < plan.events().size(); i++)
            assertThat(plan.events().get(i).fingers())
                    .as(words(plan))
                    .isNotEqualTo(plan.events().get(i - 1).fingers());
    }

    @Test
    void writtenBassGivesNoCauseForVariety() {
        assertThat(best(layer(staff("C CM C CM|C CM C CM"), 72)).costByRule().get("left-hand.bass-variety"))
                .isZero();
    }
}
