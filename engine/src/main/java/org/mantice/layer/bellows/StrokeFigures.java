package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.mantice.layer.Ledger;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.BellowsPlan.Direction;
import org.mantice.plan.Concession;
import org.mantice.plan.Explanation;
import org.mantice.player.Taste;
import org.mantice.rule.GiveWay;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.OpeningCell.Moment;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;
import org.mantice.rule.Stroke;
import org.mantice.rule.StrokePair;
import org.mantice.rule.TurnPlace;

/** Turns places of strokes into a plan with its figures, and reasons for its cost. */
final class StrokeFigures {
    /**
     * While capacity and appetites are estimates, the instrument may take so many per mille of the counted air: an
     * estimate, the physics behind it is good to a factor of two.
     */
    static final int UNCERTAIN_PER_MILLE = 2_000;

    /** The plan factor of a plan without limits, in per mille. */
    private static final int LARGEST_FACTOR = 1_000_000;

    private final Ground ground;
    private final StrokePrices prices;

    StrokeFigures(Ground ground, StrokePrices prices) {
        this.ground = ground;
        this.prices = prices;
    }

    BellowsPlan plan(List<Integer> places, int start, boolean proven, long gap) {
        int[] levels = levels(places, start);
        List<BellowsPlan.Stroke> strokes = new ArrayList<>();
        for (int i = 0; i + 1 < places.size(); i++) strokes.add(stroke(i, places, levels));
        int factor = planFactor(levels);
        int uncertain = ground.bellows().measured() ? factor : (int) (factor * 1_000L / UNCERTAIN_PER_MILLE);
        Ledger ledger = new Ledger(prices.rules);
        for (Priced priced : priced(places, levels)) {
            Candidate at = ground.place(priced.place());
            ledger.add(priced.rule(), priced.cost(), at.pass(), at.place());
        }
        for (int i = 1; i + 1 < places.size(); i++) {
            Candidate at = ground.place(places.get(i));
            if (at.facts().heldNote()) ledger.concede(inLattice(GiveWay.TURN_IN_HELD_NOTE, at));
            if (at.facts().heldChord()) ledger.concede(inLattice(GiveWay.TURN_UNDER_SUSTAINED_CHORD, at));
        }
        return new BellowsPlan(strokes, factor, uncertain, proven, gap, ledger.costs(), ledger.concessions());
    }

    /** What no rule bans but the lattice itself holds back. */
    private static Concession inLattice(GiveWay what, Candidate at) {
        return new Concession(what, RuleSet.BELLOWS_POLICY.id(), at.pass(), at.place());
    }

    /** Air in the bellows where each stroke begins, and at last at the end. */
    int[] levels(List<Integer> places, int start) {
        int[] levels = new int[places.size()];
        levels[0] = start;
        for (int i = 0; i + 1 < levels.length; i++) {
            int air = ground.air.between(places.get(i), places.get(i + 1));
            levels[i + 1] = direction(i) == Direction.OUT ? levels[i] + air : levels[i] - air;
        }
        return levels;
    }

    /** The first stroke goes out. */
    static Direction direction(int stroke) {
        return stroke % 2 == 0 ? Direction.OUT : Direction.IN;
    }

    private BellowsPlan.Stroke stroke(int index, List<Integer> places, int[] levels) {
        Candidate from = ground.place(places.get(index));
        Candidate to = ground.place(places.get(index + 1));
        int air = Math.abs(levels[index + 1] - levels[index]);
        boolean out = direction(index) == Direction.OUT;
        int room = out ? ground.full() - levels[index] : levels[index];
        int uncertain = ground.bellows().measured() ? air : (int) ((long) air * UNCERTAIN_PER_MILLE / 1_000);
        return new BellowsPlan.Stroke(
                index,
                from.pass(),
                from.measure(),
                from.place(),
                from.onset(),
                to.onset().minus(from.onset()),
                from.micros(),
                to.micros(),
                direction(index),
                levels[index],
                levels[index + 1],
                room - air,
                room - uncertain,
                slowestTempo(air, room),
                index == 0 ? "" : words(from.facts()));
    }

    /** Counted air grows as the tempo falls: the least tempo at which air × tempo / slowest is within the room. */
    private int slowestTempo(int air, int room) {
        if (air == 0) return 1;
        long tempo = ground.performance.settings().tempo().milliBeatsPerMinute();
        if (room == 0) return Integer.MAX_VALUE;
        return (int) Math.min(Integer.MAX_VALUE, Math.max(1, (air * tempo + room - 1) / room));
    }

    private int planFactor(int[] levels) {
        long factor = LARGEST_FACTOR;
        for (int level : levels) {
            int change = level - levels[0];
            if (change > 0) factor = Math.min(factor, (ground.full() - levels[0]) * 1_000L / change);
            if (change < 0) factor = Math.min(factor, levels[0] * 1_000L / -change);
        }
        return (int) factor;
    }

