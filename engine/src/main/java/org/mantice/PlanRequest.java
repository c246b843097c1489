package org.mantice;

import java.util.List;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Settings;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.tune.Tune;

/**
 * What is to be planned.
 *
 * @param tune as written; {@code settings} transposes it
 * @param locks decisions that every plan keeps
 * @param alternatives how many whole plans, 1 to 12; fewer are given where no more are worth showing
 */
public record PlanRequest(
        Tune tune, Accordion accordion, Player player, Settings settings, List<Lock> locks, int alternatives) {
    public PlanRequest {
        locks = List.copyOf(locks);
        if (alternatives < 1 || alternatives > 12)
            throw new IllegalArgumentException("alternatives is " + alternatives + "; allowed: 1 to 12");
    }
}
