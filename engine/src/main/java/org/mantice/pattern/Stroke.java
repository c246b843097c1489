package org.mantice.pattern;

import java.util.Optional;
import org.mantice.tune.MusicalTime;

/**
 * One stroke of a pattern.
 *
 * @param at from the start of the measure or group, counted in the meter's unit: 1 is a quarter in 3/4, an eighth in
 *     6/8; 0 to 127
 * @param bass what the bass plays; there unless {@code part} is the chord alone
 * @param soundsPerMille share of its time until the next stroke during which it sounds, 50 to 1,000
 * @param stressed played with more weight than the others; shown, not priced
 * @param onward repeated on every unit after it to the end of its measure or group
 */
public record Stroke(
        MusicalTime at, Part part, Optional<Bass> bass, int soundsPerMille, boolean stressed, boolean onward) {
    /** Which buttons of a chord are struck. */
    public enum Part {
        BASS,
        CHORD,
        /** Bass and chord together. */
        BOTH
    }

    /** What the bass plays. */
    public enum Bass {
        /** The root, or the note under a slash. */
        ROOT,
        /** Root and another bass of the chord by turns while it lasts: the fifth, or for colour the third. */
        TURN,
        /** The fifth; where none is in reach, the root. */
        FIFTH,
        /** The third, most often a counterbass; where none is in reach, the fifth. */
        THIRD,
        /** A step on the way to the bass of the next chord. */
        RUN
    }

    static final MusicalTime LAST = MusicalTime.of(128, 1);

    public Stroke {
        if (at.isBefore(MusicalTime.ZERO) || !at.isBefore(LAST))
            throw new IllegalArgumentException("at is " + at + "; allowed: from 0 to below " + LAST);
        if (at.denominator() > 16)
            throw new IllegalArgumentException("at is " + at + "; allowed: whole units down to sixteenths of one");
        if (soundsPerMille < 50 || soundsPerMille > 1_000)
            throw new IllegalArgumentException("soundsPerMille is " + soundsPerMille + "; allowed: 50 to 1000");
        if (part == Part.CHORD && bass.isPresent())
            throw new IllegalArgumentException("bass is " + bass.get() + "; allowed: none in a stroke of the chord");
        if (part != Part.CHORD && bass.isEmpty())
            throw new IllegalArgumentException("bass is not there; allowed: one in every stroke of the bass");
        if (part == Part.BOTH && !bass.equals(Optional.of(Bass.ROOT)))
            throw new IllegalArgumentException(
                    "bass is " + bass.orElseThrow() + "; allowed: ROOT together with the chord");
    }

    boolean isRun() {
        return bass.equals(Optional.of(Bass.RUN));
    }
}
