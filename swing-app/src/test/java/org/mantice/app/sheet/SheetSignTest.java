package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SheetSignTest {
    @ParameterizedTest
    @EnumSource
    void everySignKeepsInsideItsRoom(SheetSign sign) {
        Rectangle2D room =
                new Rectangle2D.Double(-SheetSign.WIDTH / 2, -SheetSign.HEIGHT / 2, SheetSign.WIDTH, SheetSign.HEIGHT);

        assertThat(room.contains(sign.bounds())).isTrue();
    }
}