    private static String words(TurnPlace place) {
        List<String> words = new ArrayList<>();
        switch (place.mark()) {
            case PASS -> words.add("next time through");
            case SECTION -> words.add("section");
            case PHRASE -> words.add("phrase mark");
            case BREATH -> words.add("breath");
            case STOP -> words.add("end of a sentence");
            case COMMA -> words.add("comma in the words");
            case NONE -> {}
        }
        if (place.turnsInRest()) words.add("rest of " + place.restMillis() + " ms");
        switch (place.pickup()) {
            case BEFORE -> words.add("before the pickup");
            case AFTER -> words.add("barline after a pickup");
            case NONE ->
                words.add(place.strength().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        if (place.measureOfSection() > 0) words.add("after " + place.measureOfSection() + " measures of the section");
        if (place.slurred()) words.add("inside a slur");
        if (place.heldNote()) words.add("inside a held note");
        if (place.heldChord()) words.add("under a held chord");
        if (place.jump() != TurnPlace.Jump.NONE)
            words.add(place.jump().name().toLowerCase(Locale.ROOT) + " jump of the left hand");
        return String.join(", ", words);
    }

    /** One call of a rule: where, for what, with its reasons on demand. */
    private record Priced(Rule<?> rule, int place, long cost, Reasons reasons) {}

    private interface Ask {
        <S extends Step> Priced of(Rule<S> rule, S step, int place);
    }

    /** Kept costs of every call that this plan needs, rule by rule. */
    private List<Priced> priced(List<Integer> places, int[] levels) {
        return calls(places, levels, new Ask() {
            @Override
            public <S extends Step> Priced of(Rule<S> rule, S step, int place) {
                return new Priced(rule, place, prices.kept(rule, step, place), Reasons.NOTHING);
            }
        });
    }

    /** The same calls with reasons: the rules are asked anew. */
    private List<Priced> explained(List<Integer> places, int[] levels) {
        return calls(places, levels, new Ask() {
            @Override
            public <S extends Step> Priced of(Rule<S> rule, S step, int place) {
                Reasons reasons = rule.explain(step);
                return new Priced(rule, place, reasons.cost(), reasons);
            }
        });
    }

    private List<Priced> calls(List<Integer> places, int[] levels, Ask ask) {
        int strokes = places.size() - 1;
        List<Priced> all = new ArrayList<>();
        for (Rule<TurnPlace> rule : prices.turnRules)
            for (int i = 1; i < strokes; i++)
                all.add(ask.of(rule, ground.place(places.get(i)).facts(), places.get(i)));
        for (Rule<Stroke> rule : prices.strokeRules)
            for (int i = 0; i < strokes; i++)
                all.add(ask.of(rule, ground.stroke(places.get(i), places.get(i + 1)), places.get(i)));
        for (Rule<StrokePair> rule : prices.pairRules)
            for (int i = 1; i < strokes; i++)
                all.add(ask.of(
                        rule,
                        new StrokePair(
                                ground.stroke(places.get(i - 1), places.get(i)),
                                ground.stroke(places.get(i), places.get(i + 1))),
                        places.get(i)));
        for (Rule<OpeningCell> rule : prices.openingRules)
            for (int i = 0; i <= strokes; i++)
                all.add(ask.of(rule, new OpeningCell(ground.cell(levels[i]), moment(i, strokes)), places.get(i)));
        return all;
    }

    private static Moment moment(int i, int strokes) {
        if (i == 0) return Moment.START;
        if (i == strokes) return Moment.END;
        return direction(i - 1) == Direction.OUT ? Moment.TURN_IN : Moment.TURN_OUT;
    }

    /** Rule by rule in the order of the book, each with its places; a ban that gave way costs nothing and has facts. */
    Explanation explain(List<Integer> places, int start, Taste taste) {
        List<Priced> all = explained(places, levels(places, start));
        List<Explanation> children = new ArrayList<>();
        for (Rule<?> rule : prices.rules) {
            String id = rule.info().id();
            List<Explanation> leaves = new ArrayList<>();
            for (Priced priced : all) {
                if (priced.rule() != rule || priced.cost() == 0 || taste.perMille(id) == 0) continue;
                long cost = priced.cost() == Rule.BAN ? 0 : Math.multiplyExact(priced.cost(), taste.perMille(id));
                leaves.add(Explanation.leaf(
                        "place", words(priced.place()), cost, priced.reasons().facts()));
            }
            children.add(leaves.isEmpty() ? Explanation.leaf(id, "", 0, List.of()) : Explanation.sumOf(id, leaves));
        }
        return Explanation.sumOf(RuleSet.BELLOWS_POLICY.id(), children);
    }

    private String words(int place) {
        return prices.words(place);
    }
}
