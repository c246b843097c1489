package org.mantice.app.text;

import java.util.ArrayList;
import java.util.List;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.plan.Figures;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.player.Taste;

/** Plans side by side: one column a plan, one row a figure, the best value of a row marked with {@code *}. */
public final class ComparisonText {
    private final Performance performance;
    private final Taste taste;

    public ComparisonText(Performance performance, Taste taste) {
        this.performance = performance;
        this.taste = taste;
    }

    public String of(List<Plan> plans) {
        List<FigureRow.Compared> compared = plans.stream()
                .map(plan -> new FigureRow.Compared(plan, Figures.of(plan, performance), plan.cost(taste)))
                .toList();
        TextTable table = new TextTable();
        for (FigureRow row : FigureRow.values()) {
            List<String> cells = new ArrayList<>(List.of(title(row)));
            List<FigureRow.Standing> standings = row.standings(compared);
            boolean differ = standings.contains(FigureRow.Standing.BEST);
            for (int i = 0; i < compared.size(); i++)
                cells.add(cell(row, compared.get(i))
                        + (standings.get(i) == FigureRow.Standing.BEST ? " *" : differ ? "  " : ""));
            table.row(cells);
        }
        return table.toString();
    }

    private static String title(FigureRow row) {
        return switch (row) {
            case LABEL -> "plan";
            case PROVEN -> "proven best of its kind";
            case COST -> "cost in position changes";
            case REGISTERS -> "registers";
            case TURNS -> "turns of the bellows";
            case TURNS_IN_PHRASES -> "  of these in phrases";
            case LEAST_MARGIN -> "least stroke margin, ml";
            case PLAN_FACTOR -> "plan factor on air";
            case PLAN_FACTOR_UNCERTAIN -> "  if the air is underestimated";
            case LONGEST_STROKE -> "longest stroke, s";
            case UNEVEN_STROKES -> "uneven strokes";
            case POSITION_CHANGES -> "changes of hand place";
            case WIDEST_REACH -> "widest reach, semitones";
            case AWKWARD_FINGERS -> "thumb or five on black";
            case LARGE_JUMPS -> "large jumps, left hand";
            case HARDEST_JUMP -> "hardest jump";
            case MISSING_TONES -> "chord tones missing";
            case FOREIGN_TONES -> "tones foreign to a chord";
            case MARKS_TO_WRITE -> "marks to write";
            case SOUNDS -> "different sounds";
        };
    }

    private String cell(FigureRow row, FigureRow.Compared compared) {
        Plan plan = compared.plan();
        return switch (row) {
            case LABEL -> plan.label();
            case PROVEN -> plan.provenBest() ? "yes" : "no";
            case REGISTERS -> RegisterRun.inLine(RegisterRun.of(plan), ComparisonText::register);
            case HARDEST_JUMP ->
                compared.figures().hardestJump().map(this::jump).orElse("none");
            default -> row.unit().shown(row.value(compared)).toPlainString();
        };
    }

    private String jump(LeftHandPlan.Event event) {
        String place = Places.words(performance, performance.measures().get(event.measure()), event.place());
        return place.replace("pass ", "p").replace(", measure ", " m").replace(", beat ", " b");
    }

    private static String register(RegisterRun run) {
        String name = run.switchId() + (run.octave() == 0 ? "" : run.octave() > 0 ? " +8va" : " -8va");
        return run.length() == 1 ? name : run.length() + "x " + name;
    }

    /** Micropoints as ordinary position changes, two decimals. */
    public static String cost(long micropoints) {
        return FigureRow.Unit.POSITION_CHANGES.shown(micropoints).toPlainString();
    }
}
