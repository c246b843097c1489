package org.mantice.app.window;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.mantice.instrument.Accordion;
import org.mantice.player.Player;
import org.mantice.plugin.Packs;

/**
 * How the window was asked to start; what is empty is as last time.
 *
 * @param file tune or plan; empty for the shipped example
 */
public record WindowStart(
        Optional<Path> file,
        Optional<Accordion> accordion,
        Optional<Player> player,
        Packs packs,
        Optional<Locale> language,
        Optional<Boolean> dark) {}
