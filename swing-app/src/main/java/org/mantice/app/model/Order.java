package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;

/**
 * Plans to be found.
 *
 * @param plans how many
 * @param retouch a plan to be shown changed first, where a change touches only some layers
 * @param touched those layers, in the order in which they are planned
 * @param saved a plan from a file, to be priced anew first and kept among the offers
 */
record Order(
        Basis basis,
        Taste taste,
        List<Lock> locks,
        int plans,
        Optional<Plan> retouch,
        List<RuleSet> touched,
        Optional<Plan> saved) {
    Order {
        locks = List.copyOf(locks);
        touched = List.copyOf(touched);
    }
}
