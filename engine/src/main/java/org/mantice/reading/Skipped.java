package org.mantice.reading;

import java.util.List;

/**
 * Something of the file that the tune does not hold as written.
 *
 * @param args what {@link SkippedWhat#sentence} speaks of
 * @param measures printed numbers of the measures, each once, in order; empty where it concerns the whole file
 * @param count how often, 1 or more
 */
public record Skipped(SkippedWhat what, List<String> args, List<String> measures, int count) {
    public Skipped {
        args = List.copyOf(args);
        measures = List.copyOf(measures);
        if (count < 1) throw new IllegalArgumentException("count is " + count + "; allowed: 1 or more");
    }

    /** As {@code "left out: trill-mark (2; measures 3, 7)"}. */
    @Override
    public String toString() {
        String sentence = what.kind().label() + ": " + what.sentence(args);
        if (measures.isEmpty()) return count == 1 ? sentence : sentence + " (" + count + ")";
        String places = (measures.size() == 1 ? "measure " : "measures ")
                + String.join(", ", measures.subList(0, Math.min(8, measures.size())))
                + (measures.size() > 8 ? " and " + (measures.size() - 8) + " more" : "");
        return sentence + " (" + (count == 1 ? "" : count + "; ") + places + ")";
    }
}
