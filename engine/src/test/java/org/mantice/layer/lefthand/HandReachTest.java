package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.StradellaBass;

class HandReachTest {
    private final HandReach reach = new HandReach(StradellaBass.ofSize(120));

    private static BassButton button(BassRow row, int column) {
        return new BassButton(row, column);
    }

    @Test
    void fourthFingerPlaysItsOwnColumn() {
        assertThat(reach.placements(List.of(button(BassRow.BASS, 2))))
                .filteredOn(placement -> placement.fingers().equals(List.of(4)))
                .extracting(HandReach.Placement::handColumn)
                .containsExactly(2);
    }

    @Test
    void chordLiesAboveItsBassBecauseRowsDrift() {
        assertThat(reach.offset(button(BassRow.COUNTERBASS, 0), 0)).isNegative();
        assertThat(reach.offset(button(BassRow.BASS, 0), 0)).isZero();
        assertThat(reach.offset(button(BassRow.MAJOR, 0), 0)).isPositive();
        assertThat(reach.offset(button(BassRow.BASS, 1), 0)).isEqualTo(100);
    }

    @Test
    void fingersHeldTogetherDoNotCrossOrDouble() {
        for (HandReach.Placement placement :
                reach.placements(List.of(button(BassRow.BASS, 0), button(BassRow.MAJOR, 0)))) {
            assertThat(placement.fingers().get(0))
                    .isGreaterThan(placement.fingers().get(1));
            assertThat(placement.offsets().get(0))
                    .isLessThan(placement.offsets().get(1));
        }
    }

    @Test
    void bassAndChordOfOneColumnLieUnderFourAndThree() {
        assertThat(reach.placements(List.of(button(BassRow.BASS, 0), button(BassRow.MAJOR, 0)))
                        .get(0)
                        .fingers())
                .containsExactly(4, 3);
    }

    @Test
    void stretchTooWideHasNoPlacement() {
        assertThat(reach.placements(List.of(button(BassRow.BASS, -5), button(BassRow.DIMINISHED, 5))))
                .isEmpty();
    }

    @Test
    void placementsAreAllDifferent() {
        assertThat(reach.placements(List.of(button(BassRow.MINOR, 1)))).doesNotHaveDuplicates();
    }
}
