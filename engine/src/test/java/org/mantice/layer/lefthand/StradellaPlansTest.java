package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.layer.lefthand.LeftHands.best;
import static org.mantice.layer.lefthand.LeftHands.inFour;
import static org.mantice.layer.lefthand.LeftHands.layer;
import static org.mantice.layer.lefthand.LeftHands.words;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.StradellaBass;
import org.mantice.layer.Question;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.player.Taste;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** Facts about the Stradella bass, as far as they show in plans. */
class StradellaPlansTest {
    private static SortedSet<Integer> tones(Integer... tones) {
        return new TreeSet<>(List.of(tones));
    }

    private static LeftHandPlan.Event at(LeftHandPlan plan, int measure, int quarter) {
        WrittenPlace place = new WrittenPlace(measure, MusicalTime.of(quarter, 4));
        return plan.events().stream()
                .filter(event -> event.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    /** O16, O17: columns from -(n/2 - 1) to n/2 (squeezebox wiki and others). */
    @Test
    void plansStayWithinTheColumnsAndRowsOfEverySize() {
        for (int buttons : StradellaBass.SIZES) {
            StradellaBass bass = StradellaBass.ofSize(buttons);
            int columns = buttons / bass.rows().size();
            for (LeftHandPlan.Event event :
                    best(layer(inFour(1, "C|F|G|D|Am|N.C."), buttons)).events())
                for (BassButton button : event.buttons()) {
                    assertThat(button.column()).isBetween(1 - columns / 2, columns / 2);
                    assertThat(bass.hasRow(button.row())).isTrue();
                }
        }
    }

    /** O18: C, E and A-flat are marked (encyclopaedia articles); a jump that ends there is not blind. */
    @Test
    void landingOnMarkedButtonsIsNotCharged() {
        assertThat(best(layer(inFour(1, "C|E|C|N.C."), 120)).costByRule().get("left-hand.blind-landing"))
                .isZero();
        assertThat(best(layer(inFour(1, "C|D|Bb|N.C."), 120)).costByRule().get("left-hand.blind-landing"))
                .isPositive();
    }

    /** O19: what the chord buttons on C sound (Stradling, "Notes on the Stradella bass"). */
    @Test
    void chordButtonsSoundThreeTones() {
        LeftHandPlan plan = best(layer(inFour(1, "C|Cm|C7|Cdim7|N.C."), 120));

        assertThat(at(plan, 0, 1).sounding()).isEqualTo(tones(0, 4, 7));
        assertThat(at(plan, 1, 1).sounding()).isEqualTo(tones(0, 3, 7));
        assertThat(at(plan, 2, 1).sounding()).isEqualTo(tones(0, 4, 10));
        assertThat(at(plan, 3, 1).sounding()).isEqualTo(tones(0, 3, 9));
        assertThat(at(plan, 2, 1).missing())
                .as("a seventh is complete without its fifth")
                .isEmpty();
    }

    /** O20: the counterbass of the C column sounds E, like the bass button four columns up. */
    @Test
    void slashThirdLiesUnderTheChordAsItsCounterbass() {
        LeftHandPlan plan = best(layer(inFour(1, "C|C/E|N.C."), 120));

        assertThat(at(plan, 1, 0).buttons()).containsExactly(new BassButton(BassRow.COUNTERBASS, 0));
        assertThat(at(plan, 1, 0).sounding()).isEqualTo(tones(4));
        assertThat(at(plan, 1, 0).jump()).isEqualTo(LeftHandPlan.Jump.NONE);
    }

    /** O22: Am7 is A bass, from either row, with C major (German encyclopaedia article). */
    @Test
    void minorSeventhIsABassUnderTheMajorChordOfItsThird() {
        LeftHandPlan plan = best(layer(inFour(1, "C|Am7|C|N.C."), 120));

        assertThat(at(plan, 1, 0).sounding()).isEqualTo(tones(9));
        assertThat(at(plan, 1, 1).buttons()).containsExactly(new BassButton(BassRow.MAJOR, 0));
        assertThat(at(plan, 1, 1).missing()).isEmpty();
    }

    /** O23: Fm6 is F minor and F diminished together (German encyclopaedia article). */
    @Test
    void minorSixthMayBeTwoButtonsTogether() {
        LeftHandLayer layer = layer(inFour(1, "F|Fm6|F|N.C."), 120);
        Set<BassButton> both = Set.of(new BassButton(BassRow.MINOR, -1), new BassButton(BassRow.DIMINISHED, -1));
        Lock.Buttons lock = new Lock.Buttons(OptionalInt.empty(), new WrittenPlace(1, MusicalTime.QUARTER), both);

        LeftHandPlan plan = LeftHands.found(layer.best(new Question(Taste.PLAIN, List.of(lock), 1, () -> false)))
                .best();

        assertThat(at(plan, 1, 1).sounding()).isEqualTo(tones(0, 2, 5, 8));
        assertThat(at(plan, 1, 1).missing()).isEmpty();
        assertThat(at(plan, 1, 1).foreign()).isEmpty();
        assertThat(at(plan, 1, 3).buttons())
                .as("the chord lasts")
                .isEqualTo(at(plan, 1, 1).buttons());
    }

    /** O25: I, IV, V, ii and vi lie 0, -1, 1, 2 and 3 columns from the tonic. */
    @Test
    void handFollowsTheColumnsOfTheKey() {
        LeftHandPlan plan = best(layer(inFour(1, "G|C|D|Am|Em|N.C."), 120));

        for (int measure = 0; measure < 5; measure++)
            assertThat(at(plan, measure, 0).handColumn() - 1)
                    .isEqualTo(List.of(0, -1, 1, 2, 3).get(measure));
    }

    /** O28: 48 buttons in four rows have no seventh: the major row, and it is said. */
    @Test
    void seventhWithoutASeventhRowIsPlayedOnTheMajorRowAndSaidSo() {
        LeftHandPlan plan = best(layer(inFour(1, "C|G7|C|N.C."), 48));

        assertThat(words(at(plan, 1, 1))).isEqualTo("G major 3");
        assertThat(at(plan, 1, 1).substitutions()).containsExactly("the instrument has no seventh row");
        assertThat(at(plan, 1, 1).missing()).isEqualTo(tones(5));
        assertThat(plan.costByRule().get("left-hand.missing-tones")).isPositive();
        assertThat(plan.costByRule().get("left-hand.substitutes")).isPositive();
    }

    @Test
    void chordBeyondTheLastColumnIsPlayedUnderItsOtherName() {
        LeftHandPlan plan = best(layer(inFour(1, "C#|N.C."), 72));

        assertThat(words(plan)).startsWith("Db bass 4 | Db major 3");
        assertThat(plan.events().get(0).substitutions()).isEmpty();
        assertThat(plan.events().get(1).substitutions()).hasSize(1);
    }
}
