package org.mantice.app.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/** The example files that come with the app, whether its classes lie in a folder or in a jar. */
final class ShippedFiles {
    private ShippedFiles() {}

    /**
     * Reads all files of a folder, in the order of their names.
     *
     * @param folder as {@code "examples/players"}
     */
    static <T> List<T> readAll(String folder, Function<Path, T> read) {
        URL known = ShippedFiles.class.getResource("/" + TuneContent.EXAMPLE);
        if (known == null) throw new IllegalStateException("the shipped examples are missing");
        try {
            URI place = known.toURI();
            if (!place.getScheme().equals("jar"))
                return readAll(
                        Objects.requireNonNull(Path.of(place).getParent())
                                .resolveSibling(Path.of(folder).getFileName()),
                        read);
            String jar = place.getRawSchemeSpecificPart();
            try (FileSystem inside = FileSystems.newFileSystem(
                    Path.of(URI.create(jar.substring(0, jar.indexOf("!/")))), (ClassLoader) null)) {
                return readAll(inside.getPath("/" + folder), read);
            }
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the place of the shipped examples is no address", e);
        } catch (IOException e) {
            throw new UncheckedIOException("the shipped examples cannot be read", e);
        }
    }

    private static <T> List<T> readAll(Path folder, Function<Path, T> read) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().map(read).toList();
        }
    }
}
