package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.mantice.app.words.Words;

/** Above the sheet: what it shows, as music or as a table, how large. */
final class SheetHead extends JPanel {
    private final transient Words words;
    private final SheetBar bar;
    private final JPanel kind;
    private final JLabel zoom = new JLabel();

    SheetHead(SheetBar bar, Words words, Actions actions) {
        super(new BorderLayout());
        this.words = words;
        this.bar = bar;
        this.kind = new JPanel(new WrappingLayout(UIScale.scale(4)));
        kind.add(toggle(actions.get(Command.SHOW_SHEET)));
        kind.add(toggle(actions.get(Command.SHOW_TABLE)));
        kind.add(sign("−", actions.get(Command.SMALLER)));
        kind.add(zoom);
        kind.add(sign("+", actions.get(Command.LARGER)));
        add(bar);
        add(kind, BorderLayout.LINE_END);
        getAccessibleContext().setAccessibleName(words.text("window.sheetHead"));
    }

    /** Beside each other where there is room, else one above the other. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (!other) return;
        boolean room = lineWidth(bar) + lineWidth(kind) <= width;
        add(kind, room ? BorderLayout.LINE_END : BorderLayout.PAGE_END);
        bar.revalidate();
        kind.revalidate();
    }

    private static int lineWidth(Container line) {
        int width = UIScale.scale(16);
        for (Component each : line.getComponents()) width += each.getPreferredSize().width + UIScale.scale(6);
        return width;
    }

    private static JToggleButton toggle(Action action) {
        JToggleButton button = MenuLetters.leave(new JToggleButton(action));
        button.getAccessibleContext().setAccessibleName(button.getText());
        return button;
    }

    private static JButton sign(String sign, Action action) {
        JButton button = MenuLetters.leave(new JButton(action));
        button.setHideActionText(true);
        button.setText(sign);
        button.getAccessibleContext().setAccessibleName((String) action.getValue(Action.NAME));
        return button;
    }

    void showZoom(int percent) {
        zoom.setText(words.text("window.percent", percent));
        zoom.getAccessibleContext().setAccessibleName(words.text("window.zoom", percent));
    }
}
