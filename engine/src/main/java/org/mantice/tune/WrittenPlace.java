package org.mantice.tune;

/**
 * A place in the written music.
 *
 * @param measure index of the measure, from 0
 * @param offset from the start of the measure, 0 or more
 */
public record WrittenPlace(int measure, MusicalTime offset) implements Comparable<WrittenPlace> {
    public WrittenPlace {
        if (measure < 0) throw new IllegalArgumentException("measure is " + measure + "; allowed: 0 or more");
    }

    @Override
    public int compareTo(WrittenPlace other) {
        int byMeasure = Integer.compare(measure, other.measure);
        return byMeasure != 0 ? byMeasure : offset.compareTo(other.offset);
    }
}
