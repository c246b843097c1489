package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.mantice.app.model.SheetColumn.Field;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.PlayerPresets;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

class SheetTableModelTest {
    static final List<String> TUNES = States.TUNES;

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);

    @ParameterizedTest
    @FieldSource("TUNES")
    void everyFingerOfEveryPlanStandsInItsRowInOrderOfPlay(String tune) {
        PlannerState state = asPlayed(States.of(tune).comparingAll());
        SheetTableModel table = table(state);

        for (int offer = 0; offer < state.offers().size(); offer++) {
            Plan plan = state.offers().get(offer).plan();
            List<String> expected = plan.rightHand().events().stream()
                    .map(event -> place(state, event.moment()) + " "
                            + event.fingers().stream().map(String::valueOf).collect(Collectors.joining(" + ")))
                    .toList();
            assertThat(placed(table, column(table, Field.FINGERS, offer))).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @FieldSource("TUNES")
    void everyPressOfEveryPlanStandsInItsRowInOrderOfPlay(String tune) {
        PlannerState state = asPlayed(States.of(tune).comparingAll());
        SheetTableModel table = table(state);
        MusicWords music = new MusicWords(ENGLISH);

        for (int offer = 0; offer < state.offers().size(); offer++) {
            List<String> expected = new ArrayList<>();
            for (LeftHandPlan.Event event :
                    state.offers().get(offer).plan().leftHand().events()) {
                List<String> buttons = new ArrayList<>();
                for (int i = 0; i < event.buttons().size(); i++)
                    buttons.add(music.buttons(List.of(event.buttons().get(i))) + " "
                            + event.fingers().get(i));
                expected.add(place(state, event.measure(), event.place()) + " " + String.join(" + ", buttons));
            }
            assertThat(placed(table, column(table, Field.BUTTONS, offer))).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @FieldSource("TUNES")
    void everyTurnOfEveryPlanStandsInItsRowInOrderOfPlay(String tune) {
        PlannerState state = asPlayed(States.of(tune).comparingAll());
        SheetTableModel table = table(state);

        for (int offer = 0; offer < state.offers().size(); offer++) {
            List<String> expected = state.offers().get(offer).plan().bellows().strokes().stream()
                    .skip(1)
                    .map(stroke -> place(state, stroke.measure(), stroke.place()) + " turn: "
                            + stroke.direction().name().toLowerCase(Locale.ROOT))
                    .toList();
            List<String> turns = placed(table, column(table, Field.BELLOWS, offer)).stream()
                    .filter(text -> text.contains("turn: "))
                    .map(text -> text.substring(0, text.indexOf(",", text.indexOf("turn: "))))
                    .toList();
            assertThat(turns).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @FieldSource("TUNES")
    void everyRowSaysTheRegisterAndTheStrokeItIsPlayedWith(String tune) {
        PlannerState state = asPlayed(States.of(tune).comparingAll());
        SheetTableModel table = table(state);
        MusicWords music = new MusicWords(ENGLISH);

        int pass = column(table, Field.PASS, -1);
        for (int offer = 0; offer < state.offers().size(); offer++)
            for (int row = 0; row < table.rowCount(); row++) {
                String register = state.offers()
                        .get(offer)
                        .plan()
                        .variation()
                        .pass(Integer.parseInt(table.text(row, pass)))
                        .switchId();
                assertThat(table.text(row, column(table, Field.REGISTER, offer)))
                        .startsWith(music.register(register, state.setup().accordion()));
                assertThat(table.text(row, column(table, Field.BELLOWS, offer)))
                        .containsPattern("(out|in), (about )?\\d+ % open");
            }
    }

    @ParameterizedTest
    @FieldSource("TUNES")
    void aCellThatPointsAtSomethingIsFoundAgain(String tune) {
        PlannerState state = asPlayed(States.of(tune).comparingAll());
        SheetTableModel table = table(state);

        int found = 0;
        for (int row = 0; row < table.rowCount(); row++)
            for (int column = 0; column < table.columns().size(); column++) {
                Optional<Selection> selection = table.selectionAt(row, column);
                if (selection.isEmpty()) continue;
                SheetTableModel.At at = table.cellOf(selection.get()).orElseThrow();
                assertThat(table.selectionAt(at.row(), at.column())).isEqualTo(selection);
                found++;
            }
        assertThat(found).isGreaterThan(table.rowCount());
    }

    @ParameterizedTest
    @FieldSource("TUNES")
    void everyDifferenceIsNamedInItsRow(String tune) {
        PlannerState state = asPlayed(States.of(tune).comparingAll());
        SheetTableModel table = table(state);
        MusicWords music = new MusicWords(ENGLISH);

        int column = column(table, Field.DIFFERENCES, -1);
        Set<String> said = new HashSet<>(placed(table, column));
        for (Difference difference : state.differences()) {
            String place = difference.spot().strip() == Strip.REGISTERS
                    ? "pass " + difference.spot().pass()
                    : place(
                            state,
                            difference.spot().measure(),
                            difference.spot().place());
            assertThat(said).anyMatch(text -> text.startsWith(place) && text.contains(music.kind(difference.kind())));
        }
    }

    @Test
    void asWrittenShowsEveryWrittenMeasureOnce() {
        PlannerState state = States.of("lanterns-at-the-weir").comparing(0);
        SheetTableModel table = table(state);

        int measure = column(table, Field.MEASURE, -1);
        List<String> numbers = IntStream.range(0, table.rowCount())
                .mapToObj(row -> table.text(row, measure))
                .distinct()
                .toList();
        assertThat(numbers)
                .hasSameSizeAs(state.tune().orElseThrow().read().tune().measures());
        assertThat(table.rowCount()).isLessThan(table(asPlayed(state)).rowCount());
    }

    @Test
    void aPlaceThatIsNotShownIsNotFound() {
        PlannerState state = States.of("lanterns-at-the-weir").comparing(0);
        Performance performance = state.performance().orElseThrow();
        int last = performance.measures().size() - 1;
        WrittenPlace place =
                performance.treble().get(performance.treble().size() - 1).place();
        Spot secondTime =
                new Spot(Strip.FINGERS, last, performance.measures().get(last).pass(), place, 0);

        assertThat(table(state).cellOf(new Selection(0, secondTime))).isEmpty();
        assertThat(table(asPlayed(state)).cellOf(new Selection(0, secondTime))).isPresent();
        assertThat(table(asPlayed(state)).cellOf(new Selection(1, secondTime))).isEmpty();
    }

    @Test
    void notesAreNamedAsWritten() {
        PlannerState state = States.of("the-ropewalk-march").comparing(0);
        SheetTableModel table = table(state);

        List<String> notes = placed(table, column(table, Field.NOTES, -1));
        assertThat(notes)
                .isNotEmpty()
                .allMatch(text -> text.matches(".*: (grace )?[A-G][♯♭]?\\d( held)?(, [A-G][♯♭]?\\d( held)?)*"));
    }

    @Test
    void locksStandWhereTheyHold() {
        Lock.Finger finger = new Lock.Finger(OptionalInt.of(1), new WrittenPlace(2, MusicalTime.ZERO), 0, 3);
        PlannerState state = States.of(
                        "lanterns-at-the-weir",
                        AccordionPresets.get("full-41-key-120-bass"),
                        PlayerPresets.get("medium-hand"),
                        List.of(finger))
                .comparing(0);
        SheetTableModel table = table(asPlayed(state));

        List<String> locks = placed(table, column(table, Field.LOCKS, -1));
        assertThat(locks).hasSize(1);
        assertThat(locks.get(0)).startsWith("pass 1, measure ").contains("finger 3");
    }

    @Test
    void theDifferenceSteppedToSaysSo() {
        PlannerState state = asPlayed(States.of("the-rusty-gate").comparingAll());
        PlannerState stepped = States.with(state, state.reading(), OptionalInt.of(2), Optional.empty());
        SheetTableModel table = table(stepped);

        assertThat(placed(table, column(table, Field.DIFFERENCES, -1)).stream()
                        .filter(text -> text.contains("(stepped to)")))
                .hasSize(1);
    }

    @Test
    void withoutATuneThereIsNoTable() {
        SheetTableModel table = new SheetTableModel(States.nothing(), ENGLISH, List.of());

        assertThat(table.rowCount()).isZero();
        assertThat(table.columns()).isEmpty();
    }

    @Test
    void onlyThePlansAskedForAreTold() {
        PlannerState state = States.of("the-rusty-gate").comparingAll();

        SheetTableModel table = new SheetTableModel(state, ENGLISH, List.of(1));

        assertThat(table.columns().stream().filter(column -> column.field().isOfPlan()))
                .hasSize(6)
                .allMatch(column -> column.offer() == 1 && column.title().startsWith("B ◆ "));
    }

    private static PlannerState asPlayed(PlannerState state) {
        return States.with(state, new Reading.AsPlayed(), OptionalInt.empty(), Optional.empty());
    }

    private static SheetTableModel table(PlannerState state) {
        return new SheetTableModel(state, ENGLISH, state.compared());
    }

    private static int column(SheetTableModel table, Field field, int offer) {
        for (int i = 0; i < table.columns().size(); i++)
            if (table.columns().get(i).field() == field
                    && table.columns().get(i).offer() == offer) return i;
        throw new AssertionError("no column " + field + " of " + offer);
    }

    /** The cells of a column that say something, each after its place. */
    private static List<String> placed(SheetTableModel table, int column) {
        boolean common = table.columns().get(column).offer() < 0;
        List<String> texts = new ArrayList<>();
        for (int row = 0; row < table.rowCount(); row++) {
            String text = table.text(row, column);
            String place = "pass " + table.text(row, column(table, Field.PASS, -1)) + ", measure "
                    + table.text(row, column(table, Field.MEASURE, -1)) + ", beat "
                    + table.text(row, column(table, Field.BEAT, -1));
            if (!text.isEmpty()) texts.add(place + (common ? ": " : " ") + text);
        }
        return texts;
    }

    private static String place(PlannerState state, int moment) {
        Performance performance = state.performance().orElseThrow();
        return place(
                state,
                performance.treble().get(moment).measure(),
                performance.treble().get(moment).place());
    }

    private static String place(PlannerState state, int measure, WrittenPlace place) {
        Performance performance = state.performance().orElseThrow();
        return Places.words(performance, performance.measures().get(measure), place);
    }
}
