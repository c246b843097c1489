package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.mantice.app.look.Looks;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.ChordText;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.fault.ManticeException;

/**
 * A chord symbol being typed in its place on the sheet. Enter takes it; Tab and Shift+Tab take it and go on; Escape leaves
 * all as it was. A text that is no chord keeps the field open and says so below it.
 */
final class ChordField extends JPanel {
    private static final double WIDTH = 13;
    private static final double LETTERS = 1.75;
    private static final int MESSAGE_WIDTH = 330;

    private final transient TuneEditor editor;
    private final transient Words words;
    private final transient Host host;
    private final JTextField field = new JTextField();
    private final JLabel message = new JLabel();
    private transient Optional<ChordTarget> at = Optional.empty();
    private String before = "";
    private String said = "";

    /** The sheet, as far as the field needs it. */
    interface Host {
        /** Pixels between two staff lines. */
        double space();

        /** In words. */
        String place(ChordTarget target);

        /** Opens the field at the next place, or the one before. @return whether there is one */
        boolean goOn(int step);
    }

    ChordField(TuneEditor editor, Words words, Host host) {
        super(null);
        this.editor = editor;
        this.words = words;
        this.host = host;
        field.setFocusTraversalKeysEnabled(false);
        // Else the letter that opened the field would be selected, and the next one take its place.
        field.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
        onKey("ENTER", () -> take(0));
        onKey("TAB", () -> take(1));
        onKey("shift TAB", () -> take(-1));
        onKey("ESCAPE", this::shut);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) leave();
            }
        });
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                say("");
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                say("");
            }

            @Override
            public void changedUpdate(DocumentEvent event) {}
        });
        field.getAccessibleContext().setAccessibleName(words.text("edit.chord"));
        message.setOpaque(true);
        message.setLabelFor(field);
        add(field);
        add(message);
        setOpaque(false);
        setVisible(false);
    }

    private void onKey(String key, Runnable work) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    boolean isOpen() {
        return at.isPresent();
    }

    /** The place that is typed in. */
    Optional<ChordTarget> target() {
        return at;
    }

    JTextField field() {
        return field;
    }

    /** What is wrong with what was typed; empty if nothing is. */
    String said() {
        return said;
    }

    /** @param typed a first letter in place of what stands there; empty to go on with that */
    void open(ChordTarget target, String typed) {
        at = Optional.of(target);
        before = editor.chordAt(target.spot().place()).map(ChordText::of).orElse("");
        field.setText(typed.isEmpty() ? before : typed);
        if (typed.isEmpty()) field.selectAll();
        field.getAccessibleContext().setAccessibleName(words.text("edit.chord.name", host.place(target)));
        say("");
        setVisible(true);
        place(target);
        field.requestFocusInWindow();
    }

    /** Puts the field where its place lies now. */
    void place(ChordTarget target) {
        at = Optional.of(target);
        field.setFont(getFont().deriveFont((float) (LETTERS * host.space())));
        Dimension wanted = field.getPreferredSize();
        Dimension below = said.isEmpty() ? new Dimension() : message.getPreferredSize();
        int width = Math.max((int) (WIDTH * host.space()), wanted.width);
        field.setBounds(0, 0, width, wanted.height);
        message.setBounds(0, wanted.height, below.width, below.height);
        Rectangle there = target.bounds().getBounds();
        int all = Math.max(width, below.width);
        int room = getParent() == null ? all : getParent().getWidth();
        int x = Math.max(0, Math.min(there.x, room - all));
        int y = Math.max(0, there.y + there.height / 2 - wanted.height / 2);
        setBounds(x, y, all, wanted.height + below.height);
        repaint();
    }

    private void say(String text) {
        if (text.equals(said)) return;
        said = text;
        message.getAccessibleContext().setAccessibleName(text);
        message.setText(
                text.isEmpty()
                        ? ""
                        : "<html><body style='width:" + UIScale.scale(MESSAGE_WIDTH) + "px'>"
                                + text.replace("&", "&amp;").replace("<", "&lt;"));
        message.setForeground(Looks.colour("messageText"));
        message.setBackground(Looks.colour("message"));
        message.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, UIScale.scale(4), 0, 0, Looks.colour("messageEdge")),
                BorderFactory.createEmptyBorder(
                        UIScale.scale(3), UIScale.scale(6), UIScale.scale(3), UIScale.scale(6))));
        field.getAccessibleContext().setAccessibleDescription(text);
        at.ifPresent(this::place);
    }

    /** The focus stays in the field where it goes on. */
    private void take(int step) {
        if (taken() && (step == 0 || !host.goOn(step))) shut();
    }

    /** Whether what is typed is now on the sheet, or was there before. */
    private boolean taken() {
        String text = field.getText().strip();
        if (at.isEmpty() || text.equals(before)) return true;
        try {
            editor.setChord(at.get().spot().place(), text);
            return true;
        } catch (IllegalArgumentException e) {
            say(words.text("edit.chord.none", text));
        } catch (ManticeException e) {
            say(new MusicWords(words).trouble(e));
        }
        return false;
    }

    /** The player went elsewhere: what can be taken is, the rest was not meant. */
    private void leave() {
        if (!isOpen()) return;
        taken();
        shut();
    }

    private void shut() {
        at = Optional.empty();
        // Before it is hidden, so that the focus goes nowhere else.
        if (field.isFocusOwner() && getParent() != null) getParent().requestFocusInWindow();
        setVisible(false);
    }
}
