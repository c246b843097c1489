package org.mantice.app.work;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The small JSON files that the app writes for itself: one object with format and version, limited in size and depth.
 * Of a field that cannot be used nothing is taken; fields unknown to this version stay in the tree.
 */
final class SmallJson {
    static final int MOST_BYTES = 1_000_000;
    private static final int MOST_DEPTH = 32;
    private static final int MAJOR = 0;
    private static final String VERSION = "0.1";

    /** A newer major version of this program wrote the file: it is neither read nor written over. */
    static final class NewerVersion extends IOException {
        NewerVersion(String version) {
            super("version is " + version + "; allowed: " + MAJOR + ".0 to " + MAJOR + ".*");
        }
    }

    /** Made when there is a file to read or write: a start where nothing is remembered need not wait for it. */
    private static final class Mapper {
        static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                        .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                        .streamReadConstraints(StreamReadConstraints.builder()
                                .maxNestingDepth(MOST_DEPTH)
                                .build())
                        .build())
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                .build();
    }

    private SmallJson() {}

    static JsonMapper mapper() {
        return Mapper.MAPPER;
    }

    static ObjectNode fresh(String format) {
        return mapper().createObjectNode().put("format", format).put("version", VERSION);
    }

    /**
     * @throws NewerVersion if a newer major version wrote it
     * @throws IOException if it cannot be read, is too large, damaged, or of another format
     */
    static ObjectNode read(Path file, String format) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) throw new IOException("the file has more than " + MOST_BYTES + " bytes");
        JsonNode tree = mapper().readTree(bytes);
        if (!(tree instanceof ObjectNode object)) throw new IOException("the file does not hold a JSON object");
        if (!object.path("format").asText().equals(format))
            throw new IOException("format is " + object.path("format") + "; allowed: \"" + format + "\"");
        String version = object.path("version").asText();
        if (!version.matches("\\d{1,4}\\.\\d{1,4}"))
            throw new IOException("version is " + object.path("version") + "; allowed: as \"" + VERSION + "\"");
        if (Integer.parseInt(version.substring(0, version.indexOf('.'))) > MAJOR) throw new NewerVersion(version);
        return object;
    }

    /** Indented by two, lines ended by a line feed alone, in UTF-8. */
    static byte[] bytes(ObjectNode tree) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try {
            return (mapper().writer(new DefaultPrettyPrinter()
                                            .withObjectIndenter(indenter)
                                            .withArrayIndenter(indenter))
                                    .writeValueAsString(tree)
                            + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("a tree of JSON can be written", e);
        }
    }

    static Optional<String> text(JsonNode value) {
        return Optional.of(value).filter(JsonNode::isTextual).map(JsonNode::textValue);
    }

    static OptionalInt number(JsonNode value) {
        return value.isIntegralNumber() && value.canConvertToInt()
                ? OptionalInt.of(value.intValue())
                : OptionalInt.empty();
    }

    static Optional<Boolean> flag(JsonNode value) {
        return Optional.of(value).filter(JsonNode::isBoolean).map(JsonNode::booleanValue);
    }

    /** A path that this system can name; others stay in the file unread. */
    static Optional<Path> path(JsonNode value) {
        return text(value).filter(path -> !path.isBlank()).flatMap(path -> {
            try {
                return Optional.of(Path.of(path));
            } catch (InvalidPathException e) {
                return Optional.empty();
            }
        });
    }
}
