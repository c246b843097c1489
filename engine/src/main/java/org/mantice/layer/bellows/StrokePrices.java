package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.layer.Pricing;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Places;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;
import org.mantice.rule.Stroke;
import org.mantice.rule.StrokePair;
import org.mantice.rule.TurnPlace;

/**
 * What every rule charges for every place, stroke, pair of strokes and opening: asked once, kept as whole millipoints,
 * shared between equal contexts. Rules by position in {@link #turnRules} and so on.
 */
final class StrokePrices {
    final List<Rule<TurnPlace>> turnRules;
    final List<Rule<Stroke>> strokeRules;
    final List<Rule<StrokePair>> pairRules;
    final List<Rule<OpeningCell>> openingRules;
    final List<Rule<?>> rules;

    /** Kinds of place by place. */
    final int[] placeKind;
    /** Kinds of stroke in order of their number. */
    final List<Stroke> strokeKinds = new ArrayList<>();
    /** Millipoints or {@link Rule#BAN}: by rule, then kind of place. */
    final long[][] turns;
    /** By rule, then kind of stroke. */
    final long[][] strokes;
    /** By rule, then {@code first * strokeKinds.size() + second}. */
    final int[][] pairs;
    /** By rule, then {@code moment * cells + cell}. */
    final long[][] openings;

    private final Ground ground;
    private final Map<Stroke, Integer> kindOf = new HashMap<>();
    /** First stroke from every place; strokes are numbered by start, then end. */
    private final int[] first;
    /** Kind of every stroke. */
    private final int[] strokeKind;

    StrokePrices(Ground ground, RuleBook book) {
        this.ground = ground;
        this.turnRules = book.rules(RuleSet.BELLOWS_POLICY, TurnPlace.class);
        this.strokeRules = book.rules(RuleSet.BELLOWS_POLICY, Stroke.class);
        this.pairRules = book.rules(RuleSet.BELLOWS_POLICY, StrokePair.class);
        this.openingRules = book.rules(RuleSet.BELLOWS_POLICY, OpeningCell.class);
        this.rules = book.rules(RuleSet.BELLOWS_POLICY);
        this.placeKind = new int[ground.last() + 1];
        this.turns = priceTurns();
        this.first = countStrokes();
        this.strokeKind = listStrokes();
        this.strokes = priceStrokes();
        this.pairs = pricePairs();
        this.openings = priceOpenings();
    }

    int kind(int from, int to) {
        return strokeKind[number(from, to)];
    }

    /** Strokes are numbered by start, then end. */
    int number(int from, int to) {
        return first[from] + to - from - 1;
    }

    /** One past the last place where a stroke from here may end. */
    int endOf(int from) {
        return from + 1 + first[from + 1] - first[from];
    }

    /** The kept price of a step: the same number that the rule gave when it was asked. */
    long kept(Rule<?> rule, Step step, int place) {
        if (step instanceof TurnPlace) return turns[turnRules.indexOf(rule)][placeKind[place]];
        if (step instanceof Stroke stroke) return strokes[strokeRules.indexOf(rule)][kind(stroke)];
        if (step instanceof StrokePair pair)
            return pairs[pairRules.indexOf(rule)][kind(pair.first()) * strokeKinds.size() + kind(pair.second())];
        OpeningCell opening = (OpeningCell) step;
        return openings[openingRules.indexOf(rule)][opening.moment().ordinal() * ground.cells() + opening.cell()];
    }

    private int kind(Stroke stroke) {
        Integer kind = kindOf.get(stroke);
        if (kind == null)
            throw new IllegalArgumentException("a stroke of the plan lasts " + stroke.halfBeats()
                    + " half beats; allowed: strokes that the bellows have air for");
        return kind;
    }

    String words(int place) {
        Candidate at = ground.place(place);
        return Places.words(ground.performance, ground.performance.measures().get(at.measure()), at.place());
    }

