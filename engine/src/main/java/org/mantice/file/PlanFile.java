package org.mantice.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.FilePlace;
import org.mantice.performance.Performance;

/**
 * Plan files ({@code *.plan.json}), described by the JSON Schema {@code org/mantice/schema/plan.schema.json}. Fields
 * that this version does not know are kept when a file is written again; a newer major version is refused.
 */
public final class PlanFile {
    public static final String FORMAT = "mantice-plan";
    public static final String VERSION = "0.1";
    public static final String SUFFIX = ".plan.json";
    private static final int MAJOR = 0;
    private static final Pattern VERSIONS = Pattern.compile("(\\d{1,4})\\.(\\d{1,4})");

    private final PlanDocument document;
    private final ObjectNode source;

    private PlanFile(PlanDocument document, ObjectNode source) {
        this.document = document;
        this.source = source;
    }

    public PlanDocument document() {
        return document;
    }

    /**
     * A new file.
     *
     * @param performance the tune as planned, from which measure numbers, beats and seconds are added for readers
     */
    public static PlanFile of(PlanDocument document, Performance performance) {
        return new PlanFile(document, new PlanTree(PlanJson.mapper(), performance).of(document));
    }

    /** The same file with another plan; fields that this version does not know are kept. */
    public PlanFile with(PlanDocument changed, Performance performance) {
        ObjectNode tree = new PlanTree(PlanJson.mapper(), performance).of(changed);
        keepUnknown(source, tree);
        return new PlanFile(changed, tree);
    }

    /** As text, indented, ending in a line feed. */
    public String json() {
        try {
            return PlanJson.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(source) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values is always JSON", e);
        }
    }

    /** Writes the whole file or nothing; what was there before is kept beside it. */
    public void write(Path file) throws IOException {
        AtomicFile.write(file, json().getBytes(StandardCharsets.UTF_8));
    }

    /** @throws PlanFileException if the file is not a plan that this version can read */
    public static PlanFile read(Path file) {
        FilePlace place = FilePlace.of(file.toString());
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(PlanJson.LARGEST_FILE_BYTES + 1);
            if (bytes.length > PlanJson.LARGEST_FILE_BYTES)
                throw new PlanFileException(
                        "TOO_LARGE", place, "is larger than " + PlanJson.LARGEST_FILE_BYTES + " bytes", null);
            return read(bytes, place);
        } catch (NoSuchFileException e) {
            throw new PlanFileException("NOT_FOUND", place, "there is no such file", e);
        } catch (IOException e) {
            throw new PlanFileException("UNREADABLE", place, "cannot be read: " + e.getMessage(), e);
        }
    }

    private static PlanFile read(byte[] bytes, FilePlace place) throws IOException {
        JsonMapper mapper = PlanJson.mapper();
        JsonNode tree;
        try {
            tree = mapper.reader().without(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION).readTree(bytes);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new PlanFileException("NOT_JSON", place.atLine(line), "is not JSON: " + firstLine(e), e);
        }
        if (!(tree instanceof ObjectNode object) || !FORMAT.equals(tree.path("format").asText()))
            throw new PlanFileException("NOT_A_PLAN", place, "is not a plan: its field format is not " + FORMAT, null);
        checkVersion(object, place);
        try {
            return new PlanFile(PlanTree.document(mapper, object), object);
        } catch (JsonMappingException e) {
            throw new PlanFileException("FIELD", place, "field " + pointer(e) + ": " + firstLine(e), e);
        } catch (IllegalArgumentException e) {
            throw new PlanFileException("FIELD", place, firstLine(e), e);
        }
    }

    private static void checkVersion(ObjectNode object, FilePlace place) {
        String version = object.path("version").asText();
        Matcher parts = VERSIONS.matcher(version);
        if (!parts.matches())
            throw new PlanFileException(
                    "FIELD", place, "field version is \"" + version + "\"; allowed: such as " + VERSION, null);
        if (Integer.parseInt(parts.group(1)) > MAJOR)
            throw new PlanFileException(
                    "NEWER_VERSION",
                    place,
                    "was written as version " + version + "; this program reads versions up to " + MAJOR + ".x",
                    null);
    }

    private static String pointer(JsonMappingException e) {
        StringBuilder pointer = new StringBuilder();
        for (JsonMappingException.Reference step : e.getPath())
            pointer.append('/').append(step.getFieldName() == null ? step.getIndex() : step.getFieldName());
        return pointer.toString();
    }

    private static String firstLine(Exception e) {
        Throwable cause = e;
        while (cause.getCause() instanceof IllegalArgumentException inner) cause = inner;
        String message = cause instanceof JsonProcessingException json ? json.getOriginalMessage() : cause.getMessage();
        return Optional.ofNullable(message).map(text -> text.lines().findFirst().orElse("")).orElse(cause.toString());
    }

    /** Copies into {@code to} the fields of {@code from} that it lacks, object by object. */
    private static void keepUnknown(ObjectNode from, ObjectNode to) {
        for (Iterator<Map.Entry<String, JsonNode>> fields = from.fields(); fields.hasNext(); ) {
            Map.Entry<String, JsonNode> field = fields.next();
            JsonNode there = to.get(field.getKey());
            if (there == null) to.set(field.getKey(), field.getValue());
            else if (there instanceof ObjectNode inner && field.getValue() instanceof ObjectNode old)
                keepUnknown(old, inner);
        }
    }
}
