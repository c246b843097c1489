package org.mantice.plugins.firstyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.rule.RuleProvider;

class FirstYearJarTest {
    @TempDir
    Path folder;

    @Test
    void anEngineThatKnowsNothingOfThePackFindsItInAFolder() throws Exception {
        jar(Path.of(FirstYearPack.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI()));

        try (URLClassLoader engine = engineAlone()) {
            Class<?> packs = engine.loadClass("org.mantice.plugin.Packs");
            Object found = packs.getMethod("of", Optional.class).invoke(null, Optional.of(folder));

            assertThat((List<?>) packs.getMethod("problems").invoke(found)).isEmpty();
            assertThat((List<?>) packs.getMethod("packs").invoke(found))
                    .map(Object::toString)
                    .filteredOn(text -> text.contains("FirstYearPack"))
                    .singleElement()
                    .asString()
                    .contains("origin=first-year.jar");
        }
    }

    /** The engine's classes and the JDK, so that the pack can come out of the jar alone. */
    private static URLClassLoader engineAlone() throws URISyntaxException {
        URL engine = RuleProvider.class.getProtectionDomain().getCodeSource().getLocation();
        return new URLClassLoader(new URL[] {engine}, ClassLoader.getPlatformClassLoader());
    }

    private void jar(Path classes) throws IOException {
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(folder.resolve("first-year.jar")));
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                jar.putNextEntry(
                        new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
                jar.write(Files.readAllBytes(file));
            }
        }
    }
}
