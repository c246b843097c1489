package org.mantice.app.model;

import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.pattern.Accompaniment;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Settings;
import org.mantice.performance.SettingsBuilder;
import org.mantice.tune.Loudness;
import org.mantice.tune.Tune;

/**
 * What the player says beyond the file; what is empty is taken as written or assumed.
 *
 * @param beatsPerMinute felt beats, 5 to 1,000
 * @param timesThrough 1 to 20
 * @param transposition semitones up, -11 to 11
 * @param loudness where nothing is written
 * @param chords which chords are played where two are written or one stands in brackets
 * @param plans how many plans to find, 1 to 12
 * @param leftHand which patterns are asked for
 */
public record Wishes(
        OptionalInt beatsPerMinute,
        OptionalInt timesThrough,
        int transposition,
        Optional<Loudness> loudness,
        ChordsPlayed chords,
        int plans,
        Accompaniment leftHand) {
    /** How many plans are found when nobody says otherwise. */
    public static final int USUAL_PLANS = 4;

    public static final Wishes NONE = new Wishes(
            OptionalInt.empty(),
            OptionalInt.empty(),
            0,
            Optional.empty(),
            ChordsPlayed.USUAL,
            USUAL_PLANS,
            Accompaniment.NONE);

    public Wishes {
        if (plans < 1 || plans > 12) throw new IllegalArgumentException("plans is " + plans + "; allowed: 1 to 12");
    }

    /**
     * @throws IllegalArgumentException if a value is out of range
     * @throws org.mantice.performance.TuneException if the tune is too long to be unrolled
     */
    public Settings settings(Tune tune) {
        SettingsBuilder builder =
                SettingsBuilder.of(tune).transposition(transposition).chords(chords);
        beatsPerMinute.ifPresent(builder::beatsPerMinute);
        timesThrough.ifPresent(builder::timesThrough);
        loudness.ifPresent(builder::loudness);
        builder.leftHand(leftHand);
        return builder.build();
    }

    public Wishes withTempo(OptionalInt beats) {
        return new Wishes(beats, timesThrough, transposition, loudness, chords, plans, leftHand);
    }

    public Wishes withTimes(OptionalInt times) {
        return new Wishes(beatsPerMinute, times, transposition, loudness, chords, plans, leftHand);
    }

    public Wishes withTransposition(int semitones) {
        return new Wishes(beatsPerMinute, timesThrough, semitones, loudness, chords, plans, leftHand);
    }

    public Wishes withLoudness(Optional<Loudness> chosen) {
        return new Wishes(beatsPerMinute, timesThrough, transposition, chosen, chords, plans, leftHand);
    }

    public Wishes withChords(ChordsPlayed chosen) {
        return new Wishes(beatsPerMinute, timesThrough, transposition, loudness, chosen, plans, leftHand);
    }

    public Wishes withPlans(int count) {
        return new Wishes(beatsPerMinute, timesThrough, transposition, loudness, chords, count, leftHand);
    }

    public Wishes withLeftHand(Accompaniment asked) {
        return new Wishes(beatsPerMinute, timesThrough, transposition, loudness, chords, plans, asked);
    }
}
