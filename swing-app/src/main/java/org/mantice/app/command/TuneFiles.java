package org.mantice.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.mantice.file.PlanFile;

/** Files as given; a folder stands for the tunes in it and below, by name. */
final class TuneFiles {
    private static final List<String> ENDINGS = List.of(".musicxml", ".xml", ".mxl", ".abc", ".mid", ".midi", ".rmi");

    private static final List<String> OURS = List.of(PlanFile.SUFFIX, ".accordion.json", ".player.json");

    private static final int LOOK_BYTES = 8_192;

    private TuneFiles() {}

    static List<Path> in(List<Path> given) throws IOException {
        return in(
                given,
                TuneFiles::looksLikeATune,
                "a folder with tunes in it or below (.musicxml, .xml, .mxl, .abc, .mid)");
    }

    /** The same, with the plans and profiles of a folder as well. */
    static List<Path> withOurs(List<Path> given) throws IOException {
        return in(given, file -> looksLikeATune(file) || isOurs(file), "a folder with tunes, plans or profiles");
    }

    private static List<Path> in(List<Path> given, Predicate<Path> wanted, String allowed) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path path : given) {
            if (!Files.isDirectory(path)) {
                files.add(path);
                continue;
            }
            try (Stream<Path> below = Files.walk(path)) {
                List<Path> found = below.filter(Files::isRegularFile)
                        .filter(wanted)
                        .sorted()
                        .toList();
                if (found.isEmpty())
                    throw new IllegalArgumentException("nothing to do in folder \"" + path + "\"; allowed: " + allowed);
                files.addAll(found);
            }
        }
        return files;
    }

    private static boolean isOurs(Path file) {
        String name = file.getFileName().toString();
        return OURS.stream().anyMatch(name::endsWith);
    }

    private static boolean looksLikeATune(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(name::endsWith) && (!name.endsWith(".xml") || holdsAScore(file));
    }

    /** Many files end in .xml: a score names its outermost element early, in any encoding. */
    private static boolean holdsAScore(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            String start = new String(in.readNBytes(LOOK_BYTES), StandardCharsets.ISO_8859_1).replace("\0", "");
            return start.isBlank() || start.contains("score-partwise") || start.contains("score-timewise");
        } catch (IOException e) {
            return true;
        }
    }
}
