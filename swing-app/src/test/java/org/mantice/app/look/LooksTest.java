package org.mantice.app.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import javax.swing.plaf.metal.MetalLookAndFeel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.sheet.SheetColours;

class LooksTest {
    private LookAndFeel before;

    @BeforeEach
    void rememberLook() {
        before = UIManager.getLookAndFeel();
    }

    @AfterEach
    void putBack() throws Exception {
        UIManager.setLookAndFeel(before);
    }

    @Test
    void switchingChangesTheColoursOfTheSheet() {
        Looks.use(false);
        SheetColours light = Looks.sheetColours();

        Looks.use(true);

        assertThat(Looks.isDark()).isTrue();
        assertThat(Looks.sheetColours().paper()).isNotEqualTo(light.paper());
    }

    @Test
    void aForeignLookGetsTheColoursOfOurLightOne() throws Exception {
        Looks.use(false);
        SheetColours light = Looks.sheetColours();

        UIManager.setLookAndFeel(new MetalLookAndFeel());

        assertThat(UIManager.getColor("Mantice.paper")).isNull();
        assertThat(Looks.sheetColours()).isEqualTo(light);
    }

    @Test
    void anUnknownColourIsRefusedByName() {
        assertThatThrownBy(() -> Looks.colour("sky"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sky");
    }
}
