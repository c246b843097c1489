package org.mantice.app.model;

import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.performance.Settings;
import org.mantice.tune.Tune;

/** From the settings of a saved plan back to what the player wished. */
final class SavedPlan {
    private SavedPlan() {}

    /**
     * Wishes under which the tune gets the same settings: what is not as written or assumed was wished.
     *
     * @throws IllegalArgumentException if the tempo is no whole number of felt beats
     * @throws org.mantice.performance.TuneException if the tune is too long to be unrolled
     */
    static Wishes wishes(Tune tune, Settings saved, int plans) {
        Wishes none = Wishes.NONE
                .withPlans(plans)
                .withTransposition(saved.transposition())
                .withChords(saved.chords())
                .withLeftHand(saved.leftHand());
        Settings usual = none.settings(tune);
        Wishes wishes = none;
        if (saved.timesThrough() != usual.timesThrough() || saved.timesAssumed() != usual.timesAssumed())
            wishes = wishes.withTimes(OptionalInt.of(saved.timesThrough()));
        if (saved.loudness() != usual.loudness() || saved.loudnessAssumed() != usual.loudnessAssumed())
            wishes = wishes.withLoudness(Optional.of(saved.loudness()));
        if (saved.tempo().equals(usual.tempo()) && saved.tempoAssumed() == usual.tempoAssumed()) return wishes;
        Wishes timed = wishes.withTempo(OptionalInt.of(saved.tempo().milliBeatsPerMinute() / 1_000));
        if (!timed.settings(tune).tempo().equals(saved.tempo()))
            throw new IllegalArgumentException("tempo of the saved plan is " + saved.tempo()
                    + "; allowed: a whole number of the tune's beats, as "
                    + timed.settings(tune).tempo());
        return timed;
    }
}
