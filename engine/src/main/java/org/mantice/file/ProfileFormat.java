package org.mantice.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;

/** What the files of accordions and players have in common. */
final class ProfileFormat {
    static final int MAJOR = 0;
    /** Bytes of a profile; ours have less than 10,000. */
    static final int MOST_BYTES = 1_000_000;

    private ProfileFormat() {}

    /**
     * The tree of a file: format and version, the profile, what the source had besides. A source of a newer minor
     * version keeps its number, since its fields are kept too.
     */
    static ObjectNode file(String format, int ownMinor, ObjectNode profile, Optional<Fields> source) {
        int minor = source.map(fields -> fields.text("version"))
                .map(version -> Integer.parseInt(version.substring(version.indexOf('.') + 1)))
                .map(found -> Math.max(found, ownMinor))
                .orElse(ownMinor);
        ObjectNode tree = JsonFile.object().put("format", format).put("version", MAJOR + "." + minor);
        tree.setAll(profile);
        source.ifPresent(fields -> fields.keepInto(tree));
        return tree;
    }
}
