package org.mantice.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** Finds the test corpus; a test that needs it is skipped with a message where it is absent. */
public final class Corpus {
    /** A file with its number in the sorted folder. */
    public record Numbered(int index, Path path) {}

    private Corpus() {}

    public static boolean isWhole() {
        return Boolean.getBoolean("mantice.corpus.all");
    }

    /** A folder of the corpus, for tests of single files. */
    public static Path folder(String name) {
        String root = System.getProperty("mantice.corpus", "");
        Path path = Path.of(root, name);
        Assumptions.assumeTrue(!root.isEmpty() && Files.isDirectory(path), "corpus folder " + path + " is absent");
        return path;
    }

    /**
     * The music files of a folder in sorted order: every tenth, or all with {@code -Dmantice.corpus.all=true}.
     *
     * @param endings names without one of these endings are passed over
     */
    public static List<Numbered> files(String folder, String... endings) {
        Path path = folder(folder);
        List<Numbered> files = new ArrayList<>();
        List<Path> sorted = sorted(path, endings);
        for (int i = 0; i < sorted.size(); i++) if (isWhole() || i % 10 == 0) files.add(new Numbered(i, sorted.get(i)));
        return files;
    }

    private static List<Path> sorted(Path folder, String... endings) {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(path -> Stream.of(endings).anyMatch(path.toString()::endsWith))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
