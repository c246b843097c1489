package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.function.Supplier;
import javax.swing.JPanel;

/** The place of a view that is built when it is called for. */
final class LaterView extends JPanel {
    private final transient Supplier<Component> view;
    private boolean built;

    LaterView(Supplier<Component> view) {
        super(new BorderLayout());
        this.view = view;
    }

    boolean isBuilt() {
        return built;
    }

    void build() {
        built = true;
        add(view.get());
        revalidate();
    }
}
