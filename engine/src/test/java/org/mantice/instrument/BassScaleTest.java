package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** O26: the major scale on the bass rows (Wikibooks, accordion, lesson 4), the same shape in every key that fits. */
class BassScaleTest {
    /** Columns from the tonic; true for the counterbass row. */
    private record Step(int column, boolean counterbass) {}

    private static final List<Step> SHAPE = List.of(
            new Step(0, false),
            new Step(2, false),
            new Step(0, true),
            new Step(-1, false),
            new Step(1, false),
            new Step(-1, true),
            new Step(1, true),
            new Step(0, false));

    private static final List<Integer> MAJOR_SCALE = List.of(0, 2, 4, 5, 7, 9, 11, 0);

    @ParameterizedTest(name = "{0} buttons")
    @ValueSource(ints = {40, 48, 60, 72, 80, 96, 120})
    void the_shape_sounds_the_major_scale_in_every_key_that_fits(int size) {
        StradellaBass bass = StradellaBass.ofSize(size);
        int fitting = 0;
        for (int tonic = -12; tonic <= 12; tonic++) {
            List<BassButton> scale = on(tonic);
            if (!scale.stream().allMatch(bass::has)) continue;
            fitting++;
            int root = new BassButton(BassRow.BASS, tonic).rootPitchClass();
            assertThat(scale.stream()
                            .map(button -> Math.floorMod(button.pitchClasses().first() - root, 12)))
                    .containsExactlyElementsOf(MAJOR_SCALE);
        }
        int columns = bass.rows().get(0).columns();
        assertThat(fitting).isEqualTo(columns - 3);
        assertThat(on(0)).allMatch(bass::has);
    }

    @ParameterizedTest(name = "tonic {0}")
    @ValueSource(ints = {-5, -1, 0, 1, 4})
    void each_step_is_as_wide_in_every_key(int tonic) {
        StradellaBass bass = StradellaBass.ofSize(120);
        List<BassButton> c = on(0);
        List<BassButton> other = on(tonic);
        for (int i = 1; i < c.size(); i++)
            assertThat(bass.distanceSquared(other.get(i - 1), other.get(i)))
                    .isEqualTo(bass.distanceSquared(c.get(i - 1), c.get(i)));
    }

    private static List<BassButton> on(int tonic) {
        return SHAPE.stream()
                .map(step ->
                        new BassButton(step.counterbass() ? BassRow.COUNTERBASS : BassRow.BASS, tonic + step.column()))
                .toList();
    }
}
