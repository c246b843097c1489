package org.mantice.reading.midi;

import java.util.List;
import org.mantice.tune.MusicalTime;

/**
 * Where the beats of a file fall and into how many equal parts each is divided. Moments of the file are counted in
 * {@link #FINE} steps a quarter note.
 */
public final class Grid {
    /** Steps a quarter note. */
    public static final int FINE = 9_600;

    private static final int FINEST_END = 8;
    private final List<Beat> beats;
    private final long[] begins;
    private final long[] cuts;
    private final int[] parts;
    private final long tolerance;

    /**
     * @param begins of every beat, and the end of the last
     * @param cuts notes from here on belong to the beat rather than to the one before
     * @param parts into how many parts each beat is divided; 0 where nothing begins in it
     * @param tolerance how far from a division an end may lie and still count as meant; -1 if no end does
     */
    Grid(List<Beat> beats, long[] begins, long[] cuts, int[] parts, long tolerance) {
        this.beats = beats;
        this.begins = begins;
        this.cuts = cuts;
        this.parts = parts;
        this.tolerance = tolerance;
    }

    /** The moment of a tick. */
    public static long moment(long tick, int division) {
        return (tick * FINE + division / 2) / division;
    }

    /** A length in writing. */
    public static long fineOf(MusicalTime time) {
        return time.times(4L * FINE).countOf(MusicalTime.WHOLE);
    }

    public List<Beat> beats() {
        return beats;
    }

    /** Into how many parts a beat is divided; 0 where nothing begins in it. */
    public int parts(int beat) {
        return parts[beat];
    }

    /** The length of a beat as played, in per mille of the written one. */
    public long pacePermille(int beat) {
        return (begins[beat + 1] - begins[beat]) * 1000 / fineOf(beats.get(beat).length());
    }

    /** The beat that a note beginning at a moment belongs to. */
    public int beatOf(long moment) {
        int low = 0;
        int high = beats.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (cuts[middle] <= moment) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    /** Where a note that begins at a moment is written, from the beginning of the file. */
    public MusicalTime onset(long moment) {
        int beat = beatOf(moment);
        int into = Math.max(1, parts[beat]);
        return place(beat, nearest(beat, moment, into), into);
    }

    /** Where a note of another part that begins at a moment is written: on a twelfth of its beat. */
    public MusicalTime onsetOfOthers(long moment) {
        int beat = beatOf(moment);
        return place(beat, nearest(beat, moment, 12), 12);
    }

    /** How far a note is moved on the grid, in {@link #FINE} steps; signed. */
    public long moved(long moment) {
        int beat = beatOf(moment);
        int into = Math.max(1, parts[beat]);
        return moment - at(beat, nearest(beat, moment, into), into);
    }

    /** Whether an end lies on a plain division, so that it is meant and no matter of touch. */
    public boolean isMeant(long moment) {
        int beat = beatOf(moment + tolerance);
        for (int into : new int[] {FINEST_END, FINEST_END - 2})
            if (Math.abs(at(beat, nearest(beat, moment, into), into) - moment) <= tolerance) return true;
        return false;
    }

    /** Where a note that ends at a moment ends in writing: on the division of the beat, or one no coarser than a fourth. */
    public MusicalTime end(long moment) {
        int beat = beatOf(moment + Math.max(0, tolerance));
        if (tolerance >= 0)
            for (int into : new int[] {1, 2, 3, 4, 6, 8, 12, 9})
                if (Math.abs(at(beat, nearest(beat, moment, into), into) - moment) <= tolerance)
                    return place(beat, nearest(beat, moment, into), into);
        int into = parts[beat];
        if (into < 3) into = beats.get(beat).ternary() ? 6 : 4;
        return place(beat, nearest(beat, moment, into), into);
    }

    private MusicalTime place(int beat, long index, int into) {
        Beat of = beats.get(beat);
        return of.start().plus(of.length().times(MusicalTime.of(index, into)));
    }

    /** Where a division falls. */
    private long at(int beat, long index, int into) {
        return begins[beat] + (begins[beat + 1] - begins[beat]) * index / into;
    }

    private long nearest(int beat, long moment, int into) {
        long length = begins[beat + 1] - begins[beat];
        long index = Math.floorDiv(2 * (moment - begins[beat]) * into + length, 2 * length);
        return Math.max(0, Math.min(into, index));
    }

    /** The place in writing of any moment, in {@link #FINE} steps, without rounding to a division. */
    public long written(long moment) {
        int beat = beatOf(moment);
        long length = begins[beat + 1] - begins[beat];
        Beat of = beats.get(beat);
        return fineOf(of.start()) + (moment - begins[beat]) * fineOf(of.length()) / length;
    }
}
