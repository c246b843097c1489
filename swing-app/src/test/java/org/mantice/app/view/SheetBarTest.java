package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.JCheckBox;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.States;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;

class SheetBarTest {
    private static final Words ENGLISH = Words.of(Locale.ENGLISH);

    private final PlannerModel model = new PlannerModel(
            States.packs(), new DirectBackground(), States.nothing().setup());

    private static <T extends Component> List<T> of(SheetBar bar, Class<T> kind) {
        return Arrays.stream(bar.getComponents())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void everyStripCanBeHiddenAndShown() {
        SheetBar bar = new SheetBar(model, ENGLISH, new Actions(ENGLISH));
        List<JCheckBox> boxes = of(bar, JCheckBox.class);

        assertThat(boxes).hasSize(4).allMatch(JCheckBox::isSelected);
        boxes.get(2).doClick();

        assertThat(model.state().strips()).containsExactly(Strip.FINGERS, Strip.REGISTERS, Strip.BUTTONS);
        model.show(Strip.BELLOWS, true);
        assertThat(boxes.get(2).isSelected()).isTrue();
    }

    @Test
    void readingsAreThoseOfTheTune() {
        ReadingPicker picker = new ReadingPicker(model, ENGLISH);
        assertThat(picker.isEnabled()).isFalse();

        model.open(States.open("lanterns-at-the-weir"));

        assertThat(picker.isEnabled()).isTrue();
        assertThat(picker.getItemCount())
                .isEqualTo(2
                        + Reading.sweeps(model.state().performance().orElseThrow())
                                .size());
        assertThat(picker.name(picker.getItemAt(0))).isEqualTo("as written");
        assertThat(picker.name(picker.getItemAt(1))).matches("time 1: measures \\d+–\\d+");
        assertThat(picker.name(picker.getItemAt(picker.getItemCount() - 1))).isEqualTo("as played");
    }

    @Test
    void pickingAReadingShowsIt() {
        ReadingPicker picker = new ReadingPicker(model, ENGLISH);
        model.open(States.open("lanterns-at-the-weir"));

        picker.setSelectedIndex(2);
        assertThat(model.state().reading()).isEqualTo(new Reading.OneSweep(1));

        model.setReading(new Reading.AsPlayed());
        assertThat(picker.getSelectedItem()).isEqualTo(new Reading.AsPlayed());
    }

    @Test
    void everythingHasAName() {
        SheetBar bar = new SheetBar(model, ENGLISH, new Actions(ENGLISH));

        for (Component component : bar.getComponents())
            if (component.isFocusable())
                assertThat(component.getAccessibleContext().getAccessibleName()).isNotBlank();
    }
}
