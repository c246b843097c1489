package org.mantice.app.model;

import java.util.List;
import org.mantice.editing.TuneEdit;
import org.mantice.instrument.Accordion;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.player.Taste;

/**
 * What a planning rests on besides the tune as its file has it; what undo brings back.
 *
 * @param player with the weights of the rules
 * @param locks decisions that every plan keeps
 * @param edits of the tune, in the order in which they were made
 */
public record Setup(Accordion accordion, Player player, Wishes wishes, List<Lock> locks, List<TuneEdit> edits) {
    public Setup {
        locks = List.copyOf(locks);
        edits = List.copyOf(edits);
    }

    /** For a tune as its file has it. */
    public Setup(Accordion accordion, Player player, Wishes wishes, List<Lock> locks) {
        this(accordion, player, wishes, locks, List.of());
    }

    Setup withAccordion(Accordion other) {
        return new Setup(other, player, wishes, locks, edits);
    }

    Setup withPlayer(Player other) {
        return new Setup(accordion, other, wishes, locks, edits);
    }

    Setup withWishes(Wishes other) {
        return new Setup(accordion, player, other, locks, edits);
    }

    Setup withLocks(List<Lock> other) {
        return new Setup(accordion, player, wishes, other, edits);
    }

    Setup withEdits(List<TuneEdit> other) {
        return new Setup(accordion, player, wishes, locks, other);
    }

    /** The same player with other weights. */
    Setup withTaste(Taste taste) {
        return withPlayer(new Player(
                player.id(),
                player.name(),
                player.handSpanTenths(),
                player.bassMethod(),
                player.jumps(),
                player.mayTurnInHeldNote(),
                taste));
    }
}
