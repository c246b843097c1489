package org.mantice.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.function.ToLongFunction;
import org.mantice.layer.Places;
import org.mantice.performance.Performance;
import org.mantice.plan.Figures;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;

/** Plans side by side: one column a plan, one row a figure, the best value of a row marked with {@code *}. */
public final class ComparisonText {
    /** More runs of equal registers than this do not fit into a column; the listing has them all. */
    private static final int MOST_RUNS = 4;

    private final Performance performance;
    private final Taste taste;

    public ComparisonText(Performance performance, Taste taste) {
        this.performance = performance;
        this.taste = taste;
    }

    public String of(List<Plan> plans) {
        List<Figures> figures =
                plans.stream().map(plan -> Figures.of(plan, performance)).toList();
        TextTable table = new TextTable();
        table.row(cells("plan", plans, Plan::label));
        table.row(cells("proven best of its kind", plans, plan -> plan.provenBest() ? "yes" : "no"));
        table.row(least("cost in position changes", plans, plan -> plan.cost(taste), ComparisonText::cost));
        table.row(cells("registers", plans, plan -> registers(plan.variation())));
        table.row(least("turns of the bellows", figures, Figures::turns, String::valueOf));
        table.row(least("  of these in phrases", figures, Figures::turnsInPhrases, String::valueOf));
        table.row(most("least stroke margin, ml", figures, Figures::leastMarginMillilitres, String::valueOf));
        table.row(most("plan factor on air", figures, Figures::planFactorPerMille, ComparisonText::factor));
        table.row(most(
                "  if the air is underestimated",
                plans,
                plan -> plan.bellows().planFactorUncertainPerMille(),
                ComparisonText::factor));
        table.row(least("longest stroke, s", figures, Figures::longestStrokeMillis, ComparisonText::seconds));
        table.row(least("uneven strokes", figures, Figures::unevenStrokes, String::valueOf));
        table.row(least("changes of hand place", figures, Figures::positionChanges, String::valueOf));
        table.row(least("widest reach, semitones", figures, Figures::widestReachSemitones, String::valueOf));
        table.row(least("thumb or five on black", figures, Figures::awkwardFingers, String::valueOf));
        table.row(least("large jumps, left hand", figures, Figures::largeJumps, String::valueOf));
        table.row(cells(
                "hardest jump", figures, f -> f.hardestJump().map(this::jump).orElse("none")));
        table.row(least("chord tones missing", figures, Figures::missingTones, String::valueOf));
        table.row(least("tones foreign to a chord", figures, Figures::foreignTones, String::valueOf));
        table.row(least("marks to write", figures, Figures::marksToWrite, String::valueOf));
        table.row(most("different sounds", figures, Figures::sounds, String::valueOf));
        return table.toString();
    }

    private String jump(LeftHandPlan.Event event) {
        String place = Places.words(performance, performance.measures().get(event.measure()), event.place());
        return place.replace("pass ", "p").replace(", measure ", " m").replace(", beat ", " b");
    }

    private static String registers(VariationPlan variation) {
        List<String> runs = new ArrayList<>();
        int length = 0;
        String last = "";
        for (VariationPlan.PassDecision pass : variation.passes()) {
            String name = pass.switchId() + (pass.octave() == 0 ? "" : pass.octave() > 0 ? " +8va" : " -8va");
            length = name.equals(last) ? length + 1 : 1;
            if (length > 1) runs.remove(runs.size() - 1);
            runs.add(length == 1 ? name : length + "x " + name);
            last = name;
        }
        if (runs.size() <= MOST_RUNS) return String.join(", ", runs);
        return String.join(", ", runs.subList(0, MOST_RUNS)) + ", …";
    }

    private static <T> List<String> cells(String title, List<T> values, Function<T, String> text) {
        List<String> row = new ArrayList<>(List.of(title));
        values.forEach(value -> row.add(text.apply(value)));
        return row;
    }

    private static <T> List<String> least(
            String title, List<T> columns, ToLongFunction<T> figure, LongFunction<String> text) {
        long best = columns.stream().mapToLong(figure).min().orElse(0);
        return marked(title, columns.stream().map(figure::applyAsLong).toList(), best, text);
    }

    private static <T> List<String> most(
            String title, List<T> columns, ToLongFunction<T> figure, LongFunction<String> text) {
        long best = columns.stream().mapToLong(figure).max().orElse(0);
        return marked(title, columns.stream().map(figure::applyAsLong).toList(), best, text);
    }

    /** Nothing is marked where all are equal. */
    private static List<String> marked(String title, List<Long> values, long best, LongFunction<String> text) {
        boolean differ = values.stream().distinct().count() > 1;
        List<String> row = new ArrayList<>(List.of(title));
        for (long value : values) row.add(text.apply(value) + (differ && value == best ? " *" : differ ? "  " : ""));
        return row;
    }

    /** Micropoints as ordinary position changes, two decimals. */
    public static String cost(long micropoints) {
        return BigDecimal.valueOf(micropoints, 6)
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String factor(long perMille) {
        return BigDecimal.valueOf(perMille, 3).setScale(2, RoundingMode.DOWN).toPlainString();
    }

    private static String seconds(long millis) {
        return BigDecimal.valueOf(millis, 3).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
