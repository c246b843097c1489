package org.mantice.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.fault.ManticeException;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneBook;
import org.mantice.reading.TuneEntry;
import org.mantice.reading.TuneReader;

/**
 * One tune to work on: a file, or one tune of a book.
 *
 * @param book the tunes of the file, where it holds several: divided once for all jobs
 * @param entry what {@link ReadOptions#withTune} calls it; empty for the only tune of its file
 * @param name for messages: the file, with the tune's number and title where the file holds several
 * @param output for files that are made of it: without folders and ending, unlike that of any other job
 */
record TuneJob(Path file, Optional<TuneBook> book, Optional<String> entry, String name, String output) {
    static final String ALL = "all";
    static final String HELP = "the tune of a book: its number, its title, # and its place, or all (all)";

    private record Found(Path file, Optional<TuneBook> book, Optional<TuneEntry> entry) {
        int of() {
            return book.map(tunes -> tunes.entries().size()).orElse(1);
        }
    }

    /**
     * @param tune the tunes wanted of every file, as {@link ReadOptions#withTune} calls them, or {@link #ALL}
     * @throws IllegalArgumentException if it is blank
     */
    static List<TuneJob> of(List<Path> files, String tune) {
        if (tune.isBlank())
            throw new IllegalArgumentException("tune is blank; allowed: a number, a title, # and a place, or all");
        List<Found> found = new ArrayList<>();
        for (Path file : files) {
            Optional<TuneBook> book = book(file);
            if (book.isEmpty() || !tune.equals(ALL)) found.add(new Found(file, book, Optional.empty()));
            else for (TuneEntry entry : book.get().entries()) found.add(new Found(file, book, Optional.of(entry)));
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
        boolean picked = !tune.equals(ALL) && found.of() > 1;
        Optional<String> entry =
                found.entry.map(TuneEntry::handle).or(() -> picked ? Optional.of(tune) : Optional.empty());
        return new TuneJob(found.file, found.book, entry, name, output);
    }

    /** Without folders and ending; of a book with the place of the tune, as wide as the last one's. */
    private static String base(Found found) {
        String base = found.file.getFileName().toString().replaceFirst("\\.[A-Za-z0-9]{1,9}$", "");
        if (found.entry.isEmpty()) return base;
        String place = String.valueOf(found.entry.get().place());
        return base + "-" + "0".repeat(String.valueOf(found.of()).length() - place.length()) + place;
    }

    /** Empty for a file of one tune, and for one that cannot be read: the reason comes up when it is worked on. */
    private static Optional<TuneBook> book(Path file) {
        try {
            return Optional.of(open(file)).filter(book -> book.entries().size() > 1);
        } catch (ManticeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static TuneBook open(Path file) {
        if (!Files.exists(file)) throw new IllegalArgumentException("there is no such file");
        if (!Files.isRegularFile(file)) throw new IllegalArgumentException("is not a file");
        return new TuneReader().open(file);
    }

    /** @throws org.mantice.reading.TuneReadException if it cannot be read */
    ReadTune read(ReadOptions options) {
        TuneBook tunes = book.orElseGet(() -> open(file));
        return tunes.read(entry.map(options::withTune).orElse(options));
    }
}
