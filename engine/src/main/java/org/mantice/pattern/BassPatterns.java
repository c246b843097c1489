package org.mantice.pattern;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.mantice.fault.FilePlace;
import org.mantice.json.JsonFile;

/** The patterns that come with the program, in the order in which they are thought of. Read once. */
public final class BassPatterns {
    private static final String RESOURCE = "shipped.patterns.json";
    private static final List<BassPattern> SHIPPED = read();

    private BassPatterns() {}

    public static List<BassPattern> shipped() {
        return SHIPPED;
    }

    private static List<BassPattern> read() {
        try (InputStream in = Objects.requireNonNull(BassPatterns.class.getResourceAsStream(RESOURCE), RESOURCE)) {
            JsonFile file = JsonFile.parse(in.readAllBytes(), FilePlace.of(RESOURCE), PatternJson.MOST_BYTES);
            return PatternJson.patterns(file.fields(PatternJson.FORMAT, PatternJson.MAJOR));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
