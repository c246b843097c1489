package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ButtonNamesTest {
    @Test
    void everyButtonOfAFullBassIsFoundByItsName() {
        for (BassButton button : StradellaBass.ofSize(120).allButtons())
            assertThat(ButtonNames.find(ButtonNames.of(button))).contains(button);
    }

    @Test
    void lettersMayBeLargeOrSmall() {
        assertThat(ButtonNames.find(" eb MINOR ")).contains(new BassButton(BassRow.MINOR, -3));
        assertThat(ButtonNames.find("H bass")).isEmpty();
        assertThat(ButtonNames.find("")).isEmpty();
    }

    @Test
    void severalButtonsAreNamedWithAPlusBetweenThem() {
        assertThat(ButtonNames.all("C bass + C major"))
                .containsExactlyInAnyOrder(new BassButton(BassRow.BASS, 0), new BassButton(BassRow.MAJOR, 0));
        assertThatThrownBy(() -> ButtonNames.all("C bass + C miner"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("button is C miner; allowed: as C bass");
    }
}
