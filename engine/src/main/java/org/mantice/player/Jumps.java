package org.mantice.player;

/**
 * How fast the left hand moves, after Fitts: time = start + perBit × log2(distance / width + 1). The defaults are
 * estimates: Fitts' targets were seen, bass buttons are not.
 *
 * @param startMillis 0 to 1,000
 * @param millisPerBit 1 to 1,000
 */
public record Jumps(int startMillis, int millisPerBit) {
    public static final Jumps ESTIMATE = new Jumps(60, 120);

    public Jumps {
        if (startMillis < 0 || startMillis > 1_000)
            throw new IllegalArgumentException("startMillis is " + startMillis + "; allowed: 0 to 1000");
        if (millisPerBit < 1 || millisPerBit > 1_000)
            throw new IllegalArgumentException("millisPerBit is " + millisPerBit + "; allowed: 1 to 1000");
    }
}
