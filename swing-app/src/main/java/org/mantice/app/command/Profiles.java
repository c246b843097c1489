package org.mantice.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import org.mantice.file.AccordionFile;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;

/** Finds a profile by the name of a preset or by its file. */
final class Profiles {
    private Profiles() {}

    static Accordion accordion(String presetOrFile) {
        return AccordionPresets.find(presetOrFile).orElseGet(() -> {
            Path file = Path.of(presetOrFile);
            if (Files.exists(file)) return AccordionFile.read(file).accordion();
            return AccordionPresets.get(presetOrFile);
        });
    }

    static Player player(String presetOrFile) {
        return PlayerPresets.find(presetOrFile).orElseGet(() -> {
            Path file = Path.of(presetOrFile);
            if (Files.exists(file)) return PlayerFile.read(file).player();
            return PlayerPresets.get(presetOrFile);
        });
    }
}
