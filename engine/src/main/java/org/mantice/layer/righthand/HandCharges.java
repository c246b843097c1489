package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.mantice.layer.Ledger;
import org.mantice.layer.Pricing;
import org.mantice.layer.RuleBook;
import org.mantice.plan.Explanation;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Taste;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandMove;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;
import org.mantice.search.Path;

/** Makes plans, from kept numbers or by asking the rules about one fingering, and gives their reasons. */
final class HandCharges {
    private final HandMusic music;
    private final int handSpanTenths;
    private final RuleBook book;

    HandCharges(HandMusic music, int handSpanTenths, RuleBook book) {
        this.music = music;
        this.handSpanTenths = handSpanTenths;
        this.book = book;
    }

    /** The plan of these postures, priced by the rules. */
    RightHandPlan priced(List<Posture> postures) {
        Steps steps = new Steps(postures);
        Ledger ledger = ledger();
        for (Rule<?> rule : book.rules(RuleSet.FINGERING_SPAN))
            steps.each(rule, (index, cost, reasons) -> add(ledger, rule, index, cost));
        return plan(steps, ledger);
    }

    /** The plan of a path, priced from the lattice's kept numbers. */
    RightHandPlan kept(HandLattice lattice, Path path) {
        List<Posture> postures = new ArrayList<>();
        for (int stage = 0; stage < lattice.stages(); stage++) postures.add(lattice.posture(stage, path.state(stage)));
        Ledger ledger = ledger();
        lattice.charges(path, (rule, stage, cost) -> add(ledger, rule, stage, cost));
        return plan(new Steps(postures), ledger);
    }

    private Ledger ledger() {
        return new Ledger(book.rules(RuleSet.FINGERING_SPAN));
    }

    private void add(Ledger ledger, Rule<?> rule, int index, long cost) {
        ledger.add(rule, cost, music.pass(index), music.played(index).place());
    }

    private static RightHandPlan plan(Steps steps, Ledger ledger) {
        return new RightHandPlan(steps.events(), ledger.costs(), ledger.concessions());
    }

    Explanation explain(List<Posture> postures, Taste taste) {
        Steps steps = new Steps(postures);
        List<Explanation> rules = new ArrayList<>();
        for (Rule<?> rule : book.rules(RuleSet.FINGERING_SPAN)) {
            long perMille = taste.perMille(rule.info().id());
            List<Explanation> places = new ArrayList<>();
            if (perMille > 0)
                steps.each(rule, (index, cost, reasons) -> {
                    if (cost == 0) return;
                    long weighted = cost == Rule.BAN ? 0 : Math.multiplyExact(cost, perMille);
                    places.add(Explanation.leaf(
                            "place", music.words(index), weighted, reasons.get().facts()));
                });
            rules.add(Explanation.sumOf(rule.info().id(), places));
        }
        return Explanation.sumOf(RuleSet.FINGERING_SPAN.id(), rules);
    }

    /** What a rule charged for the step that ends at a moment. */
    private interface Charge {
        void take(int index, long cost, Supplier<Reasons> reasons);
    }

    /** The steps of one fingering. */
    private final class Steps {
        private final List<Posture> postures;
        private final List<FingerMoment> moments = new ArrayList<>();
        private final List<FingerPair> pairs = new ArrayList<>();
        private final List<FingerTriple> triples = new ArrayList<>();

        Steps(List<Posture> postures) {
            this.postures = postures;
            for (int index = 0; index < postures.size(); index++) {
                Posture posture = postures.get(index);
                moments.add(MomentTable.step(music.moment(index), posture.fingers(), posture.place(), handSpanTenths));
                if (index > 0)
                    pairs.add(
                            HandMoves.step(music.junctionAfter(index - 1), moments.get(index - 1), moments.get(index)));
                if (index > 1) triples.add(new FingerTriple(pairs.get(index - 2), pairs.get(index - 1)));
            }
        }

        @SuppressWarnings("unchecked")
        void each(Rule<?> rule, Charge charge) {
            if (rule.reach() == FingerMoment.class) each((Rule<FingerMoment>) rule, moments, 0, charge);
            else if (rule.reach() == FingerPair.class) each((Rule<FingerPair>) rule, pairs, 1, charge);
            else each((Rule<FingerTriple>) rule, triples, 2, charge);
        }

        private <S extends Step> void each(Rule<S> rule, List<S> steps, int first, Charge charge) {
            for (int at = 0; at < steps.size(); at++) {
                S step = steps.get(at);
                String words = music.words(at + first);
                charge.take(at + first, Pricing.cost(rule, step, words), () -> Pricing.reasons(rule, step, words));
            }
        }

        List<RightHandPlan.Event> events() {
            List<RightHandPlan.Event> events = new ArrayList<>();
            for (int index = 0; index < postures.size(); index++)
                events.add(new RightHandPlan.Event(
                        index,
                        music.pass(index),
                        music.played(index).place(),
                        music.moment(index).keys(),
                        postures.get(index).fingers(),
                        postures.get(index).place(),
                        index == 0 ? HandMove.STAY : pairs.get(index - 1).move()));
            return events;
        }
    }
}
