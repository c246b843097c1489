package org.mantice.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.List;
import org.mantice.editing.TuneEdit;

/** Edits of a tune as JSON and back, in the form that they have in plan files. */
public final class EditJson {
    private static final JsonMapper MAPPER = PlanJson.mapper();

    private EditJson() {}

    public static JsonNode tree(List<TuneEdit> edits) {
        return MAPPER.convertValue(edits.toArray(TuneEdit[]::new), JsonNode.class);
    }

    /** @throws IOException if the tree is not a list of edits */
    public static List<TuneEdit> edits(JsonNode tree) throws IOException {
        if (!tree.isArray()) throw new IOException("edits is " + tree.getNodeType() + "; allowed: a list");
        return List.of(MAPPER.treeToValue(tree, TuneEdit[].class));
    }
}
