package org.mantice.writing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.mantice.tune.Barlines;
import org.mantice.tune.Barlines.Jump;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;

/** Writes barlines with repeats and endings, and the signs and words about the order of play. */
final class BarlineWriter {
    private final XmlOut out;
    private final List<Barlines> all;
    /** Measures with a segno, ascending. */
    private final List<Integer> segnos = new ArrayList<>();

    private final String destination;
    private List<Integer> openEnding = List.of();

    BarlineWriter(Tune tune, XmlOut out) {
        this.out = out;
        this.all = tune.measures().stream().map(Measure::barlines).toList();
        for (int i = 0; i < all.size(); i++) if (all.get(i).segno()) segnos.add(i);
        this.destination = destination(all);
    }

    void writeLeft(int measure) {
        Barlines here = all.get(measure);
        if (!here.endingStart().isEmpty()) openEnding = here.endingStart();
        if (!here.repeatStart() && here.endingStart().isEmpty()) return;
        out.open("barline", "location", "left");
        if (here.repeatStart()) out.leaf("bar-style", "heavy-light");
        if (!here.endingStart().isEmpty()) writeEnding("start");
        if (here.repeatStart()) out.empty("repeat", "direction", "forward");
        out.close();
    }

    void writeSignsAtStart(int measure) {
        Directions directions = new Directions(out);
        if (all.get(measure).segno()) directions.writeOrder(each -> each.empty("segno"), "segno", segnoFor(measure));
        if (all.get(measure).coda()) directions.writeOrder(each -> each.empty("coda"), "coda", "coda");
    }

    void writeSignsAtEnd(int measure) {
        Barlines here = all.get(measure);
        Directions directions = new Directions(out);
        if (here.toCoda()) directions.writeOrder(each -> each.leaf("words", "To Coda"), "tocoda", "coda");
        if (here.fine()) directions.writeOrder(each -> each.leaf("words", "Fine"), "fine", "yes");
        here.jump().ifPresent(jump -> {
            String words = (jump == Jump.DA_CAPO ? "D.C." : "D.S.") + destination;
            if (jump == Jump.DA_CAPO) directions.writeOrder(each -> each.leaf("words", words), "dacapo", "yes");
            else directions.writeOrder(each -> each.leaf("words", words), "dalsegno", segnoFor(measure));
        });
    }

    /** A repeat that is no double bar is left without a style. */
    void writeRight(int measure) {
        Barlines here = all.get(measure);
        boolean last = measure + 1 == all.size();
        if (!here.doubleBar() && here.repeatEnd().isEmpty() && !here.endingStop()) return;
        out.open("barline", "location", "right");
        boolean heavy = last || here.repeatEnd().isPresent();
        if (here.doubleBar()) out.leaf("bar-style", heavy ? "light-heavy" : "light-light");
        if (here.endingStop()) {
            boolean open = last || here.repeatEnd().isPresent() || here.jump().isPresent();
            writeEnding(open || !all.get(measure + 1).endingStart().isEmpty() ? "stop" : "discontinue");
            openEnding = List.of();
        }
        here.repeatEnd()
                .ifPresent(times -> out.empty(
                        "repeat",
                        "direction",
                        "backward",
                        "times",
                        String.valueOf(times),
                        "after-jump",
                        here.repeatAfterJump() ? "yes" : "no"));
        out.close();
    }

    private void writeEnding(String type) {
        String numbers = openEnding.stream().map(String::valueOf).collect(Collectors.joining(", "));
        out.empty("ending", "number", numbers.isEmpty() ? " " : numbers, "type", type);
    }

    private static String destination(List<Barlines> all) {
        if (all.stream().anyMatch(Barlines::toCoda)) return " al Coda";
        return all.stream().anyMatch(Barlines::fine) ? " al Fine" : "";
    }

    /** By its place among the segnos, from 0. */
    private static String segnoName(int index) {
        return index > 0 ? "segno" + (index + 1) : "segno";
    }

    /** The nearest one before, else the first. */
    private String segnoFor(int measure) {
        int found = Collections.binarySearch(segnos, measure);
        return segnoName(found >= 0 ? found : -found - 2);
    }
}
