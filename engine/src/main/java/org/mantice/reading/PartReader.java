package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;

/** Gathers the measures of one part. */
final class PartReader {
    private final String id;
    private final PartState state = new PartState();
    private final List<ScoreMeasure> measures = new ArrayList<>();

    PartReader(String id) {
        this.id = id;
    }

    int size() {
        return measures.size();
    }

    void read(String number, boolean implicit, XmlNode block) {
        String shown = number.isBlank() ? String.valueOf(measures.size() + 1) : number;
        measures.add(new MeasureReader(state, measures.size(), shown, implicit).read(block));
    }

    ScorePart finish(String name) {
        return new ScorePart(id, name, List.copyOf(measures));
    }
}
