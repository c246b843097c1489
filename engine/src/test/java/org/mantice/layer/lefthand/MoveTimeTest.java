package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.mantice.instrument.ButtonGeometry;
import org.mantice.player.Jumps;

/** P. M. Fitts, J. Exp. Psychology 47, 1954, in the form with log2(D/W + 1) (from memory). */
class MoveTimeTest {
    @Test
    void wholeBitsGiveExactTimes() {
        MoveTime time = new MoveTime(new Jumps(60, 120), ButtonGeometry.estimate(9_000, 9_000, 4_000, 9_000));

        assertThat(time.millis(0)).isZero();
        assertThat(time.millis(1)).isEqualTo(60 + 120);
        assertThat(time.millis(-3)).isEqualTo(60 + 2 * 120);
        assertThat(time.millis(7)).isEqualTo(60 + 3 * 120);
        assertThat(time.millis(15)).isEqualTo(60 + 4 * 120);
    }

    @Test
    void otherDistancesAreRoundedToTheNearestMillisecond() {
        MoveTime time = new MoveTime(Jumps.ESTIMATE, ButtonGeometry.ESTIMATE);

        // log2(17.5/9 + 1) = 1.55799 bits, so 246.96 ms; log2(52.5/9 + 1) = 2.77260 bits, so 392.71 ms
        assertThat(time.millis(1)).isEqualTo(247);
        assertThat(time.millis(3)).isEqualTo(393);
    }

    @Test
    void furtherIsNeverFaster() {
        MoveTime time = new MoveTime(Jumps.ESTIMATE, ButtonGeometry.ESTIMATE);

        for (int columns = 1; columns < 40; columns++)
            assertThat(time.millis(columns)).isGreaterThan(time.millis(columns - 1));
    }
}
