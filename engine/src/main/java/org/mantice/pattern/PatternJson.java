package org.mantice.pattern;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.tune.MusicalTime;

/** Patterns as JSON and back, described by the JSON Schema {@code org/mantice/schema/patterns.schema.json}. */
public final class PatternJson {
    public static final String FORMAT = "mantice-patterns";
    /** The major version read. */
    public static final int MAJOR = 0;
    /** Bytes of a file; the shipped one has less than 30,000. */
    public static final int MOST_BYTES = 1_000_000;
    /** Patterns in one file. */
    public static final int MOST_PATTERNS = 200;

    private static final String TIME = "(\\d{1,3})(?:/(\\d{1,2}))?";

    private PatternJson() {}

    /**
     * The field {@code patterns} of an object, all with different ids.
     *
     * @throws org.mantice.json.JsonFileException if one is not allowed, with its place
     */
    public static List<BassPattern> patterns(Fields fields) {
        List<Fields> list = fields.objects("patterns");
        if (list.size() > MOST_PATTERNS) throw fields.wrong("patterns", "0 to " + MOST_PATTERNS + " patterns");
        List<BassPattern> patterns = new ArrayList<>();
        for (Fields each : list) {
            BassPattern pattern = pattern(each);
            if (patterns.stream().anyMatch(other -> other.id().equals(pattern.id())))
                throw each.wrong("id", "one that no other pattern has");
            patterns.add(pattern);
        }
        return List.copyOf(patterns);
    }

    private static BassPattern pattern(Fields fields) {
        String id = fields.text("id");
        Map<String, String> names = fields.textsByName("names");
        String source = fields.text("source");
        Fit fit = fit(fields);
        BassPattern.Cycle cycle =
                fields.has("cycle") ? fields.choice("cycle", BassPattern.Cycle.class) : BassPattern.Cycle.MEASURE;
        BassPattern.Pickup pickup =
                fields.has("pickup") ? fields.choice("pickup", BassPattern.Pickup.class) : BassPattern.Pickup.BY_LENGTH;
        Figure plain = figure(fields, "strokes");
        Optional<Figure> fewer = optional(fields, "fewerStrokes");
        Optional<Figure> last = optional(fields, "lastStrokes");
        Optional<Figure> beforeChange = optional(fields, "strokesBeforeChange");
        BassPattern.Figures figures = fields.make(() -> new BassPattern.Figures(plain, fewer, last, beforeChange));
        return fields.make(() -> new BassPattern(id, new TreeMap<>(names), source, fit, cycle, figures, pickup));
    }

    private static Fit fit(Fields fields) {
        List<String> meters = fields.texts("meters");
        List<String> usualFor = fields.has("usualFor") ? fields.texts("usualFor") : List.of();
        int from = fields.has("fromBeatsPerMinute") ? fields.wholeNumber("fromBeatsPerMinute") : 0;
        int below = fields.has("belowBeatsPerMinute") ? fields.wholeNumber("belowBeatsPerMinute") : Fit.ALL_TEMPOS;
        List<String> dances = fields.has("dances") ? fields.texts("dances") : List.of();
        return fields.make(() -> new Fit(meters, usualFor, from, below, dances));
    }

    private static Optional<Figure> optional(Fields fields, String name) {
        return fields.has(name) ? Optional.of(figure(fields, name)) : Optional.empty();
    }

    private static Figure figure(Fields fields, String name) {
        List<Fields> list = fields.objects(name);
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < list.size() && i <= Figure.MOST_STROKES; i++) strokes.add(stroke(list.get(i)));
        return fields.make(name, () -> new Figure(strokes));
    }

    private static Stroke stroke(Fields fields) {
        MusicalTime at = time(fields);
        Stroke.Part part = fields.choice("part", Stroke.Part.class);
        Optional<Stroke.Bass> bass =
                fields.has("bass") ? Optional.of(fields.choice("bass", Stroke.Bass.class)) : Optional.empty();
        int sounds = fields.wholeNumber("soundsPerMille");
        boolean stressed = fields.has("stressed") && fields.flag("stressed");
        boolean onward = fields.has("onward") && fields.flag("onward");
        return fields.make(() -> new Stroke(at, part, bass, sounds, stressed, onward));
    }

    private static MusicalTime time(Fields fields) {
        String text = fields.text("at");
        String[] parts = text.split("/");
        if (!text.matches(TIME) || parts.length > 1 && Integer.parseInt(parts[1]) == 0)
            throw fields.wrong("at", "a whole number or a fraction such as \"3/2\"");
        return MusicalTime.of(Integer.parseInt(parts[0]), parts.length > 1 ? Integer.parseInt(parts[1]) : 1);
    }

    /** As a list for the field {@code patterns}. */
    public static ArrayNode tree(List<BassPattern> patterns) {
        ArrayNode list = JsonFile.object().putArray("patterns");
        patterns.forEach(pattern -> list.add(tree(pattern)));
        return list;
    }

    private static ObjectNode tree(BassPattern pattern) {
        ObjectNode tree = JsonFile.object().put("id", pattern.id());
        ObjectNode names = tree.putObject("names");
        pattern.names().forEach(names::put);
        tree.put("source", pattern.source());
        Fit fit = pattern.fit();
        texts(tree, "meters", fit.meters());
        if (!fit.usualFor().isEmpty()) texts(tree, "usualFor", fit.usualFor());
        if (fit.fromBeatsPerMinute() > 0) tree.put("fromBeatsPerMinute", fit.fromBeatsPerMinute());
        if (fit.belowBeatsPerMinute() < Fit.ALL_TEMPOS) tree.put("belowBeatsPerMinute", fit.belowBeatsPerMinute());
        if (!fit.dances().isEmpty()) texts(tree, "dances", fit.dances());
        if (pattern.cycle() != BassPattern.Cycle.MEASURE) tree.put("cycle", Fields.word(pattern.cycle()));
        if (pattern.pickup() != BassPattern.Pickup.BY_LENGTH) tree.put("pickup", Fields.word(pattern.pickup()));
        BassPattern.Figures figures = pattern.figures();
        strokes(tree, "strokes", figures.plain());
        figures.fewer().ifPresent(figure -> strokes(tree, "fewerStrokes", figure));
        figures.last().ifPresent(figure -> strokes(tree, "lastStrokes", figure));
        figures.beforeChange().ifPresent(figure -> strokes(tree, "strokesBeforeChange", figure));
        return tree;
    }

    private static void texts(ObjectNode tree, String name, List<String> texts) {
        ArrayNode list = tree.putArray(name);
        texts.forEach(list::add);
    }

    private static void strokes(ObjectNode tree, String name, Figure figure) {
        ArrayNode list = tree.putArray(name);
        for (Stroke stroke : figure.strokes()) {
            ObjectNode node = list.addObject().put("at", stroke.at().toString());
            node.put("part", Fields.word(stroke.part()));
            stroke.bass().ifPresent(bass -> node.put("bass", Fields.word(bass)));
            node.put("soundsPerMille", stroke.soundsPerMille());
            if (stroke.stressed()) node.put("stressed", true);
            if (stroke.onward()) node.put("onward", true);
        }
    }
}
