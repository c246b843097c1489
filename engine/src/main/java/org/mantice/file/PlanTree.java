package org.mantice.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.Bellows;
import org.mantice.instrument.ButtonNames;
import org.mantice.json.Fields;
import org.mantice.performance.PatternSection;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** A plan document as a tree of JSON. What is only there for readers is ignored when a file is read. */
final class PlanTree {
    private final JsonMapper mapper = PlanJson.mapper();
    private final Performance performance;

    PlanTree(Performance performance) {
        this.performance = performance;
    }

    ObjectNode of(PlanDocument document) {
        ObjectNode tree = mapper.createObjectNode();
        tree.put("format", PlanFile.FORMAT);
        tree.put("version", PlanFile.VERSION);
        tree.put("engine", document.engine());
        tree.set("tune", mapper.valueToTree(document.tune()));
        tree.set("settings", mapper.valueToTree(document.settings()));
        tree.set("accordion", AccordionFile.tree(document.accordion()));
        tree.set("player", PlayerFile.tree(document.player()));
        tree.set("packs", mapper.valueToTree(document.packs()));
        tree.set("locks", mapper.convertValue(document.locks().toArray(Lock[]::new), ArrayNode.class));
        tree.put("costMicropoints", document.cost());
        tree.set("figures", mapper.valueToTree(document.figures()));
        tree.set("passes", passes());
        tree.set("patterns", patterns());
        tree.set("plan", plan(document.plan(), document.accordion().bellows()));
        tree.set("explanation", mapper.valueToTree(document.explanation()));
        return tree;
    }

    private ArrayNode passes() {
        ArrayNode passes = mapper.createArrayNode();
        performance.passes().forEach(pass -> passes.add(mapper.<JsonNode>valueToTree(pass)));
        return passes;
    }

    /** Which pattern the left hand plays where, and who chose it. */
    private ArrayNode patterns() {
        ArrayNode sections = mapper.createArrayNode();
        for (PatternSection section : PatternSection.of(performance)) {
            ObjectNode node = sections.addObject().put("pass", section.pass());
            node.put("fromMeasure", number(section.firstMeasure()));
            node.put("toMeasure", number(section.lastMeasure()));
            node.put("pattern", section.use().pattern().id());
            node.put("hand", Fields.word(section.use().hand()));
            node.put("why", Fields.word(section.use().why()));
        }
        return sections;
    }

    private String number(int played) {
        return performance
                .tune()
                .measure(performance.measures().get(played).written())
                .number();
    }

    private ObjectNode plan(Plan plan, Bellows bellows) {
        ObjectNode tree = mapper.valueToTree(plan);
        List<LeftHandPlan.Event> buttons = plan.leftHand().events();
        for (int i = 0; i < buttons.size(); i++) {
            ObjectNode event = (ObjectNode) tree.at("/leftHand/events").get(i);
            describe(event, buttons.get(i).pass(), buttons.get(i).place());
            ArrayNode names = event.putArray("buttonNames");
            for (BassButton button : buttons.get(i).buttons()) names.add(ButtonNames.of(button));
        }
        List<BellowsPlan.Stroke> strokes = plan.bellows().strokes();
        for (int i = 0; i < strokes.size(); i++) {
            BellowsPlan.Stroke stroke = strokes.get(i);
            ObjectNode node = (ObjectNode) tree.at("/bellows/strokes").get(i);
            describe(node, stroke.pass(), stroke.place());
            if (i + 1 < strokes.size())
                place(
                        node,
                        "until",
                        strokes.get(i + 1).pass(),
                        strokes.get(i + 1).place());
            else theEnd(node);
            node.put("startPerMilleOfComfortable", perMille(stroke.startMillilitres(), bellows));
            node.put("endPerMilleOfComfortable", perMille(stroke.endMillilitres(), bellows));
        }
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

    /** The last stroke ends with the last measure played. */
    private void theEnd(ObjectNode stroke) {
        PlayedMeasure last = performance.measures().get(performance.measures().size() - 1);
        MusicalTime end = performance.tune().measure(last.written()).length();
        place(stroke, "until", last.pass(), new WrittenPlace(last.written(), end));
    }

    private static long perMille(int millilitres, Bellows bellows) {
        return 1_000L * millilitres / bellows.comfortableMillilitres();
    }

    private void describe(ObjectNode event, int pass, WrittenPlace place) {
        place(event, "at", pass, place);
    }

    private void place(ObjectNode event, String name, int pass, WrittenPlace place) {
        ObjectNode at = event.putObject(name);
        at.put("pass", pass);
        at.put("measure", performance.tune().measure(place.measure()).number());
        at.put("beat", Places.beat(performance.tune().measure(place.measure()), place.offset()));
    }
}
