package org.mantice.rule;

/**
 * A stroke of the bellows from one turn to the next.
 *
 * @param halfBeats its length to the nearest half of a felt beat, 0 or more
 * @param measureHalfBeats length of the measure in which it begins
 * @param first it begins the performance
 * @param last it ends the performance
 */
public record Stroke(int halfBeats, int measureHalfBeats, boolean first, boolean last) implements BellowsStep {
    /** The first and the last stroke are free. */
    public boolean free() {
        return first || last;
    }

    /** Whole measures, or 0 if the length is none. */
    public int wholeMeasures() {
        return halfBeats % measureHalfBeats == 0 ? halfBeats / measureHalfBeats : 0;
    }

    /** As {@code "14"} or {@code "14.5"}. */
    public String beats() {
        return halfBeats / 2 + (halfBeats % 2 == 0 ? "" : ".5");
    }
}
