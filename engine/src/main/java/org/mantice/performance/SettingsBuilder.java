package org.mantice.performance;

import java.util.Optional;
import org.mantice.pattern.Accompaniment;
import org.mantice.tune.Loudness;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/** Settings for a tune: what the player chose, what is written, what is assumed; and a record of the last. */
public final class SettingsBuilder {
    private final Tune tune;
    private Optional<Tempo> tempo = Optional.empty();
    private Optional<Integer> times = Optional.empty();
    private Optional<Loudness> loudness = Optional.empty();
    private int transposition;
    private ChordsPlayed chords = ChordsPlayed.USUAL;
    private Accompaniment leftHand = Accompaniment.NONE;

    private SettingsBuilder(Tune tune) {
        this.tune = tune;
    }

    public static SettingsBuilder of(Tune tune) {
        return new SettingsBuilder(tune);
    }

    /** Everything as written or assumed. */
    public static Settings assumed(Tune tune) {
        return of(tune).build();
    }

    /** The tempo at the start; written changes later scale with it. */
    public SettingsBuilder tempo(Tempo chosen) {
        tempo = Optional.of(chosen);
        return this;
    }

    /** Felt beats of the tune's first full measure a minute (dotted quarters in 6/8), 5 to 1,000. */
    public SettingsBuilder beatsPerMinute(int beats) {
        MusicalTime beat = Assumptions.meter(tune).beat();
        if (beats < 5 || beats > 1000)
            throw new IllegalArgumentException("tempo is " + beats + " beats a minute; allowed: 5 to 1000");
        return tempo(new Tempo(beat, 1000 * beats));
    }

    /** 1 to 20. */
    public SettingsBuilder timesThrough(int chosen) {
        times = Optional.of(chosen);
        return this;
    }

    /** Loudness where nothing is written. */
    public SettingsBuilder loudness(Loudness chosen) {
        loudness = Optional.of(chosen);
        return this;
    }

    /** Semitones up, -11 to 11. */
    public SettingsBuilder transposition(int semitones) {
        transposition = semitones;
        return this;
    }

    /** Which chords are played where two are written or one stands in brackets. */
    public SettingsBuilder chords(ChordsPlayed chosen) {
        chords = chosen;
        return this;
    }

    /** Patterns of the left hand, where they are not to follow dance and meter. */
    public SettingsBuilder leftHand(Accompaniment asked) {
        leftHand = asked;
        return this;
    }

    /** @throws TuneException if the times through are to be assumed and the tune is too long to be unrolled */
    public Settings build() {
        return new Settings(
                tempo.orElseGet(() -> Assumptions.startTempo(tune)),
                tempo.isEmpty() && Assumptions.writtenTempo(tune).isEmpty(),
                times.orElseGet(() -> Assumptions.timesThrough(tune)),
                times.isEmpty(),
                loudness.orElse(Assumptions.LOUDNESS),
                loudness.isEmpty() && !Assumptions.writesLoudness(tune),
                transposition,
                chords,
                leftHand);
    }
}
