package org.mantice.app.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import org.junit.jupiter.api.Test;

class ContrastTest {
    /** The range that WCAG 2.2 states for the contrast ratio: 1 to 21. */
    @Test
    void contrastGoesFromOneToTwentyOne() {
        assertThat(Contrast.of(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(Contrast.of(Color.GRAY, Color.GRAY)).isEqualTo(1);
    }

    /** W3C, Understanding WCAG 2.2, technique G18: #767676 is the lightest gray that passes on white. */
    @Test
    void theLightestGrayForTextOnWhiteIsTheWellKnownOne() {
        assertThat(Contrast.of(new Color(0x767676), Color.WHITE)).isGreaterThanOrEqualTo(Contrast.TEXT);
        assertThat(Contrast.of(new Color(0x777777), Color.WHITE)).isLessThan(Contrast.TEXT);
    }
}
