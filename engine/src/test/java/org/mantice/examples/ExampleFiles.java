package org.mantice.examples;

import java.nio.file.Path;

/** Where the shipped examples are. */
public final class ExampleFiles {
    private ExampleFiles() {}

    /** A folder of the examples: tunes, accordions, players or plans. */
    public static Path folder(String name) {
        return Path.of(System.getProperty("mantice.root", ".."), "examples", name);
    }
}
