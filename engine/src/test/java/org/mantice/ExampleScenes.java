package org.mantice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.mantice.examples.ExampleFiles;
import org.mantice.file.AccordionFile;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.Accordion;
import org.mantice.player.Player;

/** The example tunes, and the example accordions each with the player it belongs to. */
final class ExampleScenes {
    record Pair(Accordion accordion, Player player) {}

    private ExampleScenes() {}

    static List<Path> tunes() throws IOException {
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    /** From small to large. */
    static List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (String[] names : new String[][] {
            {"pims-26-key-48-bass", "pim-haldersen"},
            {"runas-34-key-72-bass", "runa-tolbek"},
            {"odas-41-key-120-bass", "oda-wennick"}
        }) {
            Path accordion = ExampleFiles.folder("accordions").resolve(names[0] + AccordionFile.SUFFIX);
            Path player = ExampleFiles.folder("players").resolve(names[1] + PlayerFile.SUFFIX);
            pairs.add(new Pair(
                    AccordionFile.read(accordion).accordion(),
                    PlayerFile.read(player).player()));
        }
        return pairs;
    }
}
