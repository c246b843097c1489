package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordSpot;

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

    /** What can be done on the chord line with a key of its own. */
    private static final Map<String, Command> CHORD_KEYS = Map.of(
            "DELETE", Command.REMOVE_CHORD,
            "BACK_SPACE", Command.REMOVE_CHORD,
            "alt LEFT", Command.CHORD_EARLIER,
            "alt RIGHT", Command.CHORD_LATER);

    private final SheetView view;
    private final TuneEditor editor;
    private final SheetMenu menu;
    private Optional<ChordSpot> dragged = Optional.empty();

    SheetGestures(SheetView view, TuneEditor editor) {
        this.view = view;
        this.editor = editor;
        this.menu = new SheetMenu(view);
    }

    void install() {
        view.addMouseListener(this);
        view.addMouseMotionListener(this);
        view.addMouseWheelListener(this);
        view.addFocusListener(this);
        view.addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                typed(event);
            }
        });
        KEYS.forEach((key, step) -> onKey(key, () -> view.pointer().step(step)));
        CHORD_KEYS.forEach((key, command) -> onKey(key, () -> view.perform(command)));
        onKey("ENTER", () -> {
            if (editor.selected().isPresent()) view.typing().open("");
            else view.perform(Command.SHOW_WHY);
        });
        onKey("shift F10", menu::showAtSelection);
        onKey("CONTEXT_MENU", menu::showAtSelection);
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

    /** A letter that a chord can begin with begins one. */
    private void typed(KeyEvent event) {
        char letter = Character.toUpperCase(event.getKeyChar());
        int held = InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;
        boolean begins = letter >= 'A' && letter <= 'H' || letter == 'N';
        if (!begins || (event.getModifiersEx() & held) != 0 || editor.selected().isEmpty()) return;
        view.typing().open(String.valueOf(letter));
        event.consume();
    }

    @Override
    public void mousePressed(MouseEvent event) {
        dragged = Optional.empty();
        if (event.isPopupTrigger()) menu.showAt(event);
        else if (SwingUtilities.isLeftMouseButton(event)) {
            view.pointer().pointAt(event);
            dragged = chordAt(event).filter(spot -> editor.chordAt(spot.place()).isPresent());
        }
    }

    private Optional<ChordSpot> chordAt(MouseEvent event) {
        return view.pointer()
                .at(event.getX(), event.getY())
                .flatMap(stop -> stop instanceof SheetWalk.Chord chord
                        ? Optional.of(chord.target().spot())
                        : Optional.empty());
    }

    /** The frame goes with the mouse, and says where the chord would come to stand. */
    @Override
    public void mouseDragged(MouseEvent event) {
        if (dragged.isPresent()) chordAt(event).ifPresent(spot -> editor.select(Optional.of(spot)));
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (event.isPopupTrigger()) menu.showAt(event);
        Optional<ChordSpot> from = dragged;
        dragged = Optional.empty();
        if (from.isPresent() && editor.selected().filter(from.get()::equals).isEmpty())
            chordAt(event).ifPresent(to -> view.move(from.get().place(), to.place()));
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (!SwingUtilities.isLeftMouseButton(event) || event.getClickCount() != 2) return;
        if (chordAt(event).isPresent()) view.typing().open("");
        else view.pointer().chooseAt(event);
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
