package org.mantice.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The table's own consistency; source: Parncutt et al. 1997, from memory, with what follows from it. */
class FingerSpansTest {
    @Test
    void rowsOfTheTableAreConsistent() {
        for (int lower = 1; lower <= 4; lower++)
            for (int higher = lower + 1; higher <= 5; higher++) {
                FingerSpans.Row row = FingerSpans.published(lower, higher);
                assertThat(row.maxComfortable()).isEqualTo(row.maxPractical() - 2);
                assertThat(row.minComfortable()).isEqualTo(lower == 1 ? row.minPractical() + 2 : row.minPractical());
                assertThat(row.minPractical()).isLessThanOrEqualTo(row.minComfortable());
                assertThat(row.minComfortable()).isLessThanOrEqualTo(row.minRelaxed());
                assertThat(row.minRelaxed()).isLessThanOrEqualTo(row.maxRelaxed());
                assertThat(row.maxRelaxed()).isLessThanOrEqualTo(row.maxComfortable());
            }
    }

    @Test
    void thePublishedHandOpensAsFarAsTheTableSaysAndOthersInProportion() {
        assertThat(FingerSpans.milliSemitones(13, 86)).isEqualTo(13_000);
        assertThat(FingerSpans.milliSemitones(13, 48)).isEqualTo(6_500);
        assertThat(FingerSpans.milliSemitones(13, 124)).isEqualTo(19_500);
    }

    @Test
    void crossingsReachAsFarAsHandbookArpeggiosNeed() {
        assertThat(FingerSpans.practical(1, 3, -5, 86)).isTrue();
        assertThat(FingerSpans.practical(1, 4, -4, 86)).isTrue();
        assertThat(FingerSpans.practical(1, 3, -6, 86)).isFalse();
        assertThat(FingerSpans.practical(1, 4, -5, 86)).isFalse();
        assertThat(FingerSpans.practical(2, 3, -1, 86)).isFalse();
    }
}
