package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.mantice.Planning;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.layer.Choice;
import org.mantice.layer.Question;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;

/**
 * Finds what there is to say of one spot of a plan.
 *
 * @param kept the locks that the plan was made under: other choices keep them too
 * @param locks those that the player has set by now
 */
record InsightFinder(Selection selection, Plan plan, Taste taste, List<Lock> kept, List<Lock> locks) {
    /** Asks the planning; slow. */
    Insight find(Planning planning, BooleanSupplier cancelled) {
        Spot spot = selection.spot();
        Performance performance = planning.performance();
        List<Choice> choices = planning
                .choicesAt(
                        plan,
                        layer(spot.strip()),
                        new Question(taste, others(), 1, cancelled),
                        spot.pass(),
                        spot.place())
                .stream()
                .filter(choice -> fits(choice.decision(), spot))
                .toList();
        return new Insight(
                selection,
                here(plan, performance, spot),
                at(planning.explain(plan, taste), performance, spot),
                choices,
                Locks.at(locks, spot));
    }

    /** A lock on this very place would leave one choice: what else was possible is asked without it. */
    private List<Lock> others() {
        List<Lock> here = Locks.at(kept, selection.spot());
        return kept.stream().filter(lock -> !here.contains(lock)).toList();
    }

    static RuleSet layer(Strip strip) {
        return switch (strip) {
            case FINGERS -> RuleSet.FINGERING_SPAN;
            case REGISTERS -> RuleSet.REPEAT_VARIATION;
            case BELLOWS -> RuleSet.BELLOWS_POLICY;
            case BUTTONS -> RuleSet.JUMP_COST;
        };
    }

    /** A hand place follows from its fingers and is no choice of its own. */
    private static boolean fits(Decision decision, Spot spot) {
        return decision.kind() != Decision.Kind.HAND_PLACE
                && Site.strip(decision.kind()) == spot.strip()
                && decision.part() == spot.part();
    }

    static List<Decision> here(Plan plan, Performance performance, Spot spot) {
        return Site.of(plan, performance).stream()
                .filter(site -> isAt(site, performance, spot))
                .map(Site::decision)
                .toList();
    }

    /** The hand place is that of the whole chord; grace notes are not their note. */
    private static boolean isAt(Site site, Performance performance, Spot spot) {
        Spot own = site.spot();
        if (own.strip() != spot.strip()
                || own.measure() != spot.measure()
                || !own.place().equals(spot.place())) return false;
        if (own.strip() != Strip.FINGERS) return true;
        if (performance.treble().get(site.moment()).graceIndex() != 0) return false;
        return site.decision().kind() == Decision.Kind.HAND_PLACE || own.part() == spot.part();
    }

    private static Explanation at(Explanation tree, Performance performance, Spot spot) {
        String words = spot.strip() == Strip.REGISTERS
                ? "pass " + spot.pass()
                : Places.words(performance, performance.measures().get(spot.measure()), spot.place());
        List<Explanation> layers = tree.children().stream()
                .filter(layer -> layer.key().equals(layer(spot.strip()).id()))
                .map(layer -> part(layer, words::equals))
                .toList();
        return Explanation.sumOf(tree.key(), layers);
    }

    private static Explanation part(Explanation node, Predicate<String> place) {
        List<Explanation> kept = new ArrayList<>();
        for (Explanation child : node.children())
            if (!child.place().isEmpty()) {
                if (place.test(child.place())) kept.add(child);
            } else {
                Explanation below = part(child, place);
                if (!below.children().isEmpty()) kept.add(below);
            }
        return Explanation.sumOf(node.key(), kept);
    }
}
