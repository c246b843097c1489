package org.mantice.rule.righthand.ergonomic1997;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: Parncutt, Sloboda, Clarke, Raekallio and Desain, "An Ergonomic Model of Keyboard Fingering for Melodic
 * Fragments", Music Perception 14(4), 1997. Spans and rules from memory; the values here were worked out under these
 * spans and rules by an implementation of its own.
 */
class Ergonomic1997Test {
    private static final int[] MAJOR = {0, 2, 4, 5, 7, 9, 11, 12};

    private static List<Fingerings.Priced> feasible(List<Integer> keys) {
        return new Fingerings(keys, new Ergonomic1997Rules()).feasible();
    }

    private static List<Integer> majorScale(int first) {
        return Arrays.stream(MAJOR).mapToObj(step -> first + step).toList();
    }

    private static List<Integer> fingers(String digits) {
        return digits.chars().mapToObj(digit -> digit - '0').toList();
    }

    @Test
    void fiveNotesFromCTakeTheFiveFingers() {
        List<Fingerings.Priced> all = feasible(List.of(60, 62, 64, 65, 67));

        assertThat(all).hasSize(165);
        assertThat(all.get(0)).isEqualTo(new Fingerings.Priced(fingers("12345"), 4_000));
        assertThat(all.get(1).cost()).isEqualTo(11_000);
    }

    @Test
    void oneOctaveOfCMajorHasTheHandbookFingeringAsItsOnlyOptimum() {
        List<Fingerings.Priced> all = feasible(majorScale(60));

        assertThat(all).hasSize(1_803);
        assertThat(all.get(0)).isEqualTo(new Fingerings.Priced(fingers("12312345"), 15_000));
        assertThat(all.get(1)).isEqualTo(new Fingerings.Priced(fingers("12412345"), 20_000));
    }

    /** Rank counts the cheaper fingerings and one; the 1997 sum does not give the handbook on black keys. */
    @ParameterizedTest(name = "{0} from {1}: {2}")
    @CsvSource({
        "C, 60, 12312345, 15, 1",
        "G, 55, 12312345, 16, 1",
        "D, 62, 12312345, 15, 1",
        "A, 57, 12312345, 14, 1",
        "E, 64, 12312345, 14, 1",
        "B, 59, 12312345, 14, 1",
        "F, 53, 12341234, 23, 2",
        "F, 53, 12312345, 22, 1",
        "F#, 54, 23412312, 29, 12",
        "Db, 61, 23123412, 33, 20",
        "Ab, 56, 34123123, 34, 29",
        "Eb, 63, 31234123, 33, 18",
        "Bb, 58, 41231234, 32, 21"
    })
    void majorScalesCostAndRankAsWorkedOut(String name, int first, String digits, int points, int rank) {
        List<Fingerings.Priced> all = feasible(majorScale(first));

        Fingerings.Priced asked = all.stream()
                .filter(one -> one.fingers().equals(fingers(digits)))
                .findFirst()
                .orElseThrow();
        assertThat(asked.cost()).isEqualTo(points * 1_000L);
        assertThat(all.stream().filter(one -> one.cost() < asked.cost()).count() + 1)
                .isEqualTo(rank);
    }

    @Test
    void brokenChordsCostAsWorkedOut() {
        List<Fingerings.Priced> triad = feasible(List.of(60, 64, 67, 72));
        List<Fingerings.Priced> seventh = feasible(List.of(60, 64, 67, 70, 72));

        assertThat(triad).hasSize(40);
        assertThat(triad.get(0)).isEqualTo(new Fingerings.Priced(fingers("1235"), 5_000));
        assertThat(seventh).hasSize(110);
        assertThat(seventh.get(0)).isEqualTo(new Fingerings.Priced(fingers("12345"), 13_000));
    }

    @Test
    void singlePassesCostAsWorkedOut() {
        assertThat(new Fingerings(List.of(64, 65), new Ergonomic1997Rules()).cost(fingers("31")))
                .isEqualTo(5_000);
        assertThat(new Fingerings(List.of(64, 66), new Ergonomic1997Rules()).cost(fingers("31")))
                .isEqualTo(11_000);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 13", "2, 13", "3, 13", "4, 12", "5, 10", "6, 7", "7, 7", "8, 5", "9, 5", "10, 5", "11, 3", "12, 3", "13, 2",
        "14, 2", "15, 1", "16, 0", "17, 0", "24, 0"
    })
    void ascendingIntervalsHaveSoManyFeasiblePairs(int interval, int pairs) {
        assertThat(feasible(List.of(60, 60 + interval))).hasSize(pairs);
    }
}
