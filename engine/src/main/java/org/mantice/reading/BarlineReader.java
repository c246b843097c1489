package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.reading.ScoreBarline.Location;
import org.mantice.reading.ScoreBarline.ScoreEnding;
import org.mantice.tune.MusicalTime;

/** Reads one barline element. */
final class BarlineReader {
    private BarlineReader() {}

    static ScoreBarline read(XmlNode node, MusicalTime onset) {
        List<Finding> findings = new ArrayList<>();
        Optional<XmlNode> repeat = node.child("repeat");
        Location location =
                switch (node.attribute("location")) {
                    case "left" -> Location.LEFT;
                    case "middle" -> Location.MIDDLE;
                    default -> Location.RIGHT;
                };
        return new ScoreBarline(
                onset,
                location,
                node.text("bar-style"),
                repeat.map(sign -> sign.attribute("direction")).orElse(""),
                repeat.map(sign -> sign.attribute("times")).orElse(""),
                repeat.filter(sign -> !sign.attribute("after-jump").equals("no"))
                        .isPresent(),
                node.child("ending").map(BarlineReader::ending),
                node.has("segno") || !node.attribute("segno").isEmpty(),
                node.has("coda") || !node.attribute("coda").isEmpty(),
                node.has("fermata"),
                findings);
    }

    private static ScoreEnding ending(XmlNode node) {
        return new ScoreEnding(node.attribute("type").equals("start"), node.attribute("number"), node.text());
    }
}
