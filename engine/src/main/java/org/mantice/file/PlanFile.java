package org.mantice.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.mantice.fault.FilePlace;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.json.JsonFileException;
import org.mantice.performance.Performance;

/**
 * Plan files ({@code *.plan.json}), described by the JSON Schema {@code org/mantice/schema/plan.schema.json}. Fields
 * that this version does not know are kept when a file is written again; a newer major version is refused.
 */
public final class PlanFile {
    public static final String FORMAT = "mantice-plan";
    public static final String SUFFIX = ".plan.json";
    static final String VERSION = "0.2";
    private static final int MAJOR = 0;
    private static final int MOST_BYTES = 128 * 1024 * 1024;

    private final PlanDocument document;
    private final ObjectNode tree;

    private PlanFile(PlanDocument document, ObjectNode tree) {
        this.document = document;
        this.tree = tree;
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
        return new PlanFile(document, new PlanTree(performance).of(document));
    }

    /** The same file with another plan; fields that this version does not know are kept. */
    public PlanFile with(PlanDocument changed, Performance performance) {
        PlanTree trees = new PlanTree(performance);
        ObjectNode next = trees.of(changed);
        keepUnknown(tree, trees.of(document), next);
        return new PlanFile(changed, next);
    }

    /** As text in UTF-8, indented, ending in a line feed. */
    public byte[] bytes() {
        return JsonFile.bytes(tree);
    }

    /** The text of {@link #bytes}. */
    public String json() {
        return new String(bytes(), StandardCharsets.UTF_8);
    }

    /** @throws FileWriteException if it cannot be written; what was there before is then unchanged */
    public void write(Path file) {
        AtomicFile.write(file, bytes());
    }

    /** @throws JsonFileException if the file is not a plan that this version can read */
    public static PlanFile read(Path file) {
        return of(JsonFile.read(file, MOST_BYTES));
    }

    /** Reads bytes that came from the place. */
    static PlanFile parse(byte[] bytes, FilePlace place) {
        return of(JsonFile.parse(bytes, place, MOST_BYTES));
    }

    private static PlanFile of(JsonFile file) {
        Fields fields = file.fields(FORMAT, MAJOR);
        return new PlanFile(new PlanReader(file, fields).document(), file.root());
    }

    /** Copies into {@code to} the fields of {@code from} that are not among those known, object by object. */
    private static void keepUnknown(ObjectNode from, ObjectNode known, ObjectNode to) {
        for (Map.Entry<String, JsonNode> field : from.properties()) {
            String name = field.getKey();
            if (!known.has(name)) {
                if (!to.has(name)) to.set(name, field.getValue());
            } else if (field.getValue() instanceof ObjectNode old
                    && known.get(name) instanceof ObjectNode own
                    && to.get(name) instanceof ObjectNode inner) keepUnknown(old, own, inner);
        }
    }
}
