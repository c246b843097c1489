package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.mantice.app.text.FigureRow;
import org.mantice.app.words.Words;

class FiguresModelTest {
    static final List<String> TUNES = States.TUNES;

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Words GERMAN = Words.of(Locale.GERMAN);

    @ParameterizedTest
    @FieldSource("TUNES")
    void bestAndWorstAreTheEndsOfTheRowByItsOwnSense(String tune) {
        PlannerState state = States.of(tune).comparingAll();

        for (FiguresModel.Line line : english(state).lines()) {
            long[] values = state.offers().stream()
                    .mapToLong(offer ->
                            line.row().value(new FigureRow.Compared(offer.plan(), offer.figures(), offer.cost())))
                    .toArray();
            long least = Arrays.stream(values).min().orElseThrow();
            long most = Arrays.stream(values).max().orElseThrow();
            boolean lessIsBetter = line.row().better() == FigureRow.Better.LESS;
            for (int i = 0; i < values.length; i++) {
                String standing = line.values().get(i).standing();
                if (least == most || !line.row().isNumber())
                    assertThat(standing).isEmpty();
                else if (values[i] == (lessIsBetter ? least : most))
                    assertThat(standing).isEqualTo("★ best");
                else if (values[i] == (lessIsBetter ? most : least))
                    assertThat(standing).isEqualTo("▽ worst");
                else assertThat(standing).isEmpty();
            }
        }
    }

    @Test
    void theFirstColumnIsTheCheapestAndSaysSo() {
        FiguresModel figures = english(States.of("lanterns-at-the-weir").comparingAll());

        FiguresModel.Line cost = line(figures, FigureRow.COST);
        assertThat(cost.values().get(0).inCell()).endsWith("★ best");
        assertThat(cost.values().get(cost.values().size() - 1).inCell()).endsWith("▽ worst");
    }

    @Test
    void everyRowSaysWhatItMeansInBothLanguages() {
        PlannerState state = States.of("lanterns-at-the-weir").comparingAll();

        for (Words words : List.of(ENGLISH, GERMAN))
            assertThat(FiguresModel.of(state, words, States.packs().providers()).lines())
                    .hasSize(FigureRow.values().length - 2)
                    .allMatch(line -> line.meaning().endsWith("."))
                    .allMatch(line -> !line.title().isBlank())
                    .extracting(FiguresModel.Line::meaning)
                    .doesNotHaveDuplicates();
    }

    @Test
    void numbersAreWrittenAsTheLanguageWritesThem() {
        PlannerState state = States.of("lanterns-at-the-weir").comparingAll();

        String english =
                line(english(state), FigureRow.LONGEST_STROKE).values().get(0).text();
        String german = line(FiguresModel.of(state, GERMAN, States.packs().providers()), FigureRow.LONGEST_STROKE)
                .values()
                .get(0)
                .text();
        assertThat(english).matches("\\d+\\.\\d");
        assertThat(german).isEqualTo(english.replace('.', ','));
    }

    @Test
    void onlyPlansOnTheSheetHaveShapes() {
        FiguresModel figures = english(States.of("the-rusty-gate").comparing(0, 2));

        assertThat(figures.columns()).extracting(FiguresModel.Column::mark).startsWith("A ●", "B", "C ◆");
        assertThat(figures.columns()).extracting(FiguresModel.Column::compared).startsWith(true, false, true);
    }

    @Test
    void oneColumnIsTheChosenOne() {
        FiguresModel figures = english(States.of("the-rusty-gate").comparingAll());

        assertThat(figures.columns().stream().filter(FiguresModel.Column::chosen))
                .extracting(FiguresModel.Column::letter)
                .containsExactly("A");
    }

    @Test
    void theHeadSaysHowThePlanCameAboutAndWhetherItIsProven() {
        FiguresModel figures = english(States.of("the-rusty-gate").comparingAll());

        assertThat(figures.columns().get(0).label()).isEqualTo("best");
        assertThat(figures.columns().get(0).cost()).matches("cost \\d+\\.\\d\\d");
        assertThat(figures.columns()).allMatch(column -> column.proven().matches("(not )?proven best.*"));
    }

    @Test
    void aPlanIsPutOnTheSheetInItsPlace() {
        FiguresModel figures = english(States.of("the-rusty-gate").comparing(0, 2));

        assertThat(figures.toggled(1)).contains(List.of(0, 1, 2));
        assertThat(figures.toggled(0)).contains(List.of(2));
    }

    @Test
    void theLastPlanStaysOnTheSheet() {
        assertThat(english(States.of("the-rusty-gate").comparing(1)).toggled(1)).isEmpty();
    }

    @Test
    void aFifthPlanHasNoRoomOnTheSheet() {
        List<FiguresModel.Column> columns = IntStream.range(0, 5)
                .mapToObj(i -> new FiguresModel.Column(i, "" + i, "" + i, "", "", "", i < 4, i == 0))
                .toList();
        FiguresModel figures = new FiguresModel(columns, List.of());

        assertThat(figures.toggled(4)).isEmpty();
        assertThat(figures.toggled(3)).contains(List.of(0, 1, 2));
    }

    @Test
    void withoutPlansTheTableIsEmpty() {
        FiguresModel figures = english(States.nothing());

        assertThat(figures.columns()).isEmpty();
        assertThat(figures.lines()).isEmpty();
    }

    private static FiguresModel english(PlannerState state) {
        return FiguresModel.of(state, ENGLISH, States.packs().providers());
    }

    private static FiguresModel.Line line(FiguresModel figures, FigureRow row) {
        return figures.lines().stream()
                .filter(line -> line.row() == row)
                .findFirst()
                .orElseThrow();
    }
}
