package org.mantice.harmony;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class HarmonySearchTest {
    private static final String[] NOTES = {"C4", "D4", "E4", "F4", "F#4", "G4", "A4", "Bb4", "B4", "C5"};

    @ParameterizedTest
    @EnumSource(Mode.class)
    void no_sequence_of_chords_is_cheaper(Mode mode) {
        Random random = new Random(mode.ordinal());
        for (int round = 0; round < 6; round++) {
            Tune tune = in(mode, random(random));
            List<Slot> slots = new SlotGrid(tune).slots();
            HarmonySearch search = new HarmonySearch(slots);

            List<Harmony> best = search.best(List.of());

            List<Harmony> chords = Vocabulary.of(slots.get(0).key().mode()).chords();
            assertThat(cost(search, best, List.of())).isEqualTo(cheapest(search, chords, slots.size()));
        }
    }

    @Test
    void a_passage_that_comes_again_counts_in_what_is_cheapest() {
        Tune tune = in(Mode.LYDIAN, Tunes.melody("2/4", "C4 q, E4 q | R h | D4 q, R q"));
        List<Slot> slots = new SlotGrid(tune).slots();
        HarmonySearch search = new HarmonySearch(slots.subList(0, 5));
        List<Harmony> chords = Vocabulary.of(Mode.LYDIAN).chords();
        List<Optional<Harmony>> earlier = new ArrayList<>();
        for (int i = 0; i < 5; i++) earlier.add(i < 2 ? Optional.empty() : Optional.of(chords.get(i)));

        List<Harmony> best = search.best(earlier);

        long least = Long.MAX_VALUE;
        for (List<Harmony> path : all(chords, 5)) least = Math.min(least, cost(search, path, earlier));
        assertThat(cost(search, best, earlier)).isEqualTo(least);
    }

    @Test
    void of_equal_costs_the_first_chord_wins_again_and_again() {
        Tune tune = Tunes.melody("4/4", "R w | R w | C4 q, R h.");
        HarmonySearch search = new HarmonySearch(new SlotGrid(tune).slots());

        assertThat(search.best(List.of())).isEqualTo(search.best(List.of()));
    }

    private static long cheapest(HarmonySearch search, List<Harmony> chords, int slots) {
        long least = Long.MAX_VALUE;
        for (List<Harmony> path : all(chords, slots)) least = Math.min(least, cost(search, path, List.of()));
        return least;
    }

    private static List<List<Harmony>> all(List<Harmony> chords, int length) {
        List<List<Harmony>> paths = List.of(List.of());
        for (int i = 0; i < length; i++) {
            List<List<Harmony>> longer = new ArrayList<>();
            for (List<Harmony> path : paths)
                for (Harmony chord : chords) {
                    List<Harmony> more = new ArrayList<>(path);
                    more.add(chord);
                    longer.add(more);
                }
            paths = longer;
        }
        return paths;
    }

    private static long cost(HarmonySearch search, List<Harmony> path, List<Optional<Harmony>> earlier) {
        return new ChordProposal(search.explained(path, earlier)).costMillipoints();
    }

    /** Three beats, two of them in a first measure. */
    private static Tune random(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 4; i++)
            text.append(NOTES[random.nextInt(NOTES.length)]).append(" e, ");
        return Tunes.melody(
                "2/4",
                text.substring(0, text.length() - 2) + " | " + NOTES[random.nextInt(NOTES.length)] + " q @pickup");
    }

    private static Tune in(Mode mode, Tune tune) {
        return new Tune(
                tune.title(),
                tune.dance(),
                tune.measures().stream()
                        .map(measure -> measure.withKey(new Key(0, mode)))
                        .toList());
    }
}
