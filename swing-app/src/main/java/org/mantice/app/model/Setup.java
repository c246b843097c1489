package org.mantice.app.model;

import java.util.List;
import org.mantice.instrument.Accordion;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.player.Taste;

/**
 * What a planning rests on besides the tune; what undo brings back.
 *
 * @param player with the weights of the rules
 * @param locks decisions that every plan keeps
 */
public record Setup(Accordion accordion, Player player, Wishes wishes, List<Lock> locks) {
    public Setup {
        locks = List.copyOf(locks);
    }

    /** The same player with other weights. */
    Setup withTaste(Taste taste) {
        Player changed = new Player(
                player.id(),
                player.name(),
                player.handSpanTenths(),
                player.bassMethod(),
                player.jumps(),
                player.mayTurnInHeldNote(),
                taste);
        return new Setup(accordion, changed, wishes, locks);
    }
}
