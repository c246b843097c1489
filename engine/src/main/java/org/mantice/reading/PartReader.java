package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;

/** Gathers the measures of one part. */
final class PartReader {
    private final String id;
    private final PartState state;
    private final List<ScoreMeasure> measures = new ArrayList<>();

    /** @param verbatim the file is taken at its word */
    PartReader(String id, boolean verbatim) {
        this.id = id;
        this.state = new PartState(verbatim);
    }

    int size() {
        return measures.size();
    }

    void read(String number, boolean implicit, XmlNode block) {
        String shown = number.isBlank() && !state.verbatim ? String.valueOf(measures.size() + 1) : number;
        measures.add(new MeasureReader(state, measures.size(), shown, implicit).read(block));
    }

    ScorePart finish(String name) {
        return new ScorePart(id, name, List.copyOf(measures));
    }
}
