package org.mantice.app.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.mantice.app.text.FigureRow;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;
import org.mantice.rule.RuleProvider;

/**
 * The table of figures: a column a plan, a row a figure.
 *
 * @param columns the plans found, in the order of the answer
 * @param lines empty without plans
 */
public record FiguresModel(List<Column> columns, List<Line> lines) {
    /** How many plans the sheet shows side by side at most. */
    public static final int MOST_COMPARED = 4;

    /**
     * The head of a plan's column.
     *
     * @param mark letter and shape; the letter alone while the plan is not on the sheet
     * @param label how the plan came about, in words
     * @param cost in ordinary position changes, with the unit
     * @param proven in words, whether it is proven best of its kind
     * @param compared whether it is on the sheet
     */
    public record Column(
            int offer,
            String letter,
            String mark,
            String label,
            String cost,
            String proven,
            boolean compared,
            boolean chosen) {}

    /**
     * A figure.
     *
     * @param meaning one sentence
     */
    public record Line(FigureRow row, String title, String meaning, List<Value> values) {
        public Line {
            values = List.copyOf(values);
        }
    }

    /** @param standing with its sign and word; empty if the value is neither best nor worst */
    public record Value(String text, FigureRow.Standing rank, String standing) {
        /** What stands in the cell. */
        public String inCell() {
            return standing.isEmpty() ? text : text + "  " + standing;
        }
    }

    public FiguresModel {
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    /** @param packs whose leanings have given plans their labels */
    public static FiguresModel of(PlannerState state, Words words, List<? extends RuleProvider> packs) {
        List<Offer> offers = state.offers();
        if (offers.isEmpty() || state.performance().isEmpty()) return new FiguresModel(List.of(), List.of());
        PlanWords plans = new PlanWords(words, packs);
        FigureWords figures = new FigureWords(words, plans);
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < offers.size(); i++) columns.add(column(state, i, words, plans));
        List<FigureRow.Compared> compared = offers.stream()
                .map(offer -> new FigureRow.Compared(offer.plan(), offer.figures(), offer.cost()))
                .toList();
        List<Line> lines = Arrays.stream(FigureRow.values())
                .filter(row -> row != FigureRow.LABEL && row != FigureRow.PROVEN)
                .map(row -> line(row, compared, state, figures))
                .toList();
        return new FiguresModel(columns, lines);
    }

    private static Column column(PlannerState state, int offer, Words words, PlanWords plans) {
        Offer plan = state.offers().get(offer);
        int place = state.compared().indexOf(offer);
        FigureWords figures = new FigureWords(words, plans);
        return new Column(
                offer,
                plan.letter(),
                PlanWords.mark(plan.letter(), place),
                plans.label(plan.plan().label()),
                words.text("figures.cost", new MusicWords(words).cost(plan.cost())),
                figures.proven(plan.plan().provenBest()),
                place >= 0,
                offer == state.chosen());
    }

    private static Line line(FigureRow row, List<FigureRow.Compared> plans, PlannerState state, FigureWords figures) {
        List<FigureRow.Standing> standings = row.standings(plans);
        List<Value> values = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++)
            values.add(new Value(
                    figures.value(
                            row,
                            plans.get(i),
                            state.performance().orElseThrow(),
                            state.setup().accordion()),
                    standings.get(i),
                    figures.standing(standings.get(i))));
        return new Line(row, figures.title(row), figures.meaning(row), values);
    }

    /** Which offers are on the sheet once this one is put there or taken away; empty if that cannot be done. */
    public Optional<List<Integer>> toggled(int offer) {
        List<Integer> compared = new ArrayList<>(
                columns.stream().filter(Column::compared).map(Column::offer).toList());
        if (!compared.remove((Integer) offer)) compared.add(offer);
        if (compared.isEmpty() || compared.size() > MOST_COMPARED) return Optional.empty();
        return Optional.of(compared.stream().sorted().toList());
    }
}
