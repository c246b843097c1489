package org.mantice.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.ButtonNames;
import org.mantice.layer.Places;
import org.mantice.performance.Performance;
import org.mantice.performance.Settings;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Explanation;
import org.mantice.plan.Figures;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Player;
import org.mantice.tune.WrittenPlace;

/** A plan document as a tree of JSON, and back. What is only there for readers is ignored when read. */
final class PlanTree {
    private final JsonMapper mapper;
    private final Performance performance;

    PlanTree(JsonMapper mapper, Performance performance) {
        this.mapper = mapper;
        this.performance = performance;
    }

    ObjectNode of(PlanDocument document) {
        ObjectNode tree = mapper.createObjectNode();
        tree.put("format", PlanFile.FORMAT);
        tree.put("version", PlanFile.VERSION);
        tree.put("engine", document.engine());
        tree.set("tune", mapper.valueToTree(document.tune()));
        tree.set("settings", mapper.valueToTree(document.settings()));
        tree.set("accordion", mapper.valueToTree(document.accordion()));
        tree.set("player", mapper.valueToTree(document.player()));
        tree.set("packs", mapper.valueToTree(document.packs()));
        tree.set("locks", mapper.convertValue(document.locks().toArray(Lock[]::new), ArrayNode.class));
        tree.put("costMicropoints", document.cost());
        tree.set("figures", mapper.valueToTree(document.figures()));
        tree.set("passes", passes());
        tree.set("plan", plan(document.plan()));
        tree.set("explanation", mapper.valueToTree(document.explanation()));
        return tree;
    }

    /** @throws JsonMappingException if a field is missing or has a value that is not allowed */
    static PlanDocument document(JsonMapper mapper, ObjectNode tree) throws JsonMappingException {
        try {
            return new PlanDocument(
                    field(mapper, tree, "engine", String.class),
                    field(mapper, tree, "tune", PlanDocument.TuneSource.class),
                    field(mapper, tree, "settings", Settings.class),
                    field(mapper, tree, "accordion", Accordion.class),
                    field(mapper, tree, "player", Player.class),
                    List.of(field(mapper, tree, "packs", PlanDocument.PackUsed[].class)),
                    List.of(field(mapper, tree, "locks", Lock[].class)),
                    field(mapper, tree, "plan", Plan.class),
                    field(mapper, tree, "figures", Figures.class),
                    field(mapper, tree, "explanation", Explanation.class));
        } catch (JsonMappingException e) {
            throw e;
        } catch (JsonProcessingException e) {
            throw new JsonMappingException(null, e.getOriginalMessage(), e);
        }
    }

    private static <T> T field(JsonMapper mapper, ObjectNode tree, String name, Class<T> type)
            throws JsonProcessingException {
        JsonNode node = tree.get(name);
        if (node == null || node.isNull())
            throw JsonMappingException.wrapWithPath(
                    new JsonMappingException(null, "is missing; allowed: a value of its kind"), tree, name);
        try {
            return mapper.treeToValue(node, type);
        } catch (JsonMappingException e) {
            throw JsonMappingException.wrapWithPath(e, tree, name);
        }
    }

    private ArrayNode passes() {
        ArrayNode passes = mapper.createArrayNode();
        performance.passes().forEach(pass -> passes.add((JsonNode) mapper.valueToTree(pass)));
        return passes;
    }

    private ObjectNode plan(Plan plan) {
        ObjectNode tree = mapper.valueToTree(plan);
        List<LeftHandPlan.Event> buttons = plan.leftHand().events();
        for (int i = 0; i < buttons.size(); i++) {
            ObjectNode event = (ObjectNode) tree.at("/leftHand/events").get(i);
            describe(event, buttons.get(i).pass(), buttons.get(i).place());
            ArrayNode names = event.putArray("buttonNames");
            for (BassButton button : buttons.get(i).buttons()) names.add(ButtonNames.of(button));
        }
        List<BellowsPlan.Stroke> strokes = plan.bellows().strokes();
        for (int i = 0; i < strokes.size(); i++)
            describe((ObjectNode) tree.at("/bellows/strokes").get(i), strokes.get(i).pass(), strokes.get(i).place());
        List<RightHandPlan.Event> fingers = plan.rightHand().events();
        for (int i = 0; i < fingers.size(); i++) {
            ObjectNode event = (ObjectNode) tree.at("/rightHand/events").get(i);
            describe(event, fingers.get(i).pass(), fingers.get(i).place());
            TrebleMoment moment = performance.treble().get(fingers.get(i).moment());
            event.put("onsetMicros", moment.onsetMicros());
            event.put("releaseMicros", moment.releaseMicros());
        }
        return tree;
    }

    private void describe(ObjectNode event, int pass, WrittenPlace place) {
        ObjectNode at = event.putObject("at");
        at.put("pass", pass);
        at.put("measure", performance.tune().measure(place.measure()).number());
        at.put("beat", Places.beat(performance.tune().measure(place.measure()), place.offset()));
    }
}
