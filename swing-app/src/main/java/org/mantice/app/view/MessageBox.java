package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.mantice.app.look.Looks;

/** A message that blocks nothing: a title, text that can be selected and copied, buttons. Not seen until it is shown. */
final class MessageBox extends JPanel {
    private static final int MOST_ROWS = 7;

    private final JLabel title = new JLabel();
    private final Text text = new Text();
    private final JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));

    /** @param name of the box while it is empty */
    MessageBox(String name) {
        super(new BorderLayout());
        text.getAccessibleContext().setAccessibleName(name);
        getAccessibleContext().setAccessibleName(name);
        title.setLabelFor(text);
        JScrollPane scroll = new JScrollPane(text);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        buttons.setOpaque(false);
        JPanel beside = new JPanel(new BorderLayout());
        beside.setOpaque(false);
        beside.add(buttons, BorderLayout.PAGE_END);
        add(title, BorderLayout.PAGE_START);
        add(scroll);
        add(beside, BorderLayout.LINE_END);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                text.revalidate();
            }
        });
        setVisible(false);
        dress();
    }

    /** Shows a message in place of the one before. */
    void show(String heading, String lines, List<? extends Action> actions) {
        title.setText(heading);
        text.setText(lines);
        text.setCaretPosition(0);
        text.getAccessibleContext().setAccessibleName(heading);
        getAccessibleContext().setAccessibleName(heading);
        getAccessibleContext().setAccessibleDescription(lines);
        buttons.removeAll();
        for (Action action : actions) {
            JButton button = MenuLetters.leave(new JButton(action));
            button.getAccessibleContext().setAccessibleName(button.getText());
            buttons.add(button);
        }
        buttons.setVisible(!actions.isEmpty());
        setVisible(true);
        revalidate();
        repaint();
    }

    String text() {
        return text.getText();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        // Null while the parent's constructor runs.
        if (text != null) dress();
    }

    private void dress() {
        setBackground(Looks.colour("message"));
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(
                        UIScale.scale(1),
                        UIScale.scale(6),
                        UIScale.scale(1),
                        UIScale.scale(1),
                        Looks.colour("messageEdge")),
                BorderFactory.createEmptyBorder(
                        UIScale.scale(6), UIScale.scale(10), UIScale.scale(4), UIScale.scale(6))));
        title.setForeground(Looks.colour("messageText"));
        title.setFont(new JLabel().getFont().deriveFont(Font.BOLD));
        text.setForeground(Looks.colour("messageText"));
        text.setCaretColor(Looks.colour("messageText"));
    }

    /** As high as its lines need at the width there is, up to a few rows; Tab leaves it. */
    private static final class Text extends JTextArea {
        Text() {
            setEditable(false);
            setLineWrap(true);
            setWrapStyleWord(true);
            setOpaque(false);
            setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
            setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            Dimension all = getPreferredSize();
            return new Dimension(all.width, Math.min(all.height, MOST_ROWS * getRowHeight()));
        }
    }
}
