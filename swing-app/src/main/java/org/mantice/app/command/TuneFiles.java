package org.mantice.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Files as given; a folder stands for the tunes in it and below, by name. */
final class TuneFiles {
    private static final List<String> ENDINGS = List.of(".musicxml", ".xml", ".mxl");

    private TuneFiles() {}

    static List<Path> in(List<Path> given) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path path : given) {
            if (!Files.isDirectory(path)) {
                files.add(path);
                continue;
            }
            try (Stream<Path> below = Files.walk(path)) {
                below.filter(Files::isRegularFile).filter(TuneFiles::looksLikeATune).sorted().forEach(files::add);
            }
        }
        return files;
    }

    private static boolean looksLikeATune(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(name::endsWith);
    }
}
