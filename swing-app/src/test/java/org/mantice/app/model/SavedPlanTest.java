package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Settings;
import org.mantice.tune.Loudness;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class SavedPlanTest {
    private static final Tune PLAIN = SmallTunes.WALTZ;
    private static final Tune MARKED = Tunes.in("6/8")
            .dance("jig")
            .melody("!tempo=133 !p C4 q., E4 q. | G4 q., E4 q. | C4 h.")
            .tune();

    private static void comesBack(Tune tune, Wishes wishes) {
        Settings settings = wishes.settings(tune);

        Wishes back = SavedPlan.wishes(tune, settings, wishes.plans());

        assertThat(back.settings(tune)).isEqualTo(settings);
        assertThat(back.plans()).isEqualTo(wishes.plans());
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void wishesThatComeBackGiveTheSameSettings(boolean marked) {
        Tune tune = marked ? MARKED : PLAIN;
        comesBack(tune, Wishes.NONE);
        comesBack(tune, Wishes.NONE.withPlans(7).withTransposition(-5));
        comesBack(tune, Wishes.NONE.withTempo(OptionalInt.of(97)));
        comesBack(tune, Wishes.NONE.withTimes(OptionalInt.of(1)));
        comesBack(tune, Wishes.NONE.withTimes(OptionalInt.of(2)));
        comesBack(tune, Wishes.NONE.withLoudness(Optional.of(Loudness.FF)));
        comesBack(tune, Wishes.NONE.withLoudness(Optional.of(Loudness.MF)));
        comesBack(tune, Wishes.NONE.withChords(new ChordsPlayed(ChordsPlayed.Alternates.ALWAYS, false)));
        comesBack(
                tune,
                Wishes.NONE
                        .withTempo(OptionalInt.of(60))
                        .withTimes(OptionalInt.of(3))
                        .withLoudness(Optional.of(Loudness.PP)));
    }

    @Test
    void whatWasAssumedIsNoWish() {
        Wishes back = SavedPlan.wishes(PLAIN, Wishes.NONE.settings(PLAIN), Wishes.USUAL_PLANS);

        assertThat(back).isEqualTo(Wishes.NONE);
    }

    @Test
    void whatWasWishedStaysAWishEvenIfItIsWhatWouldBeAssumed() {
        int assumed = Wishes.NONE.settings(PLAIN).tempo().milliBeatsPerMinute() / 1_000;
        Wishes wishes = Wishes.NONE.withTempo(OptionalInt.of(assumed));

        assertThat(SavedPlan.wishes(PLAIN, wishes.settings(PLAIN), Wishes.USUAL_PLANS))
                .isEqualTo(wishes);
    }

    @Test
    void aTempoThatNobodyCanWishIsRefused() {
        Settings usual = Wishes.NONE.settings(PLAIN);
        Settings odd = usual.withTempo(new Tempo(MusicalTime.QUARTER, 90_500));

        assertThatThrownBy(() -> SavedPlan.wishes(PLAIN, odd, Wishes.USUAL_PLANS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("90.5");
    }
}
