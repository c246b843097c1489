package org.mantice.app.view;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.mantice.app.model.ButtonMapModel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.Words;

/** The bass buttons as they lie on the instrument, with what is pressed at the selected place. */
public final class ButtonMapView extends JPanel {
    private final transient Words words;
    private final WrappedText heading;
    private final ButtonMapCanvas canvas;
    private final WrappedText legend;
    private transient Optional<ButtonMapModel> shown = Optional.empty();

    public ButtonMapView(PlannerModel model, Words words) {
        super(new BorderLayout());
        this.words = words;
        this.heading = new WrappedText("", words.text("map.pressedHere"));
        // The map says the same to screen readers, and has the arrow keys.
        heading.setFocusable(false);
        this.canvas = new ButtonMapCanvas(words);
        this.legend = new WrappedText("", words.text("map.howToRead"));
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(heading, BorderLayout.PAGE_START);
        add(scroll);
        add(legend, BorderLayout.PAGE_END);
        getAccessibleContext().setAccessibleName(words.text("map.title"));
        model.addListener(this::show);
        show(model.state());
    }

    private void show(PlannerState state) {
        ButtonMapModel map = ButtonMapModel.of(state, words);
        if (shown.filter(map::equals).isPresent()) return;
        shown = Optional.of(map);
        heading.setText(map.heading());
        legend.setText(map.legend());
        canvas.show(map);
    }
}
