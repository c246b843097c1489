package org.mantice.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.json.JsonFileException;
import org.mantice.json.JsonFileException.Reason;
import org.mantice.pattern.AccompanimentJson;
import org.mantice.performance.Settings;
import org.mantice.plan.Explanation;
import org.mantice.plan.Figures;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.tune.MusicalTime;

/** Takes a plan document out of the fields of a file; a wrong value is refused with its pointer and line. */
final class PlanReader {
    private final JsonMapper mapper = PlanJson.mapper();
    private final JsonFile file;
    private final Fields fields;

    PlanReader(JsonFile file, Fields fields) {
        this.file = file;
        this.fields = fields;
    }

    PlanDocument document() {
        completeOlder();
        return new PlanDocument(
                fields.text("engine"),
                value("tune", PlanDocument.TuneSource.class),
                settings(),
                AccordionFile.accordion(fields.object("accordion")),
                PlayerFile.player(fields.object("player")),
                List.of(value("packs", PlanDocument.PackUsed[].class)),
                List.of(value("locks", Lock[].class)),
                value("plan", Plan.class),
                value("figures", Figures.class),
                value("explanation", Explanation.class));
    }

    /** Plans of version 0.1 know neither edits nor chosen patterns, and the older of them neither books of tunes nor alternate chords. */
    private void completeOlder() {
        if (file.root().get("tune") instanceof ObjectNode tune) {
            if (!tune.has("entry")) tune.put("entry", "");
            if (!tune.has("edits")) tune.putArray("edits");
        }
        if (file.root().get("settings") instanceof ObjectNode settings) {
            if (!settings.has("chords"))
                settings.putObject("chords").put("alternates", "NEVER").put("optional", true);
            if (!settings.has("leftHand")) settings.putObject("leftHand");
        }
    }

    private Settings settings() {
        Settings settings = value("settings", Settings.class);
        return settings.withLeftHand(
                AccompanimentJson.of(fields.object("settings").object("leftHand")));
    }

    private <T> T value(String name, Class<T> type) {
        JsonNode node = file.root().get(name);
        if (node == null || node.isNull())
            throw JsonFileException.of(Reason.MISSING, file.placeOf(""), "/" + name, "a value");
        try {
            return mapper.treeToValue(node, type);
        } catch (JsonMappingException e) {
            String pointer = "/" + name + pointer(e);
            JsonNode value = file.root().at(pointer);
            if (e instanceof MismatchedInputException wrong && wrong.getTargetType() != null && !value.isMissingNode())
                throw JsonFileException.causedBy(
                        e, Reason.WRONG_VALUE, file.placeOf(pointer), pointer, Fields.show(value), allowed(wrong, e));
            throw JsonFileException.causedBy(e, Reason.REFUSED, file.placeOf(pointer), pointer, message(e));
        } catch (JsonProcessingException e) {
            throw JsonFileException.causedBy(e, Reason.REFUSED, file.placeOf("/" + name), "/" + name, message(e));
        }
    }

    private static String allowed(MismatchedInputException wrong, JsonMappingException e) {
        Class<?> type = wrong.getTargetType();
        if (type.isEnum())
            return String.join(
                    ", ",
                    Arrays.stream(type.getEnumConstants()).map(String::valueOf).toList());
        if (type == boolean.class || type == Boolean.class) return "true or false";
        if (type == String.class) return "a text";
        if (type.isPrimitive() || Number.class.isAssignableFrom(type)) return "a whole number";
        if (type == MusicalTime.class) return "a whole number or a fraction such as \"3/4\"";
        return "an object or list of its kind (" + message(e) + ")";
    }

    private static String pointer(JsonMappingException e) {
        StringBuilder pointer = new StringBuilder();
        for (JsonMappingException.Reference step : e.getPath())
            pointer.append('/').append(step.getFieldName() == null ? step.getIndex() : step.getFieldName());
        return pointer.toString();
    }

    /** Our own constructors' sentence where one of them refused, else the first line of the library's. */
    private static String message(JsonProcessingException e) {
        Throwable cause = e;
        while (cause.getCause() != null) cause = cause.getCause();
        String message = cause instanceof JsonProcessingException json ? json.getOriginalMessage() : cause.getMessage();
        return String.valueOf(message).lines().findFirst().orElse("is not allowed");
    }
}
