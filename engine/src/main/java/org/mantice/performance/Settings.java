package org.mantice.performance;

import org.mantice.pattern.Accompaniment;
import org.mantice.tune.Loudness;
import org.mantice.tune.Tempo;

/**
 * What the file did not say, or the player wants otherwise. What is assumed is shown as assumed wherever a figure
 * depends on it.
 *
 * @param tempo at the start; written changes later scale with it
 * @param timesThrough how often the whole tune is played, 1 to 20
 * @param loudness where nothing is written
 * @param transposition semitones up, -11 to 11
 * @param chords which chords are played where two are written or one stands in brackets
 * @param leftHand which patterns are asked for; measures as in the written tune
 */
public record Settings(
        Tempo tempo,
        boolean tempoAssumed,
        int timesThrough,
        boolean timesAssumed,
        Loudness loudness,
        boolean loudnessAssumed,
        int transposition,
        ChordsPlayed chords,
        Accompaniment leftHand) {
    public Settings {
        if (timesThrough < 1 || timesThrough > 20)
            throw new IllegalArgumentException("timesThrough is " + timesThrough + "; allowed: 1 to 20");
        if (transposition < -11 || transposition > 11)
            throw new IllegalArgumentException("transposition is " + transposition + "; allowed: -11 to 11");
    }

    /** The same at another tempo, which is as much assumed as the one before. */
    public Settings withTempo(Tempo other) {
        return new Settings(
                other,
                tempoAssumed,
                timesThrough,
                timesAssumed,
                loudness,
                loudnessAssumed,
                transposition,
                chords,
                leftHand);
    }

    /** The same with a chosen loudness where nothing is written. */
    public Settings withLoudness(Loudness chosen) {
        return new Settings(
                tempo, tempoAssumed, timesThrough, timesAssumed, chosen, false, transposition, chords, leftHand);
    }

    /** The same with other patterns. */
    public Settings withLeftHand(Accompaniment asked) {
        return new Settings(
                tempo,
                tempoAssumed,
                timesThrough,
                timesAssumed,
                loudness,
                loudnessAssumed,
                transposition,
                chords,
                asked);
    }
}
