package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** Mouse and keys of the sheet. */
final class SheetGestures extends MouseAdapter implements FocusListener {
    private static final Map<String, SheetWalk.Step> KEYS = Map.of(
            "LEFT", SheetWalk.Step.LEFT,
            "RIGHT", SheetWalk.Step.RIGHT,
            "UP", SheetWalk.Step.UP,
            "DOWN", SheetWalk.Step.DOWN,
            "HOME", SheetWalk.Step.FIRST,
            "END", SheetWalk.Step.LAST,
            "PAGE_UP", SheetWalk.Step.LINE_UP,
            "PAGE_DOWN", SheetWalk.Step.LINE_DOWN);

    private final SheetView view;

    SheetGestures(SheetView view) {
        this.view = view;
    }

    void install() {
        view.addMouseListener(this);
        view.addMouseWheelListener(this);
        view.addFocusListener(this);
        KEYS.forEach((key, step) -> onKey(key, () -> view.step(step)));
        onKey("ENTER", () -> view.perform(Command.SHOW_WHY));
    }

    private void onKey(String key, Runnable work) {
        view.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        view.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    @Override
    public void mousePressed(MouseEvent event) {
        if (SwingUtilities.isLeftMouseButton(event)) view.pointAt(event);
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (SwingUtilities.isLeftMouseButton(event) && event.getClickCount() == 2) view.chooseAt(event);
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if (event.isControlDown()) view.perform(event.getWheelRotation() < 0 ? Command.LARGER : Command.SMALLER);
        else if (view.getParent() != null)
            view.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(view, event, view.getParent()));
    }

    @Override
    public void focusGained(FocusEvent event) {
        view.repaint();
    }

    @Override
    public void focusLost(FocusEvent event) {
        view.repaint();
    }
}
