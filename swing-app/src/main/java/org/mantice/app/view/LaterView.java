package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JPanel;
import org.mantice.app.model.Listening;
import org.mantice.app.model.PlannerModel;

/**
 * The place of a view that is built when it is called for. While it is behind another tab it does not follow the model: it
 * catches up when it comes to the front.
 */
final class LaterView extends JPanel {
    private final transient Supplier<Component> view;
    private transient Optional<Listening> listening = Optional.empty();

    LaterView(Supplier<Component> view) {
        super(new BorderLayout());
        this.view = view;
    }

    boolean isBuilt() {
        return listening.isPresent();
    }

    void build(PlannerModel model) {
        Listening views = model.listeningDuring(() -> add(view.get()));
        listening = Optional.of(views);
        if (!isVisible()) views.pause();
        revalidate();
    }

    void letGo() {
        listening.ifPresent(Listening::letGo);
    }

    /** Tabs and cards hide and show what they hold by this. */
    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        listening.ifPresent(visible ? Listening::resume : Listening::pause);
    }
}
