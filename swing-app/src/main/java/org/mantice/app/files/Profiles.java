package org.mantice.app.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.mantice.file.AccordionFile;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.RuleBook;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;

/** Finds what a call names: a profile by its preset or file, packs by their folder, the rules of a plan. */
public final class Profiles {
    private Profiles() {}

    /**
     * The preset of this id, else the profile in this file.
     *
     * @throws IllegalArgumentException if it is neither; the presets are named
     * @throws org.mantice.json.JsonFileException if the file is not an accordion that can be read
     */
    public static Accordion accordion(String presetOrFile) {
        return AccordionPresets.find(presetOrFile).orElseGet(() -> {
            Path file = Path.of(presetOrFile);
            if (Files.exists(file)) return AccordionFile.read(file).accordion();
            return AccordionPresets.get(presetOrFile);
        });
    }

    /** @throws IllegalArgumentException if the folder is not one; a jar that cannot be used is listed among the problems */
    public static Packs packs(Optional<Path> folder) {
        folder.filter(path -> !Files.isDirectory(path) || !Files.isReadable(path))
                .ifPresent(path -> {
                    throw new IllegalArgumentException("packs is " + path + "; allowed: a folder that can be read");
                });
        return Packs.of(folder);
    }

    /**
     * The rules that a plan was made with.
     *
     * @throws IllegalArgumentException if one of them is not there
     */
    public static RuleBook rulesOf(PlanDocument plan, Packs packs) {
        RuleBook book = RuleBook.of(packs.providers());
        Set<String> known = book.entries().stream().map(RuleBook.Entry::id).collect(Collectors.toSet());
        Set<String> used = new HashSet<>();
        for (PlanDocument.PackUsed pack : plan.packs())
            for (String rule : pack.rules()) {
                if (!known.contains(rule))
                    throw new IllegalArgumentException("the plan was made with rule " + rule + " of pack " + pack.id()
                            + ", which is not here; allowed: --packs with the folder of " + pack.origin());
                used.add(rule);
            }
        for (RuleBook.Entry entry : book.entries()) if (!used.contains(entry.id())) book = book.without(entry.id());
        return book;
    }

    /**
     * The preset of this id, else the profile in this file.
     *
     * @throws IllegalArgumentException if it is neither; the presets are named
     * @throws org.mantice.json.JsonFileException if the file is not a player that can be read
     */
    public static Player player(String presetOrFile) {
        return PlayerPresets.find(presetOrFile).orElseGet(() -> {
            Path file = Path.of(presetOrFile);
            if (Files.exists(file)) return PlayerFile.read(file).player();
            return PlayerPresets.get(presetOrFile);
        });
    }
}
