package org.mantice.app.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.app.model.SheetColumn.Field;
import org.mantice.app.sheet.Cell;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.plan.Plan;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * The sheet as a table: a row for each moment of the measures that the sheet shows, a column for each thing told of the
 * tune, of each plan shown, and of all of them. Immutable.
 */
public final class SheetTableModel {
    private final List<SheetColumn> columns = new ArrayList<>();
    private final List<PlayedMoment> rows;
    private final Map<Integer, PlanAtMoments> plans = new HashMap<>();
    private final Optional<Performance> performance;
    private final Optional<SheetCellWords> cells;

    /** @param offers indexes of the plans told of */
    public SheetTableModel(PlannerState state, Words words, List<Integer> offers) {
        this.performance = state.performance().filter(played -> state.tune().isPresent());
        this.cells = performance.map(played -> new SheetCellWords(state, words));
        List<Plan> shown = new ArrayList<>();
        for (int offer : offers) {
            Plan plan = state.offers().get(offer).plan();
            shown.add(plan);
            plans.put(offer, new PlanAtMoments(plan));
        }
        this.rows = performance
                .map(played -> PlayedMoment.of(
                        played,
                        shown,
                        state.reading().cells(played).stream()
                                .map(Cell::played)
                                .filter(OptionalInt::isPresent)
                                .map(OptionalInt::getAsInt)
                                .toList()))
                .orElse(List.of());
        if (performance.isPresent()) addColumns(state, words, offers);
    }

    private void addColumns(PlannerState state, Words words, List<Integer> offers) {
        List<Field> own = new ArrayList<>();
        for (Field field : Field.values()) {
            if (field.isOfPlan()) own.add(field);
            else {
                if (field == Field.LOCKS)
                    for (int offer : offers) for (Field each : own) columns.add(column(state, words, each, offer));
                columns.add(new SheetColumn(field, -1, words.of("table", field)));
            }
        }
    }

    private static SheetColumn column(PlannerState state, Words words, Field field, int offer) {
        String mark = PlanWords.mark(
                state.offers().get(offer).letter(), state.compared().indexOf(offer));
        return new SheetColumn(field, offer, words.text("table.ofPlan", mark, words.of("table", field)));
    }

    public List<SheetColumn> columns() {
        return List.copyOf(columns);
    }

    public int rowCount() {
        return rows.size();
    }

    /** Where a row is, as "measure 3, beat 2". */
    public String place(int row) {
        return cells.orElseThrow().place(rows.get(row));
    }

    /** What the cell says; empty where there is nothing to say. */
    public String text(int row, int column) {
        PlayedMoment moment = rows.get(row);
        SheetColumn of = columns.get(column);
        SheetCellWords say = cells.orElseThrow();
        return switch (of.field()) {
            case PASS -> String.valueOf(say.pass(moment));
            case MEASURE -> say.measure(moment);
            case BEAT -> say.beat(moment);
            case NOTES -> say.notes(moment);
            case CHORD -> say.chord(moment);
            case LOCKS -> say.locks(moment);
            case DIFFERENCES -> say.differences(moment);
            default -> textOfPlan(moment, of.field(), planOf(of), say);
        };
    }

    private static String textOfPlan(PlayedMoment moment, Field field, PlanAtMoments plan, SheetCellWords say) {
        return switch (field) {
            case FINGERS -> plan.fingers(moment).map(say::fingers).orElse("");
            case HAND -> plan.fingers(moment).map(say::hand).orElse("");
            case BELLOWS ->
                plan.strokeAt(moment)
                        .map(stroke ->
                                say.bellows(stroke, plan.strokeInto(moment).isPresent(), moment.micros()))
                        .orElse("");
            case REGISTER -> say.register(plan.register(say.pass(moment)));
            case BUTTONS -> plan.buttons(moment).map(say::buttons).orElse("");
            case JUMP -> plan.buttons(moment).map(say::jump).orElse("");
            default -> throw new IllegalArgumentException("field is " + field + "; allowed: one of a plan");
        };
    }

    private PlanAtMoments planOf(SheetColumn column) {
        return Objects.requireNonNull(plans.get(column.offer()));
    }

    /** What a cell points at; empty in columns that all plans share and where the plan decides nothing. */
    public Optional<Selection> selectionAt(int row, int column) {
        PlayedMoment moment = rows.get(row);
        SheetColumn of = columns.get(column);
        if (!of.field().isOfPlan()) return Optional.empty();
        PlanAtMoments plan = planOf(of);
        return switch (of.field()) {
            case REGISTER -> Optional.of(new Selection(of.offer(), registerOf(pass(moment))));
            case BELLOWS ->
                moment.treble().isPresent() || plan.strokeInto(moment).isPresent()
                        ? Optional.of(new Selection(of.offer(), spot(Strip.BELLOWS, moment)))
                        : Optional.empty();
            case BUTTONS, JUMP ->
                plan.buttons(moment).map(event -> new Selection(of.offer(), spot(Strip.BUTTONS, moment)));
            default -> plan.fingers(moment).map(event -> new Selection(of.offer(), spot(Strip.FINGERS, moment)));
        };
    }

    private Spot spot(Strip strip, PlayedMoment moment) {
        return new Spot(strip, moment.measure(), pass(moment).number(), moment.place(), 0);
    }

    private static Spot registerOf(Pass pass) {
        return new Spot(Strip.REGISTERS, pass.firstMeasure(), pass.number(), new WrittenPlace(0, MusicalTime.ZERO), 0);
    }

    private Pass pass(PlayedMoment moment) {
        Performance played = performance.orElseThrow();
        return played.passes().get(played.measures().get(moment.measure()).pass() - 1);
    }

    /** A cell by its row and column. */
    public record At(int row, int column) {}

    /** The cell of a selection; empty if the table does not show its place or its plan. */
    public Optional<At> cellOf(Selection selection) {
        Spot spot = selection.spot();
        for (int column = 0; column < columns.size(); column++) {
            SheetColumn of = columns.get(column);
            if (of.offer() != selection.offer() || of.field() != fieldOf(spot.strip())) continue;
            for (int row = 0; row < rows.size(); row++)
                if (rows.get(row).isAt(spot)) return Optional.of(new At(row, column));
        }
        return Optional.empty();
    }

    private static Field fieldOf(Strip strip) {
        return switch (strip) {
            case FINGERS -> Field.FINGERS;
            case REGISTERS -> Field.REGISTER;
            case BELLOWS -> Field.BELLOWS;
            case BUTTONS -> Field.BUTTONS;
        };
    }
}
