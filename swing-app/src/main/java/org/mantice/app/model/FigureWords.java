package org.mantice.app.model;

import java.math.BigDecimal;
import java.text.NumberFormat;
import org.mantice.app.text.FigureRow;
import org.mantice.app.text.RegisterRun;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;

/** What the rows of the comparison are called, what they mean, and their values, in the player's language. */
final class FigureWords {
    private final Words words;
    private final MusicWords music;
    private final PlanWords plans;

    FigureWords(Words words, PlanWords plans) {
        this.words = words;
        this.music = new MusicWords(words);
        this.plans = plans;
    }

    /** With its unit where it has one. */
    String title(FigureRow row) {
        return words.of("figures", row);
    }

    /** One sentence on what is counted. */
    String meaning(FigureRow row) {
        return words.text(
                switch (row) {
                    case LABEL -> "figures.meaning.label";
                    case PROVEN -> "figures.meaning.proven";
                    case COST -> "figures.meaning.cost";
                    case REGISTERS -> "figures.meaning.registers";
                    case TURNS -> "figures.meaning.turns";
                    case TURNS_IN_PHRASES -> "figures.meaning.turnsInPhrases";
                    case LEAST_MARGIN -> "figures.meaning.leastMargin";
                    case PLAN_FACTOR -> "figures.meaning.planFactor";
                    case PLAN_FACTOR_UNCERTAIN -> "figures.meaning.planFactorUncertain";
                    case LONGEST_STROKE -> "figures.meaning.longestStroke";
                    case UNEVEN_STROKES -> "figures.meaning.unevenStrokes";
                    case POSITION_CHANGES -> "figures.meaning.positionChanges";
                    case WIDEST_REACH -> "figures.meaning.widestReach";
                    case AWKWARD_FINGERS -> "figures.meaning.awkwardFingers";
                    case LARGE_JUMPS -> "figures.meaning.largeJumps";
                    case HARDEST_JUMP -> "figures.meaning.hardestJump";
                    case MISSING_TONES -> "figures.meaning.missingTones";
                    case FOREIGN_TONES -> "figures.meaning.foreignTones";
                    case MARKS_TO_WRITE -> "figures.meaning.marksToWrite";
                    case SOUNDS -> "figures.meaning.sounds";
                });
    }

    String value(FigureRow row, FigureRow.Compared compared, Performance performance, Accordion accordion) {
        return switch (row) {
            case LABEL -> plans.label(compared.plan().label());
            case PROVEN -> proven(compared.plan().provenBest());
            case REGISTERS -> RegisterRun.inLine(RegisterRun.of(compared.plan()), run -> register(run, accordion));
            case HARDEST_JUMP ->
                compared.figures()
                        .hardestJump()
                        .map(jump -> music.place(performance, jump.measure(), jump.place()))
                        .orElseGet(() -> words.text("figures.noJump"));
            default -> number(row.unit().shown(row.value(compared)));
        };
    }

    String proven(boolean proven) {
        return words.text(proven ? "figures.proven" : "figures.notProven");
    }

    String standing(FigureRow.Standing standing) {
        return switch (standing) {
            case BEST -> words.text("figures.best");
            case WORST -> words.text("figures.worst");
            case NEITHER -> "";
        };
    }

    private String register(RegisterRun run, Accordion accordion) {
        String name = music.value(Decision.Kind.REGISTER, run.switchId(), accordion);
        String sound = run.octave() == 0
                ? name
                : name + " " + music.value(Decision.Kind.OCTAVE, String.valueOf(run.octave()), accordion);
        return run.length() == 1 ? sound : words.text("figures.times", run.length(), sound);
    }

    private String number(BigDecimal value) {
        NumberFormat format = NumberFormat.getNumberInstance(words.locale());
        format.setMinimumFractionDigits(value.scale());
        format.setMaximumFractionDigits(value.scale());
        return format.format(value);
    }
}