    private long[][] priceTurns() {
        Map<TurnPlace, Integer> kinds = new HashMap<>();
        List<Integer> sample = new ArrayList<>();
        for (int place = 1; place < ground.last(); place++) {
            Integer known = kinds.putIfAbsent(ground.place(place).facts(), sample.size());
            if (known == null) sample.add(place);
            placeKind[place] = known == null ? sample.size() - 1 : known;
        }
        long[][] costs = new long[turnRules.size()][sample.size()];
        for (int rule = 0; rule < costs.length; rule++)
            for (int kind = 0; kind < sample.size(); kind++) {
                int place = sample.get(kind);
                costs[rule][kind] =
                        Pricing.cost(turnRules.get(rule), ground.place(place).facts(), words(place));
            }
        return costs;
    }

    /** A stroke takes no more air than there is, unless it is the shortest from its place. */
    private int[] countStrokes() {
        int[] starts = new int[ground.last() + 2];
        for (int from = 0; from < ground.last(); from++) {
            int to = from + 1;
            while (to < ground.furthest(from) && ground.air.between(from, to + 1) <= ground.full()) to++;
            starts[from + 1] = Math.addExact(starts[from], to - from);
        }
        starts[ground.last() + 1] = starts[ground.last()];
        return starts;
    }

    private int[] listStrokes() {
        int[] kinds = new int[first[ground.last()]];
        int[][] plain = new int[0][];
        for (int from = 0; from < ground.last(); from++)
            for (int to = from + 1; to < endOf(from); to++) {
                int at = first[from] + to - from - 1;
                int measure = ground.place(from).measureHalfBeats();
                int length = ground.halfBeats(from, to);
                boolean free = from == 0 || to == ground.last();
                if (!free
                        && measure < plain.length
                        && plain[measure] != null
                        && length < plain[measure].length
                        && plain[measure][length] > 0) {
                    kinds[at] = plain[measure][length] - 1;
                    continue;
                }
                Stroke stroke = ground.stroke(from, to);
                Integer known = kindOf.putIfAbsent(stroke, strokeKinds.size());
                if (known == null) strokeKinds.add(stroke);
                kinds[at] = known == null ? strokeKinds.size() - 1 : known;
                if (!free) plain = remember(plain, measure, length, kinds[at]);
            }
        return kinds;
    }

    private static int[][] remember(int[][] plain, int measure, int length, int kind) {
        int[][] grown = measure < plain.length ? plain : Arrays.copyOf(plain, measure + 1);
        int[] known = grown[measure] == null ? new int[0] : grown[measure];
        if (known.length <= length) known = Arrays.copyOf(known, length + 32);
        known[length] = kind + 1;
        grown[measure] = known;
        return grown;
    }

    private long[][] priceStrokes() {
        long[][] costs = new long[strokeRules.size()][strokeKinds.size()];
        for (int rule = 0; rule < costs.length; rule++)
            for (int kind = 0; kind < costs[rule].length; kind++)
                costs[rule][kind] = Pricing.cost(
                        strokeRules.get(rule),
                        strokeKinds.get(kind),
                        "a stroke of " + strokeKinds.get(kind).beats() + " beats");
        return costs;
    }

    private int[][] pricePairs() {
        int kinds = strokeKinds.size();
        int[][] costs = new int[pairRules.size()][Math.multiplyExact(kinds, kinds)];
        for (int rule = 0; rule < costs.length; rule++)
            for (int first = 0; first < kinds; first++) {
                if (strokeKinds.get(first).last()) continue;
                for (int second = 0; second < kinds; second++) {
                    if (strokeKinds.get(second).first()) continue;
                    StrokePair pair = new StrokePair(strokeKinds.get(first), strokeKinds.get(second));
                    costs[rule][first * kinds + second] = (int) Pricing.withoutBan(
                            pairRules.get(rule),
                            pair,
                            "strokes of " + pair.first().beats() + " and "
                                    + pair.second().beats() + " beats");
                }
            }
        return costs;
    }

    private long[][] priceOpenings() {
        OpeningCell.Moment[] moments = OpeningCell.Moment.values();
        long[][] costs = new long[openingRules.size()][moments.length * ground.cells()];
        for (int rule = 0; rule < costs.length; rule++)
            for (OpeningCell.Moment moment : moments)
                for (int cell = 0; cell < ground.cells(); cell++) {
                    OpeningCell opening = new OpeningCell(cell, moment);
                    costs[rule][moment.ordinal() * ground.cells() + cell] = Pricing.cost(
                            openingRules.get(rule), opening, "an opening of " + opening.percent() + " per cent");
                }
        return costs;
    }
}
