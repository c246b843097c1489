package org.mantice.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.List;
import org.mantice.plan.Lock;

/** Locks as JSON and back, in the form that they have in plan files. */
public final class LockJson {
    private static final JsonMapper MAPPER = PlanJson.mapper();

    private LockJson() {}

    public static JsonNode tree(List<Lock> locks) {
        return MAPPER.convertValue(locks.toArray(Lock[]::new), JsonNode.class);
    }

    /** @throws IOException if the tree is not a list of locks */
    public static List<Lock> locks(JsonNode tree) throws IOException {
        if (!tree.isArray()) throw new IOException("locks is " + tree.getNodeType() + "; allowed: a list");
        return List.of(MAPPER.treeToValue(tree, Lock[].class));
    }
}
