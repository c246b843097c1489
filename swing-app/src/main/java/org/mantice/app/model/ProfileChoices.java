package org.mantice.app.model;

import java.util.List;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;

/**
 * The accordions and players to pick from. Asked anew whenever they are about to be shown, on the thread of the views: what
 * is in files is to be read beforehand.
 */
public interface ProfileChoices {
    /** The presets alone. */
    ProfileChoices PRESETS = new ProfileChoices() {
        @Override
        public List<Accordion> accordions() {
            return AccordionPresets.all();
        }

        @Override
        public List<Player> players() {
            return PlayerPresets.all();
        }
    };

    List<Accordion> accordions();

    List<Player> players();

    /** Has the lists looked through again in the background: they are about to be chosen from. */
    default void lookAgain() {}
}
