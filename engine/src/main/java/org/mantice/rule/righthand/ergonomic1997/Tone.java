package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerSpans;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandPlaces;

/**
 * A key and its finger. The model speaks of melodies; of a chord its highest key counts.
 *
 * @param finger 1 to 5
 */
record Tone(int key, int finger) {
    static Tone of(FingerMoment moment) {
        return new Tone(moment.highestKey(), moment.highestFinger());
    }

    static List<Tone> of(FingerPair pair) {
        return List.of(of(pair.from()), of(pair.to()));
    }

    static List<Tone> of(FingerTriple triple) {
        return List.of(of(triple.before()), of(triple.middle()), of(triple.after()));
    }

    boolean isBlack() {
        return HandPlaces.isBlack(key);
    }

    /** Semitones from the lower finger's key to the higher finger's. */
    int span(Tone other) {
        return finger < other.finger ? other.key - key : key - other.key;
    }

    /** The published limits for the two fingers; a finger with itself spans nothing. */
    FingerSpans.Row row(Tone other) {
        if (finger == other.finger) return new FingerSpans.Row(0, 0, 0, 0, 0, 0);
        return FingerSpans.published(Math.min(finger, other.finger), Math.max(finger, other.finger));
    }

    /** Semitones by which the span misses the comfortable range. */
    int discomfort(Tone other) {
        int span = span(other);
        FingerSpans.Row row = row(other);
        return Math.max(0, Math.max(span - row.maxComfortable(), row.minComfortable() - span));
    }

    boolean isPractical(Tone other) {
        int span = span(other);
        FingerSpans.Row row = row(other);
        return span >= row.minPractical() && span <= row.maxPractical();
    }

    /** One of the two is the thumb. */
    boolean hasThumb(Tone other) {
        return finger == 1 || other.finger == 1;
    }
}
