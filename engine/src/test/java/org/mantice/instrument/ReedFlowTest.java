package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.Loudness;

/** The orifice formula, worked by hand with density 1.2, coefficient 0.61 and an opening of 10 mm². */
class ReedFlowTest {
    @ParameterizedTest(name = "{0} Pa: {1} m/s, {2} l/s")
    @CsvSource({
        "100, 12.9, 0.079",
        "200, 18.3, 0.111",
        "500, 28.9, 0.176",
        "1000, 40.8, 0.249",
        "1500, 50.0, 0.305",
        "2000, 57.7, 0.352",
        "3000, 70.7, 0.431"
    })
    void jet_and_flow_follow_the_orifice_formula(double pascals, double metresPerSecond, double litresPerSecond) {
        assertThat(ReedFlow.jetMetresPerSecond(pascals)).isCloseTo(metresPerSecond, within(0.01 * metresPerSecond));
        assertThat(ReedFlow.litresPerSecond(pascals, 10)).isCloseTo(litresPerSecond, within(0.01 * litresPerSecond));
    }

    @Test
    void four_times_the_pressure_doubles_the_flow() {
        double flow = ReedFlow.litresPerSecond(500, 10);

        assertThat(ReedFlow.litresPerSecond(2_000, 10) / flow).isCloseTo(2, within(0.002));
        assertThat(ReedFlow.litresPerSecond(1_000, 10) / flow).isCloseTo(1.414, within(0.001414));
    }

    /** P = F / S, a maker's page on concertinas. */
    @Test
    void pressure_is_force_over_area() {
        assertThat(ReedFlow.pascals(40, 0.08)).isEqualTo(500);
    }

    @Test
    void twenty_litres_last_eight_reeds_fourteen_seconds() {
        assertThat(ReedFlow.seconds(20, 8 * 0.176)).isCloseTo(14.2, within(0.142));
        assertThat(ReedFlow.seconds(20, 0.176)).isCloseTo(114, within(1.14));
    }

    @Test
    void loudness_takes_air_by_the_square_root_of_pressure() {
        Bellows.Appetites appetites = BellowsEstimate.appetites(4, 6);

        assertThat(appetites.loudness()).containsEntry(Loudness.MF, 1_000).containsEntry(Loudness.F, 1_414);
        assertThat(appetites.loudness()).containsEntry(Loudness.FF, 1_732).containsEntry(Loudness.FFF, 2_000);
        assertThat(appetites.banks().get(ReedBank.MIDDLE_8)).isEqualTo(1_000);
        assertThat(appetites.banks().get(ReedBank.LOW_16)).isGreaterThan(1_000);
        assertThat(appetites.banks().get(ReedBank.HIGH_4)).isLessThan(1_000);
    }

    @Test
    void impossible_physics_is_refused() {
        assertThatThrownBy(() -> ReedFlow.litresPerSecond(-1, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReedFlow.litresPerSecond(Double.NaN, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReedFlow.litresPerSecond(1, -10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReedFlow.pascals(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReedFlow.seconds(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
