package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;

class DifferencesModelTest {
    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Set<Decision.Kind> NONE = Set.of();

    @Test
    void everyDifferenceHasARowWithAValueForEachPlan() {
        for (String tune : States.TUNES) {
            PlannerState state = States.of(tune).comparingAll();
            DifferencesModel model = DifferencesModel.of(state, ENGLISH, NONE);

            assertThat(model.rows()).as(tune).hasSameSizeAs(state.differences());
            assertThat(model.rows())
                    .allMatch(row -> row.values().size() == state.compared().size())
                    .allMatch(row -> row.values().stream().distinct().count() > 1)
                    .allMatch(row -> row.place().startsWith("pass "));
        }
    }

    @Test
    void aPlanThatDoesNotTurnWhereAnotherDoesSaysSo() {
        PlannerState state = States.of("lanterns-at-the-weir").comparingAll();
        DifferencesModel model = DifferencesModel.of(state, ENGLISH, NONE);

        List<DifferencesModel.Row> turns = model.rows().stream()
                .filter(row -> row.kind() == Decision.Kind.TURN)
                .toList();
        assertThat(turns).isNotEmpty().anyMatch(row -> row.values().contains("no turn"));
    }

    @Test
    void hiddenKindsAreCountedButNotListed() {
        PlannerState state = States.of("the-rusty-gate").comparingAll();
        DifferencesModel all = DifferencesModel.of(state, ENGLISH, NONE);
        DifferencesModel.KindCount first = all.kinds().get(0);

        DifferencesModel some = DifferencesModel.of(state, ENGLISH, EnumSet.of(first.kind()));

        assertThat(some.rows()).hasSize(all.rows().size() - first.count());
        assertThat(some.kinds())
                .extracting(DifferencesModel.KindCount::count)
                .isEqualTo(all.kinds().stream()
                        .map(DifferencesModel.KindCount::count)
                        .toList());
        assertThat(some.kinds().get(0).shown()).isFalse();
        assertThat(all.count()).isEqualTo(state.differences().size() + " differences");
        assertThat(some.count()).startsWith(all.count()).endsWith(some.rows().size() + " of them listed");
    }

    @Test
    void rowsKeepTheNumberOfTheirDifference() {
        PlannerState state = States.of("the-rusty-gate").comparingAll();
        Decision.Kind first = state.differences().get(0).kind();

        DifferencesModel model = DifferencesModel.of(state, ENGLISH, EnumSet.of(first));

        assertThat(model.rows())
                .isNotEmpty()
                .allMatch(row -> state.differences().get(row.index()).kind() == row.kind());
    }

    @Test
    void theDifferenceSteppedToIsTheCurrentRow() {
        PlannerState state = States.of("the-rusty-gate").comparingAll();
        PlannerState stepped = States.with(
                state, state.reading(), OptionalInt.of(state.differences().size() - 1), Optional.empty());
        Decision.Kind last =
                state.differences().get(state.differences().size() - 1).kind();

        DifferencesModel model = DifferencesModel.of(stepped, ENGLISH, NONE);

        assertThat(model.current()).hasValue(model.rows().size() - 1);
        assertThat(DifferencesModel.of(stepped, ENGLISH, EnumSet.of(last)).current())
                .isEmpty();
    }

    @Test
    void whatIsToBeSaidWithoutDifferencesIsSaid() {
        assertThat(DifferencesModel.of(States.nothing(), ENGLISH, NONE).count()).isEqualTo("No plans yet.");
        assertThat(DifferencesModel.of(States.of("the-rusty-gate").comparing(0), ENGLISH, NONE)
                        .count())
                .startsWith("One plan is on the sheet");
        assertThat(DifferencesModel.of(States.of("the-rusty-gate").comparing(0, 1), ENGLISH, NONE)
                        .count())
                .matches("\\d+ differences?");
    }

    @Test
    void whatOnePlanPaysMoreForAddsUpAtEveryNodeLargestFirst() {
        States planned = States.of("the-rusty-gate");
        CostTree tree = costs(planned, 1, 0);

        assertThat(tree.cost())
                .isEqualTo(
                        planned.offers().get(1).cost() - planned.offers().get(0).cost());
        check(tree);
        assertThat(tree.children()).isNotEmpty();
    }

    @Test
    void theOtherWayRoundTheSignsTurn() {
        States planned = States.of("the-rusty-gate");
        CostTree there = costs(planned, 1, 0);
        CostTree back = costs(planned, 0, 1);

        assertThat(there.text()).startsWith("+");
        assertThat(back.text()).startsWith("−");
        assertThat(back.cost()).isEqualTo(-there.cost());
    }

    private static void check(CostTree tree) {
        if (tree.children().isEmpty()) return;
        assertThat(tree.children().stream().mapToLong(CostTree::cost).sum()).isEqualTo(tree.cost());
        assertThat(tree.children().stream().map(child -> -Math.abs(child.cost())))
                .isSorted();
        tree.children().forEach(DifferencesModelTest::check);
    }

    private static CostTree costs(States planned, int first, int second) {
        Explanation difference = planned.planning()
                .explain(
                        planned.offers().get(first).plan(),
                        planned.planning().request().player().taste())
                .minus(planned.planning()
                        .explain(
                                planned.offers().get(second).plan(),
                                planned.planning().request().player().taste()));
        return CostTree.ofDifference(
                difference, "A", new RuleWords(States.packs().providers(), ENGLISH.locale()), ENGLISH);
    }
}
