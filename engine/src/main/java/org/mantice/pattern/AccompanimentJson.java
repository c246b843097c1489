package org.mantice.pattern;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.fault.FilePlace;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.Accompaniment.Hand;

/** What is asked of the left hand as JSON and back; both fields may be absent. */
public final class AccompanimentJson {
    /** Own patterns and choices together. */
    private static final int MOST_BYTES = 2 * PatternJson.MOST_BYTES;

    private AccompanimentJson() {}

    /** @throws org.mantice.json.JsonFileException if something is not allowed, with its place */
    public static Accompaniment of(Fields fields) {
        List<BassPattern> own = fields.has("patterns") ? PatternJson.patterns(fields) : List.of();
        List<Choice> choices = new ArrayList<>();
        if (fields.has("choices")) for (Fields each : fields.objects("choices")) choices.add(choice(each));
        return fields.make(() -> new Accompaniment(own, choices));
    }

    /**
     * From a tree that was read elsewhere.
     *
     * @throws org.mantice.json.JsonFileException if something is not allowed, with its place
     */
    public static Accompaniment of(JsonNode tree, FilePlace place) {
        return of(JsonFile.parse(JsonFile.bytes(tree), place, MOST_BYTES).fields());
    }

    private static Choice choice(Fields fields) {
        int first = fields.wholeNumber("firstMeasure");
        int last = fields.wholeNumber("lastMeasure");
        OptionalInt pass = fields.has("pass") ? OptionalInt.of(fields.wholeNumber("pass")) : OptionalInt.empty();
        Optional<String> pattern = fields.has("pattern") ? Optional.of(fields.text("pattern")) : Optional.empty();
        Optional<Hand> hand = fields.has("hand") ? Optional.of(fields.choice("hand", Hand.class)) : Optional.empty();
        return fields.make(() -> new Choice(first, last, pass, pattern, hand));
    }

    public static ObjectNode tree(Accompaniment asked) {
        ObjectNode tree = JsonFile.object();
        tree.set("patterns", PatternJson.tree(asked.own()));
        ArrayNode choices = tree.putArray("choices");
        for (Choice choice : asked.choices()) {
            ObjectNode node = choices.addObject();
            node.put("firstMeasure", choice.firstMeasure()).put("lastMeasure", choice.lastMeasure());
            choice.pass().ifPresent(pass -> node.put("pass", pass));
            choice.pattern().ifPresent(pattern -> node.put("pattern", pattern));
            choice.hand().ifPresent(hand -> node.put("hand", Fields.word(hand)));
        }
        return tree;
    }
}
