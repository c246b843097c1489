package org.mantice.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.mantice.fault.FilePlace;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.json.JsonFileException;
import org.mantice.player.BassMethod;
import org.mantice.player.Jumps;
import org.mantice.player.Player;
import org.mantice.player.Taste;

/**
 * Profiles of players ({@code *.player.json}), described by the JSON Schema
 * {@code org/mantice/schema/player.schema.json}. Fields that this version does not know are kept when a file is
 * written again; a newer major version is refused.
 */
public final class PlayerFile {
    public static final String FORMAT = "mantice-player";
    public static final String SUFFIX = ".player.json";

    private static final int MINOR = 1;

    private final Player player;
    private final Optional<Fields> source;

    private PlayerFile(Player player, Optional<Fields> source) {
        this.player = player;
        this.source = source;
    }

    /** A new file. */
    public static PlayerFile of(Player player) {
        return new PlayerFile(player, Optional.empty());
    }

    /** @throws JsonFileException if the file is not a profile that this version can read */
    public static PlayerFile read(Path file) {
        return of(JsonFile.read(file, ProfileFormat.MOST_BYTES));
    }

    /** Reads bytes that came from the place. */
    static PlayerFile parse(byte[] bytes, FilePlace place) {
        return of(JsonFile.parse(bytes, place, ProfileFormat.MOST_BYTES));
    }

    private static PlayerFile of(JsonFile file) {
        Fields fields = file.fields(FORMAT, ProfileFormat.MAJOR);
        return new PlayerFile(player(fields), Optional.of(fields));
    }

    public Player player() {
        return player;
    }

    /** The same file with another profile; fields that this version does not know are kept. */
    public PlayerFile with(Player changed) {
        return new PlayerFile(changed, source);
    }

    /** As text in UTF-8, indented, ending in a line feed. */
    public byte[] bytes() {
        return JsonFile.bytes(ProfileFormat.file(FORMAT, MINOR, tree(player), source));
    }

    /** @throws FileWriteException if it cannot be written; what was there before is then unchanged */
    public void write(Path file) {
        AtomicFile.write(file, bytes());
    }

    static Player player(Fields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        int span = fields.wholeNumber("handSpanTenths");
        BassMethod method = fields.choice("bassMethod", BassMethod.class);
        Jumps jumps = jumps(fields.object("jumps"));
        boolean mayTurn = fields.flag("mayTurnInHeldNote");
        Taste taste = taste(fields.object("taste"));
        return fields.make(() -> new Player(id, name, span, method, jumps, mayTurn, taste));
    }

    private static Jumps jumps(Fields fields) {
        int start = fields.wholeNumber("startMillis");
        int perBit = fields.wholeNumber("millisPerBit");
        return fields.make(() -> new Jumps(start, perBit));
    }

    private static Taste taste(Fields fields) {
        Taste taste = Taste.PLAIN;
        for (Map.Entry<String, Integer> weight : fields.numbers("weights").entrySet()) {
            Taste before = taste;
            taste = fields.object("weights")
                    .make(weight.getKey(), () -> before.with(weight.getKey(), weight.getValue()));
        }
        return taste;
    }

    /** The profile without format and version, as it also stands in other files of ours. */
    static ObjectNode tree(Player player) {
        ObjectNode tree = JsonFile.object().put("id", player.id()).put("name", player.name());
        tree.put("handSpanTenths", player.handSpanTenths());
        tree.put("bassMethod", Fields.word(player.bassMethod()));
        tree.putObject("jumps")
                .put("startMillis", player.jumps().startMillis())
                .put("millisPerBit", player.jumps().millisPerBit());
        tree.put("mayTurnInHeldNote", player.mayTurnInHeldNote());
        ObjectNode weights = tree.putObject("taste").putObject("weights");
        player.taste().weights().forEach(weights::put);
        return tree;
    }
}
