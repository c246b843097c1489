package org.mantice.reading;

import java.util.List;
import java.util.stream.Collectors;
import org.mantice.fault.TextPlace;

/**
 * Something of the file that the tune does not hold as written.
 *
 * @param args what {@link SkippedWhat#sentence} speaks of
 * @param measures printed numbers of the measures, each once, in order; empty where it concerns the whole file
 * @param lines places in the text, where what was read is a text for people; in order, the first {@link #MOST_LINES}
 * @param count how often, 1 or more
 */
public record Skipped(SkippedWhat what, List<String> args, List<String> measures, List<TextPlace> lines, int count) {
    /** How many places in the text are kept. */
    public static final int MOST_LINES = 100;

    public Skipped {
        args = List.copyOf(args);
        measures = List.copyOf(measures);
        lines = List.copyOf(lines);
        if (count < 1) throw new IllegalArgumentException("count is " + count + "; allowed: 1 or more");
    }

    public Skipped(SkippedWhat what, List<String> args, List<String> measures, int count) {
        this(what, args, measures, List.of(), count);
    }

    /** As {@code "left out: trill-mark (2; measures 3, 7)"} or {@code "forgiven: ... (line 12, column 7)"}. */
    @Override
    public String toString() {
        String sentence = what.kind().label() + ": " + what.sentence(args);
        if (!lines.isEmpty()) return sentence + " (" + (count == 1 ? "" : count + "; ") + lineList() + ")";
        if (measures.isEmpty()) return count == 1 ? sentence : sentence + " (" + count + ")";
        String places = (measures.size() == 1 ? "measure " : "measures ")
                + String.join(", ", measures.subList(0, Math.min(8, measures.size())))
                + (measures.size() > 8 ? " and " + (measures.size() - 8) + " more" : "");
        return sentence + " (" + (count == 1 ? "" : count + "; ") + places + ")";
    }

    private String lineList() {
        return lines.stream().limit(8).map(TextPlace::toString).collect(Collectors.joining("; "))
                + (lines.size() > 8 ? " and " + (count - 8) + " more" : "");
    }
}
