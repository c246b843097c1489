package org.mantice.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.ToLongFunction;
import org.mantice.plan.Figures;
import org.mantice.plan.Plan;

/**
 * What plans are compared by, one row a figure, in the order in which players read them: the command line and the
 * window show the same rows. A row either says something in words or counts, and then less or more of it is better.
 */
public enum FigureRow {
    LABEL,
    PROVEN,
    COST(Better.LESS, Unit.POSITION_CHANGES, Compared::cost),
    REGISTERS,
    TURNS(Better.LESS, Unit.COUNT, figure(Figures::turns)),
    TURNS_IN_PHRASES(Better.LESS, Unit.COUNT, figure(Figures::turnsInPhrases)),
    LEAST_MARGIN(Better.MORE, Unit.COUNT, figure(Figures::leastMarginMillilitres)),
    PLAN_FACTOR(Better.MORE, Unit.FACTOR, figure(Figures::planFactorPerMille)),
    PLAN_FACTOR_UNCERTAIN(
            Better.MORE, Unit.FACTOR, compared -> compared.plan().bellows().planFactorUncertainPerMille()),
    LONGEST_STROKE(Better.LESS, Unit.SECONDS, figure(Figures::longestStrokeMillis)),
    UNEVEN_STROKES(Better.LESS, Unit.COUNT, figure(Figures::unevenStrokes)),
    POSITION_CHANGES(Better.LESS, Unit.COUNT, figure(Figures::positionChanges)),
    WIDEST_REACH(Better.LESS, Unit.COUNT, figure(Figures::widestReachSemitones)),
    AWKWARD_FINGERS(Better.LESS, Unit.COUNT, figure(Figures::awkwardFingers)),
    LARGE_JUMPS(Better.LESS, Unit.COUNT, figure(Figures::largeJumps)),
    HARDEST_JUMP,
    MISSING_TONES(Better.LESS, Unit.COUNT, figure(Figures::missingTones)),
    FOREIGN_TONES(Better.LESS, Unit.COUNT, figure(Figures::foreignTones)),
    MARKS_TO_WRITE(Better.LESS, Unit.COUNT, figure(Figures::marksToWrite)),
    SOUNDS(Better.MORE, Unit.COUNT, figure(Figures::sounds));

    /**
     * A plan with what is compared.
     *
     * @param cost micropoints under the player's weights
     */
    public record Compared(Plan plan, Figures figures, long cost) {}

    /** Which of two values is the better one. */
    public enum Better {
        LESS,
        MORE,
        /** The row says something in words. */
        NEITHER
    }

    /** A value among the values of its row. */
    public enum Standing {
        BEST,
        WORST,
        /** Between the two, or equal to all others, or not to be ranked. */
        NEITHER
    }

    /** How a row's whole numbers are to be shown. */
    public enum Unit {
        COUNT(0, 0, RoundingMode.UNNECESSARY),
        /** Micropoints, as ordinary changes of hand place. */
        POSITION_CHANGES(6, 2, RoundingMode.HALF_UP),
        /** Per mille, as a factor; never shown larger than it is. */
        FACTOR(3, 2, RoundingMode.DOWN),
        /** Milliseconds. */
        SECONDS(3, 1, RoundingMode.HALF_UP);

        private final int scale;
        private final int decimals;
        private final RoundingMode rounding;

        Unit(int scale, int decimals, RoundingMode rounding) {
            this.scale = scale;
            this.decimals = decimals;
            this.rounding = rounding;
        }

        /** The number to show; its scale says how many decimals. */
        public BigDecimal shown(long value) {
            return BigDecimal.valueOf(value, scale).setScale(decimals, rounding);
        }
    }

    private final Better better;
    private final Unit unit;
    private final ToLongFunction<Compared> value;

    FigureRow() {
        this(Better.NEITHER, Unit.COUNT, compared -> 0);
    }

    FigureRow(Better better, Unit unit, ToLongFunction<Compared> value) {
        this.better = better;
        this.unit = unit;
        this.value = value;
    }

    private static ToLongFunction<Compared> figure(ToLongFunction<Figures> figure) {
        return compared -> figure.applyAsLong(compared.figures());
    }

    public Better better() {
        return better;
    }

    /** Whether the row counts something; if not, it says something in words. */
    public boolean isNumber() {
        return better != Better.NEITHER;
    }

    public Unit unit() {
        return unit;
    }

    /** The row's whole number for a plan; 0 for rows in words. */
    public long value(Compared compared) {
        return value.applyAsLong(compared);
    }

    /** Every plan's standing, in their order; where all values are equal none is best or worst. */
    public List<Standing> standings(List<Compared> plans) {
        List<Long> values = plans.stream().map(this::value).toList();
        long least = values.stream().mapToLong(Long::longValue).min().orElse(0);
        long most = values.stream().mapToLong(Long::longValue).max().orElse(0);
        boolean ranked = isNumber() && least != most;
        long best = better == Better.LESS ? least : most;
        long worst = better == Better.LESS ? most : least;
        return values.stream()
                .map(each -> ranked && each == best
                        ? Standing.BEST
                        : ranked && each == worst ? Standing.WORST : Standing.NEITHER)
                .toList();
    }
}
