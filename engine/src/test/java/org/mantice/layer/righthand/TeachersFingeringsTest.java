package org.mantice.layer.righthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Taste;
import org.mantice.rule.HandMove;

/**
 * What teachers would sign. Scales: University of Evansville, "Scale and Arpeggio Fingerings"; Bellingham Music Teachers
 * Association chart. All else: common practice, no source.
 */
class TeachersFingeringsTest {
    @Test
    void fiveNotesAreAnchoredThumbOnTheLowestAndFiveOnTheHighest() {
        RightHandPlan plan = Hands.best("C4 D4 E4 F4 G4 F4 E4 C4 G4 E4 C4", 300);

        assertThat(Hands.fingers(plan)).isEqualTo("1 2 3 4 5 4 3 1 5 3 1");
        assertThat(plan.positionChanges()).isZero();
        assertThat(plan.events()).allMatch(event -> event.handPlace() == 28);
    }

    @Test
    void sixKeysStayInOnePosition() {
        assertThat(Hands.best("C4 E4 G4 A4 G4 E4 D4 F4 A4 F4 C4", 300).positionChanges())
                .isZero();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C major up, C4 D4 E4 F4 G4 A4 B4 C5, 1 2 3 1 2 3 4 5",
        "C major down, C5 B4 A4 G4 F4 E4 D4 C4, 5 4 3 2 1 3 2 1",
        "C major two octaves, C4 D4 E4 F4 G4 A4 B4 C5 D5 E5 F5 G5 A5 B5 C6, 1 2 3 1 2 3 4 1 2 3 1 2 3 4 5",
        "G major two octaves, G3 A3 B3 C4 D4 E4 F#4 G4 A4 B4 C5 D5 E5 F#5 G5, 1 2 3 1 2 3 4 1 2 3 1 2 3 4 5",
        "D major two octaves, D4 E4 F#4 G4 A4 B4 C#5 D5 E5 F#5 G5 A5 B5 C#6 D6, 1 2 3 1 2 3 4 1 2 3 1 2 3 4 5",
        "F major, F4 G4 A4 Bb4 C5 D5 E5 F5, 1 2 3 4 1 2 3 4",
        "F major two octaves, F4 G4 A4 Bb4 C5 D5 E5 F5 G5 A5 Bb5 C6 D6 E6 F6, 1 2 3 4 1 2 3 1 2 3 4 1 2 3 4",
        "A major, A4 B4 C#5 D5 E5 F#5 G#5 A5, 1 2 3 1 2 3 4 5",
        "E major, E4 F#4 G#4 A4 B4 C#5 D#5 E5, 1 2 3 1 2 3 4 5",
        "B major, B3 C#4 D#4 E4 F#4 G#4 A#4 B4, 1 2 3 1 2 3 4 5"
    })
    void scalesFromWhiteKeysGoByTheHandbook(String name, String notes, String fingers) {
        assertThat(Hands.fingers(Hands.best(notes, 300))).isEqualTo(fingers);
    }

    @Test
    void theHandMovesInTheRest() {
        RightHandPlan plan = Hands.best("C4 D4 E4 F4 G4 r C5 D5 E5 F5 G5", 300);

        assertThat(Hands.fingers(plan)).isEqualTo("1 2 3 4 5 1 2 3 4 5");
        assertThat(plan.events().get(5).move()).isEqualTo(HandMove.SHIFT_AT_GAP);
    }

    @Test
    void fastRepeatedNotesChangeFingersAndSlowOnesKeepTheirs() {
        assertThat(Hands.fingers(Hands.best("E4 E4 E4", 100))).isEqualTo("3 2 1");
        assertThat(Hands.best("E4 E4 E4 E4", 600).events().stream()
                        .map(RightHandPlan.Event::fingers)
                        .distinct())
                .hasSize(1);
    }

    @Test
    void smallAndLargeHandsPlayAWideFigureDifferently() {
        String wide = "C4 E4 G4 C5 E5 C5 G4 E4 C4 D5 C4 E5";

        assertThat(Hands.fingers(Hands.best(wide, 300, 75, Taste.PLAIN)))
                .isNotEqualTo(Hands.fingers(Hands.best(wide, 300, 120, Taste.PLAIN)));
    }

    @Test
    void printedFingersAreFollowedUntilThePlayerTurnsTheWishOff() {
        String printed = "C4=2 D4=3 E4=4 D4=3 C4=2";

        assertThat(Hands.fingers(Hands.best(printed, 300))).isEqualTo("2 3 4 3 2");
        assertThat(Hands.fingers(Hands.best(printed, 300, 98, Taste.PLAIN.with("fingering.as-printed", 0))))
                .isEqualTo("1 2 3 2 1");
    }

    @Test
    void aHeldKeyKeepsItsFingerUnderAMovingLine() {
        RightHandPlan plan = Hands.best("C4_ G4 E4", 300);

        assertThat(plan.events().get(1).keys()).containsExactly(60, 67);
        assertThat(plan.events().get(1).fingers().get(0))
                .isEqualTo(plan.events().get(0).fingers().get(0));
    }

    /** No finger glides from one white key to the next where the thumb can pass. */
    @ParameterizedTest
    @CsvSource({"D4 E4 F#4 G4 A4 B4 G4, 900", "A4 A4 G4 F4 E4 D4 C4 D4, 900", "D4 E4 F#4 G4 A4 B4 G4, 300"})
    void noFingerSlidesBetweenWhiteKeysInLegato(String notes, long millis) {
        List<RightHandPlan.Event> events = Hands.best(notes, millis).events();

        for (int i = 1; i < events.size(); i++)
            if (!TrebleKeyboard.isBlack(events.get(i - 1).keys().get(0)))
                assertThat(events.get(i).move()).isNotEqualTo(HandMove.GLIDE);
    }
}
