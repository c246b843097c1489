package org.mantice.layer;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.mantice.plan.Lock;
import org.mantice.player.Taste;

/**
 * What a layer is asked, again and again from the same kept numbers.
 *
 * @param taste weights of the rules
 * @param locks decisions that must hold; those of other layers are ignored
 * @param count how many plans, 1 or more
 * @param cancelled asked now and then; once true, {@link java.util.concurrent.CancellationException} is thrown
 */
public record Question(Taste taste, List<Lock> locks, int count, BooleanSupplier cancelled) {
    public Question {
        locks = List.copyOf(locks);
        if (count < 1) throw new IllegalArgumentException("count is " + count + "; allowed: 1 or more");
    }

    public static Question best(Taste taste) {
        return new Question(taste, List.of(), 1, () -> false);
    }
}
