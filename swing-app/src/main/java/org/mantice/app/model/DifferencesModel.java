package org.mantice.app.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Decision;

/**
 * Where the plans compared differ, in order of play.
 *
 * @param plans letter and shape of each plan compared
 * @param kinds how many differences there are of each kind, hidden or not; kinds without any are left out
 * @param rows those not hidden
 * @param current the row of the difference stepped to
 * @param count how many there are, in words
 */
public record DifferencesModel(
        List<String> plans, List<KindCount> kinds, List<Row> rows, OptionalInt current, String count) {
    /** @param name of the kind with the number */
    public record KindCount(Decision.Kind kind, int count, String name, boolean shown) {}

    /**
     * A difference.
     *
     * @param index among the state's differences
     * @param values one a plan compared, in words
     */
    public record Row(int index, Decision.Kind kind, String place, String what, List<String> values) {
        public Row {
            values = List.copyOf(values);
        }
    }

    public DifferencesModel {
        plans = List.copyOf(plans);
        kinds = List.copyOf(kinds);
        rows = List.copyOf(rows);
    }

    /** @param hidden kinds that are not listed */
    public static DifferencesModel of(PlannerState state, Words words, Set<Decision.Kind> hidden) {
        if (state.performance().isEmpty())
            return new DifferencesModel(
                    List.of(), List.of(), List.of(), OptionalInt.empty(), words.text("differences.noPlans"));
        MusicWords music = new MusicWords(words);
        List<Row> rows = new ArrayList<>();
        OptionalInt current = OptionalInt.empty();
        for (int i = 0; i < state.differences().size(); i++) {
            Difference difference = state.differences().get(i);
            if (hidden.contains(difference.kind())) continue;
            if (state.differenceAt().equals(OptionalInt.of(i))) current = OptionalInt.of(rows.size());
            rows.add(row(i, difference, state, words, music));
        }
        List<KindCount> kinds = kinds(state, words, music, hidden);
        return new DifferencesModel(marks(state), kinds, rows, current, count(state, words, rows.size()));
    }

    private static List<String> marks(PlannerState state) {
        return IntStream.range(0, state.compared().size())
                .mapToObj(place -> PlanWords.mark(
                        state.offers().get(state.compared().get(place)).letter(), place))
                .toList();
    }

    private static Row row(int index, Difference difference, PlannerState state, Words words, MusicWords music) {
        String kind = music.kind(difference.kind());
        int part = difference.spot().part();
        return new Row(
                index,
                difference.kind(),
                place(difference, state, music),
                part == 0 ? kind : words.text("differences.part", kind, part + 1),
                difference.values().stream()
                        .map(value -> value(difference.kind(), value, state, words, music))
                        .toList());
    }

    /** Registers and octaves hold for a whole pass. */
    private static String place(Difference difference, PlannerState state, MusicWords music) {
        Spot spot = difference.spot();
        if (spot.strip() == Strip.REGISTERS) return music.place("pass " + spot.pass());
        return music.place(state.performance().orElseThrow(), spot.measure(), spot.place());
    }

    private static String value(
            Decision.Kind kind, Optional<String> value, PlannerState state, Words words, MusicWords music) {
        // The kind says that it is a finger.
        if (value.isPresent())
            return kind == Decision.Kind.FINGER
                    ? value.get()
                    : music.value(kind, value.get(), state.setup().accordion());
        return kind == Decision.Kind.TURN
                ? music.value(kind, "no turn", state.setup().accordion())
                : words.text("differences.nothing");
    }

    private static List<KindCount> kinds(PlannerState state, Words words, MusicWords music, Set<Decision.Kind> hidden) {
        Map<Decision.Kind, Integer> counts = new EnumMap<>(Decision.Kind.class);
        for (Difference difference : state.differences()) counts.merge(difference.kind(), 1, Integer::sum);
        List<KindCount> kinds = new ArrayList<>();
        counts.forEach((kind, count) -> kinds.add(new KindCount(
                kind, count, words.text("differences.kind", music.kind(kind), count), !hidden.contains(kind))));
        return kinds;
    }

    private static String count(PlannerState state, Words words, int listed) {
        if (state.compared().isEmpty()) return words.text("differences.noPlans");
        if (state.compared().size() == 1) return words.text("differences.onePlan");
        int all = state.differences().size();
        if (all == 0) return words.text("differences.none");
        return listed == all ? words.text("differences.count", all) : words.text("differences.listed", all, listed);
    }
}
