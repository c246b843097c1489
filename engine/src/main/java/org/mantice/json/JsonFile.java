package org.mantice.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.Cause;
import org.mantice.fault.FilePlace;
import org.mantice.json.JsonFileException.Reason;

/**
 * A JSON file of ours, read strictly: UTF-8, one object, no field twice, no comments, no NaN, limited in size and
 * depth. Numbers keep every digit.
 */
public final class JsonFile {
    /** Values inside each other; ours need seven. */
    static final int MOST_DEPTH = 64;

    private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'", Pattern.DOTALL);

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MOST_DEPTH)
                            .build())
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private final FilePlace place;
    private final String text;
    private final ObjectNode root;

    private JsonFile(FilePlace place, String text, ObjectNode root) {
        this.place = place;
        this.text = text;
        this.root = root;
    }

    /** Reads a file of at most so many bytes. */
    public static JsonFile read(Path file, int mostBytes) {
        FilePlace place = FilePlace.of(file.toString());
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes)
                throw JsonFileException.of(
                        Reason.TOO_LARGE, place, Math.max(Files.size(file), bytes.length), mostBytes);
            return parse(bytes, place, mostBytes);
        } catch (NoSuchFileException e) {
            throw JsonFileException.causedBy(e, Reason.NOT_FOUND, place);
        } catch (IOException e) {
            throw JsonFileException.causedBy(
                    e, Reason.UNREADABLE, place, Files.isDirectory(file) ? "it is a folder" : Cause.words(e));
        }
    }

    /** Reads bytes that came from the place. */
    public static JsonFile parse(byte[] bytes, FilePlace place, int mostBytes) {
        if (bytes.length > mostBytes) throw JsonFileException.of(Reason.TOO_LARGE, place, bytes.length, mostBytes);
        String text = decode(bytes, place);
        if (text.isBlank()) throw JsonFileException.of(Reason.EMPTY, place);
        JsonNode node = tree(text, place);
        if (node instanceof ObjectNode object) return new JsonFile(place, text, object);
        throw JsonFileException.of(Reason.NOT_AN_OBJECT, place, Fields.show(node));
    }

    private static JsonNode tree(String text, FilePlace place) {
        try (JsonParser parser = MAPPER.createParser(text)) {
            try {
                JsonNode node = MAPPER.readTree(parser);
                if (parser.nextToken() == null) return node;
            } catch (JsonProcessingException e) {
                throw damaged(e, place.atLine(parser.currentLocation().getLineNr()));
            }
            FilePlace line = place.atLine(parser.currentTokenLocation().getLineNr());
            throw JsonFileException.of(Reason.NOT_JSON, line, "something follows the first value");
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory can be read", e);
        }
    }

    private static String decode(byte[] bytes, FilePlace place) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw JsonFileException.causedBy(e, Reason.BAD_ENCODING, place);
        }
    }

    private static JsonFileException damaged(JsonProcessingException e, FilePlace line) {
        String message = String.valueOf(e.getOriginalMessage());
        if (e instanceof JsonEOFException || message.startsWith("Unexpected end-of-input"))
            return JsonFileException.causedBy(e, Reason.TRUNCATED, line);
        if (e instanceof StreamConstraintsException && message.contains("nesting depth"))
            return JsonFileException.causedBy(e, Reason.TOO_DEEP, line, MOST_DEPTH);
        Matcher duplicate = DUPLICATE.matcher(message);
        if (e instanceof JsonParseException && duplicate.find())
            return JsonFileException.causedBy(e, Reason.DUPLICATE_FIELD, line, duplicate.group(1));
        return JsonFileException.causedBy(e, Reason.NOT_JSON, line, message);
    }

    /**
     * The fields of the outermost object, once the file has shown to be of this format and a version that this program
     * reads: the same major number, any minor one.
     *
     * @param format what the field {@code format} must say
     * @param major our major version
     */
    public Fields fields(String format, int major) {
        Fields fields = new Fields(this, "", root);
        String found = fields.text("format");
        if (!found.equals(format)) throw fields.wrong("format", "\"" + format + "\"");
        String version = fields.text("version");
        if (!version.matches("[0-9]{1,4}\\.[0-9]{1,4}")) throw fields.wrong("version", "as \"" + major + ".1\"");
        if (Integer.parseInt(version.substring(0, version.indexOf('.'))) > major)
            throw JsonFileException.of(Reason.NEWER_VERSION, placeOf("/version"), "\"" + version + "\"", major);
        return fields;
    }

    /** The fields of the outermost object, whatever format it is of. */
    public Fields fields() {
        return new Fields(this, "", root);
    }

    public ObjectNode root() {
        return root;
    }

    /** The place of a value with its line; reads the text again, for messages only. */
    public FilePlace placeOf(String pointer) {
        try (JsonParser parser = MAPPER.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken())
                if (token != JsonToken.FIELD_NAME
                        && parser.getParsingContext().pathAsPointer().toString().equals(pointer))
                    return place.atLine(parser.currentTokenLocation().getLineNr());
        } catch (IOException e) {
            throw new IllegalStateException("the text was read before", e);
        }
        return place;
    }

    /** A fresh object to write into. */
    public static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** As text in UTF-8: fields in the order given, indented by two, lines ended by a line feed alone. */
    public static byte[] bytes(JsonNode node) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            MAPPER.writer(printer)
                    .without(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .writeValue(out, node);
            out.write('\n');
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException("a tree of JSON can be written", e);
        }
    }
}
