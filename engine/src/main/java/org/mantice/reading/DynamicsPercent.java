package org.mantice.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.mantice.tune.Loudness;

/**
 * Loudness in numbers: MusicXML counts it in percent of a default forte, which is MIDI velocity 90 (MusicXML 4.0,
 * element sound, attribute dynamics).
 */
public final class DynamicsPercent {
    private static final BigDecimal VELOCITY_OF_ONE_PERCENT = new BigDecimal("0.9");
    /** Velocities of ppp to fff; common practice, no source. */
    private static final int[] VELOCITIES = {16, 32, 48, 64, 80, 96, 112, 127};

    private DynamicsPercent() {}

    /**
     * MIDI velocity 1 to 127.
     *
     * @param percent 0 or more
     */
    public static int velocity(BigDecimal percent) {
        if (percent.signum() < 0) throw new IllegalArgumentException("percent is " + percent + "; allowed: 0 or more");
        BigDecimal velocity = percent.multiply(VELOCITY_OF_ONE_PERCENT).setScale(0, RoundingMode.HALF_UP);
        return velocity.min(BigDecimal.valueOf(127)).max(BigDecimal.ONE).intValueExact();
    }

    /** The mark whose usual velocity is nearest; the softer of two. */
    public static Loudness nearestMark(BigDecimal percent) {
        int velocity = velocity(percent);
        int best = 0;
        for (int i = 1; i < VELOCITIES.length; i++)
            if (Math.abs(VELOCITIES[i] - velocity) < Math.abs(VELOCITIES[best] - velocity)) best = i;
        return Loudness.values()[best];
    }
}
