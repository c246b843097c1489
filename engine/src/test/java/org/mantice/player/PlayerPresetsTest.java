package org.mantice.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PlayerPresetsTest {
    @Test
    void hands_come_from_small_to_large() {
        assertThat(PlayerPresets.all())
                .extracting(Player::id)
                .containsExactly("small-hand", "medium-hand", "large-hand");
        assertThat(PlayerPresets.all())
                .extracting(Player::handSpanTenths)
                .isSorted()
                .allMatch(span -> span >= 80);
    }

    @Test
    void no_preset_turns_in_a_held_note_or_weighs_a_rule() {
        assertThat(PlayerPresets.all()).allSatisfy(player -> {
            assertThat(player.mayTurnInHeldNote()).isFalse();
            assertThat(player.taste()).isEqualTo(Taste.PLAIN);
        });
    }

    @Test
    void an_unknown_preset_is_refused_with_those_that_there_are() {
        assertThat(PlayerPresets.find("giant")).isEmpty();
        assertThatThrownBy(() -> PlayerPresets.get("giant"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("player preset is 'giant'; allowed: small-hand, medium-hand, large-hand");
    }
}
