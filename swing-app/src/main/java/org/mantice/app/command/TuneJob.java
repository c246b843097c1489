package org.mantice.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.fault.ManticeException;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneEntry;
import org.mantice.reading.TuneReader;

/**
 * One tune to work on: a file, or one tune of a book.
 *
 * @param entry what {@link ReadOptions#withTune} calls it; empty for the only tune of its file
 * @param name for messages: the file, with the tune's number and title where the file holds several
 * @param output for files that are made of it: without folders and ending, unlike that of any other job
 */
record TuneJob(Path file, Optional<String> entry, String name, String output) {
    static final String ALL = "all";
    static final String HELP = "the tune of a book: its number, its title, # and its place, or all (all)";

    private record Found(Path file, Optional<TuneEntry> entry, int of) {}

    /**
     * @param tune the tunes wanted of every file, as {@link ReadOptions#withTune} calls them, or {@link #ALL}
     * @throws IllegalArgumentException if it is blank
     */
    static List<TuneJob> of(List<Path> files, String tune) {
        if (tune.isBlank())
            throw new IllegalArgumentException("tune is blank; allowed: a number, a title, # and a place, or all");
        List<Found> found = new ArrayList<>();
        for (Path file : files) {
            List<TuneEntry> entries = entries(file);
            if (entries.size() < 2 || !tune.equals(ALL)) found.add(new Found(file, Optional.empty(), entries.size()));
            else for (TuneEntry entry : entries) found.add(new Found(file, Optional.of(entry), entries.size()));
        }
        Map<String, TuneJob> byOutput = new LinkedHashMap<>();
        for (Found each : found) {
            String base = base(each);
            String output = base;
            for (int copy = 2; byOutput.containsKey(output); copy++) output = base + "-" + copy;
            byOutput.put(output, job(each, tune, output));
        }
        return List.copyOf(byOutput.values());
    }

    private static TuneJob job(Found found, String tune, String output) {
        String name =
                found.file + found.entry.map(entry -> ", " + entry.label()).orElse("");
        boolean picked = !tune.equals(ALL) && found.of > 1;
        Optional<String> entry =
                found.entry.map(TuneEntry::handle).or(() -> picked ? Optional.of(tune) : Optional.empty());
        return new TuneJob(found.file, entry, name, output);
    }

    /** Without folders and ending; of a book with the place of the tune, as wide as the last one's. */
    private static String base(Found found) {
        String base = found.file.getFileName().toString().replaceFirst("\\.[A-Za-z0-9]{1,9}$", "");
        if (found.entry.isEmpty()) return base;
        String place = String.valueOf(found.entry.get().place());
        return base + "-" + "0".repeat(String.valueOf(found.of).length() - place.length()) + place;
    }

    /** None for a file that cannot be read or is no tune; the reason comes up when it is worked on. */
    static List<TuneEntry> entries(Path file) {
        try {
            return new TuneReader().list(file.toString(), PlanCommand.bytes(file));
        } catch (ManticeException | IllegalArgumentException | IOException e) {
            return List.of();
        }
    }

    /** The options with this tune chosen. */
    ReadOptions reading(Optional<String> part) {
        ReadOptions options =
                part.filter(name -> !name.isBlank()).map(ReadOptions::ofPart).orElse(ReadOptions.DEFAULT);
        return entry.map(options::withTune).orElse(options);
    }
}
