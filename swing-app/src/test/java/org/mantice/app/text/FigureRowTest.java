package org.mantice.app.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.text.FigureRow.Standing.BEST;
import static org.mantice.app.text.FigureRow.Standing.NEITHER;
import static org.mantice.app.text.FigureRow.Standing.WORST;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.Offer;
import org.mantice.app.model.States;
import org.mantice.plan.Figures;
import org.mantice.plan.Plan;
import org.mantice.plan.VariationPlan;

class FigureRowTest {
    private static final Plan PLAN =
            States.of("lanterns-at-the-weir").offers().get(0).plan();

    @Test
    void fewerTurnsAreBetter() {
        assertThat(FigureRow.TURNS.standings(turns(7, 3, 5))).containsExactly(WORST, BEST, NEITHER);
    }

    @Test
    void moreDifferentSoundsAreBetter() {
        List<FigureRow.Compared> plans =
                IntStream.of(2, 1, 3).mapToObj(n -> compared(0, 0, n)).toList();

        assertThat(FigureRow.SOUNDS.standings(plans)).containsExactly(NEITHER, WORST, BEST);
    }

    @Test
    void aNegativeMarginIsTheWorst() {
        List<FigureRow.Compared> plans =
                IntStream.of(-20, 0, 400).mapToObj(n -> compared(0, n, 0)).toList();

        assertThat(FigureRow.LEAST_MARGIN.standings(plans)).containsExactly(WORST, NEITHER, BEST);
    }

    @Test
    void plansThatShareTheBestOrTheWorstAreAllNamed() {
        assertThat(FigureRow.TURNS.standings(turns(3, 5, 3, 9, 9))).containsExactly(BEST, NEITHER, BEST, WORST, WORST);
    }

    @Test
    void whereAllAreEqualNothingIsNamed() {
        assertThat(FigureRow.TURNS.standings(turns(4, 4, 4))).containsOnly(NEITHER);
        assertThat(FigureRow.TURNS.standings(turns(4))).containsOnly(NEITHER);
        assertThat(FigureRow.TURNS.standings(List.of())).isEmpty();
    }

    @Test
    void rowsInWordsHaveNoBest() {
        List<FigureRow.Compared> plans = States.of("the-rusty-gate").offers().stream()
                .map(FigureRowTest::compared)
                .toList();

        for (FigureRow row : List.of(FigureRow.LABEL, FigureRow.PROVEN, FigureRow.REGISTERS, FigureRow.HARDEST_JUMP))
            assertThat(row.standings(plans)).as(row.name()).containsOnly(NEITHER);
    }

    @Test
    void onlyMarginAirAndSoundsAreBetterWhenLarger() {
        assertThat(Arrays.stream(FigureRow.values()).filter(row -> row.better() == FigureRow.Better.MORE))
                .containsExactly(
                        FigureRow.LEAST_MARGIN,
                        FigureRow.PLAN_FACTOR,
                        FigureRow.PLAN_FACTOR_UNCERTAIN,
                        FigureRow.SOUNDS);
    }

    @Test
    void everyFigureHasItsRow() {
        long inWords =
                Arrays.stream(FigureRow.values()).filter(row -> !row.isNumber()).count();

        assertThat(inWords).isEqualTo(4);
        // The hardest jump is in words; cost and the uncertain factor are no components of Figures.
        assertThat(FigureRow.values().length - inWords).isEqualTo(Figures.class.getRecordComponents().length - 1 + 2);
    }

    @Test
    void numbersAreShownInTheirUnits() {
        assertThat(FigureRow.Unit.POSITION_CHANGES.shown(41_156_000).toPlainString())
                .isEqualTo("41.16");
        assertThat(FigureRow.Unit.FACTOR.shown(1_799).toPlainString()).isEqualTo("1.79");
        assertThat(FigureRow.Unit.SECONDS.shown(8_650).toPlainString()).isEqualTo("8.7");
        assertThat(FigureRow.Unit.COUNT.shown(-12).toPlainString()).isEqualTo("-12");
    }

    @Test
    void equalPassesAfterOneAnotherAreOneRun() {
        Plan plan = playedWith("oboe", "oboe", "master", "oboe");

        assertThat(RegisterRun.of(plan))
                .containsExactly(
                        new RegisterRun(2, "oboe", 0), new RegisterRun(1, "master", 0), new RegisterRun(1, "oboe", 0));
    }

    @Test
    void moreRunsThanFitAreLeftOutWithDots() {
        Plan plan = playedWith("a", "b", "a", "b", "a");

        assertThat(RegisterRun.inLine(RegisterRun.of(plan), RegisterRun::switchId))
                .isEqualTo("a, b, a, b, …");
    }

    private static Plan playedWith(String... switches) {
        List<VariationPlan.PassDecision> passes = IntStream.range(0, switches.length)
                .mapToObj(i -> new VariationPlan.PassDecision(i + 1, switches[i], 0))
                .toList();
        VariationPlan variation = new VariationPlan(
                passes, PLAN.variation().costByRule(), PLAN.variation().concessions());
        return new Plan("best", true, variation, PLAN.leftHand(), PLAN.bellows(), PLAN.rightHand());
    }

    private static List<FigureRow.Compared> turns(int... turns) {
        return IntStream.of(turns).mapToObj(n -> compared(n, 0, 0)).toList();
    }

    private static FigureRow.Compared compared(Offer offer) {
        return new FigureRow.Compared(offer.plan(), offer.figures(), offer.cost());
    }

    private static FigureRow.Compared compared(int turns, int margin, int sounds) {
        Figures figures = new Figures(turns, 0, margin, 0, 0, 0, 0, 0, 0, 0, Optional.empty(), 0, 0, 0, sounds);
        return new FigureRow.Compared(PLAN, figures, 0);
    }
}
