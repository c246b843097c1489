package org.mantice.rule.righthand.ergonomic1997;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** Every fingering of a short melody, priced by a rule set that looks at fingers only: brute force. */
public final class Fingerings {
    /** A fingering and its points in thousandths. */
    public record Priced(List<Integer> fingers, long cost) {}

    private final List<Integer> keys;
    private final List<Rule<?>> rules;

    public Fingerings(List<Integer> keys, RuleProvider provider) {
        this.keys = keys;
        this.rules = provider.rules();
    }

    /** The fingerings that no rule bans, cheapest first, ties in order of fingers. */
    public List<Priced> feasible() {
        List<Priced> found = new ArrayList<>();
        add(new ArrayList<>(), found);
        found.sort(Comparator.comparingLong(Priced::cost));
        return found;
    }

    private void add(List<Integer> fingers, List<Priced> found) {
        if (fingers.size() == keys.size()) {
            long cost = cost(fingers);
            if (cost != Rule.BAN) found.add(new Priced(List.copyOf(fingers), cost));
            return;
        }
        for (int finger = 1; finger <= 5; finger++) {
            fingers.add(finger);
            if (fingers.size() < 2 || cost(lastTwo(fingers)) != Rule.BAN) add(fingers, found);
            fingers.remove(fingers.size() - 1);
        }
    }

    private FingerPair lastTwo(List<Integer> fingers) {
        return pair(fingers, fingers.size() - 2);
    }

    /** The cost of a fingering, or {@link Rule#BAN}. */
    public long cost(List<Integer> fingers) {
        long total = 0;
        for (int at = 0; at < fingers.size(); at++) {
            long moment = sum(FingerMoment.class, moment(fingers, at));
            long pair = at < 1 ? 0 : cost(pair(fingers, at - 1));
            long triple = at < 2 ? 0 : sum(FingerTriple.class, triple(fingers, at - 2));
            if (moment == Rule.BAN || pair == Rule.BAN || triple == Rule.BAN) return Rule.BAN;
            total += moment + pair + triple;
        }
        return total;
    }

    private long cost(FingerPair pair) {
        return sum(FingerPair.class, pair);
    }

    @SuppressWarnings("unchecked")
    private <S extends org.mantice.rule.Step> long sum(Class<S> reach, S step) {
        long total = 0;
        for (Rule<?> rule : rules) {
            if (rule.reach() != reach) continue;
            long cost = ((Rule<S>) rule).cost(step);
            if (cost == Rule.BAN) return Rule.BAN;
            total += cost;
        }
        return total;
    }

    private FingerMoment moment(List<Integer> fingers, int at) {
        return FingerMoment.struck(List.of(keys.get(at)), List.of(fingers.get(at)), 28, 300, 86);
    }

    private FingerPair pair(List<Integer> fingers, int at) {
        return new FingerPair(moment(fingers, at), moment(fingers, at + 1), HandMove.STAY, 300, 0, false);
    }

    private FingerTriple triple(List<Integer> fingers, int at) {
        return new FingerTriple(pair(fingers, at), pair(fingers, at + 1));
    }
}
