package org.mantice.app.model;

import java.util.Set;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Settings;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.tune.Tune;

/**
 * What a planning is prepared for; everything else is a question to it. The hand alone of the player counts here.
 *
 * @param leftOut ids of rules not in force
 */
record Basis(Tune tune, Accordion accordion, Player hand, Settings settings, Set<String> leftOut) {
    Basis {
        leftOut = Set.copyOf(leftOut);
    }

    /**
     * @throws IllegalArgumentException if a wish is out of range
     * @throws org.mantice.performance.TuneException if the tune is too long to be unrolled
     */
    static Basis of(Tune tune, Setup setup, Set<String> leftOut) {
        Player player = setup.player();
        Player hand = new Player(
                "hand",
                "hand",
                player.handSpanTenths(),
                player.bassMethod(),
                player.jumps(),
                player.mayTurnInHeldNote(),
                Taste.PLAIN);
        return new Basis(tune, setup.accordion(), hand, setup.wishes().settings(tune), leftOut);
    }
}
