package org.mantice.tune;

import java.math.BigDecimal;

/**
 * A metronome mark.
 *
 * @param beat the note value counted
 * @param milliBeatsPerMinute thousandths of a beat a minute, 5,000 to 1,000,000 (5 to 1,000 beats a minute)
 */
public record Tempo(MusicalTime beat, int milliBeatsPerMinute) {
    public Tempo {
        if (!beat.isPositive()) throw new IllegalArgumentException("beat is " + beat + "; allowed: above 0");
        if (milliBeatsPerMinute < 5_000 || milliBeatsPerMinute > 1_000_000)
            throw new IllegalArgumentException(
                    "tempo is " + BigDecimal.valueOf(milliBeatsPerMinute, 3) + " beats a minute; allowed: 5 to 1000");
    }

    public static Tempo quarters(int beatsPerMinute) {
        return new Tempo(MusicalTime.QUARTER, Math.multiplyExact(beatsPerMinute, 1000));
    }

    /** Exact microseconds of a whole note, as a fraction. */
    public MusicalTime microsPerWholeNote() {
        return MusicalTime.of(60_000_000_000L, milliBeatsPerMinute).dividedBy(beat);
    }

    /** As {@code "1/4=96"}. */
    @Override
    public String toString() {
        return beat + "="
                + BigDecimal.valueOf(milliBeatsPerMinute, 3)
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
