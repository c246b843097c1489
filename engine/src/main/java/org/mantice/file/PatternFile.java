package org.mantice.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.mantice.fault.FilePlace;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.PatternJson;

/**
 * Patterns of the left hand ({@code *.patterns.json}), described by the JSON Schema
 * {@code org/mantice/schema/patterns.schema.json}. Fields that this version does not know are kept when a file is written
 * again; a newer major version is refused.
 */
public final class PatternFile {
    public static final String FORMAT = PatternJson.FORMAT;
    public static final String SUFFIX = ".patterns.json";
    private static final int MINOR = 1;

    private final List<BassPattern> patterns;
    private final Optional<Fields> source;

    private PatternFile(List<BassPattern> patterns, Optional<Fields> source) {
        this.patterns = List.copyOf(patterns);
        this.source = source;
    }

    /** A new file. */
    public static PatternFile of(List<BassPattern> patterns) {
        return new PatternFile(patterns, Optional.empty());
    }

    /** @throws org.mantice.json.JsonFileException if the file holds no patterns that this version can read */
    public static PatternFile read(Path file) {
        return of(JsonFile.read(file, PatternJson.MOST_BYTES));
    }

    /** Reads bytes that came from the place. */
    static PatternFile parse(byte[] bytes, FilePlace place) {
        return of(JsonFile.parse(bytes, place, PatternJson.MOST_BYTES));
    }

    private static PatternFile of(JsonFile file) {
        Fields fields = file.fields(FORMAT, PatternJson.MAJOR);
        return new PatternFile(PatternJson.patterns(fields), Optional.of(fields));
    }

    /** All with different ids. */
    public List<BassPattern> patterns() {
        return patterns;
    }

    /** The same file with other patterns; fields that this version does not know are kept. */
    public PatternFile with(List<BassPattern> changed) {
        return new PatternFile(changed, source);
    }

    /** As text in UTF-8, indented, ending in a line feed. */
    public byte[] bytes() {
        ObjectNode tree = JsonFile.object();
        tree.set("patterns", PatternJson.tree(patterns));
        return JsonFile.bytes(ProfileFormat.file(FORMAT, MINOR, tree, source));
    }

    /** @throws FileWriteException if it cannot be written; what was there before is then unchanged */
    public void write(Path file) {
        AtomicFile.write(file, bytes());
    }
}
