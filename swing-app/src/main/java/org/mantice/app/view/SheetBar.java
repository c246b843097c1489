package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.Action;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;

/** Above the sheet: which measures it shows, and which strips. */
public final class SheetBar extends JPanel {
    private final Map<Strip, JCheckBox> strips = new EnumMap<>(Strip.class);

    public SheetBar(PlannerModel model, Words words, Actions actions) {
        super(new WrappingLayout(UIScale.scale(6)));
        ReadingPicker readings = new ReadingPicker(model, words);
        JLabel label = new JLabel(words.text("sheet.reading"));
        label.setLabelFor(readings);
        add(label);
        add(readings);
        for (Strip strip : Strip.values()) {
            JCheckBox box = new JCheckBox(words.of("sheet", strip));
            Action action = actions.get(command(strip));
            box.setToolTipText((String) action.getValue(Action.SHORT_DESCRIPTION));
            box.getAccessibleContext().setAccessibleName(words.text("sheet.show", words.of("sheet", strip)));
            box.addActionListener(event -> model.show(strip, box.isSelected()));
            strips.put(strip, box);
            add(box);
        }
        getAccessibleContext().setAccessibleName(words.text("sheet.bar"));
        model.addListener(this::show);
        show(model.state());
    }

    private static Command command(Strip strip) {
        return switch (strip) {
            case FINGERS -> Command.SHOW_FINGERS;
            case REGISTERS -> Command.SHOW_REGISTERS;
            case BELLOWS -> Command.SHOW_BELLOWS;
            case BUTTONS -> Command.SHOW_BUTTONS;
        };
    }

    private void show(PlannerState state) {
        strips.forEach((strip, box) -> box.setSelected(state.strips().contains(strip)));
    }
}
