package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import org.mantice.app.look.Looks;
import org.mantice.app.sheet.SheetSign;
import org.mantice.app.words.Words;

/** Every sign of the sheet, as it is drawn there, with what it means. */
final class SignsPage extends JPanel {
    private static final int ROWS_WANTED = 24;
    private static final float SPACE = 8;

    SignsPage(Words words) {
        super(new BorderLayout());
        JList<SheetSign> list = new JList<>(SheetSign.values());
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setBackground(Looks.sheetColours().paper());
        list.setCellRenderer((of, sign, index, selected, focused) -> line(sign, words, of, selected));
        list.setVisibleRowCount(ROWS_WANTED);
        list.getAccessibleContext().setAccessibleName(words.text("window.signs"));
        JScrollPane scroll = new JScrollPane(list);
        add(scroll);
    }

    private static Component line(SheetSign sign, Words words, JList<?> list, boolean selected) {
        JLabel line = new JLabel(words.of("sheet", sign), new Picture(sign), JLabel.LEADING);
        line.setOpaque(true);
        line.setIconTextGap(UIScale.scale(8));
        line.setForeground(Looks.sheetColours().ink());
        line.setBackground(selected ? Looks.sheetColours().strip() : list.getBackground());
        return line;
    }

    /** A sign in a frame of its own. */
    private record Picture(SheetSign sign) implements Icon {
        @Override
        public void paintIcon(Component on, Graphics graphics, int x, int y) {
            sign.paint(
                    (Graphics2D) graphics,
                    Looks.sheetColours(),
                    x + getIconWidth() / 2.0,
                    y + getIconHeight() / 2.0,
                    UIScale.scale(SPACE));
        }

        @Override
        public int getIconWidth() {
            return (int) Math.ceil(SheetSign.WIDTH * UIScale.scale(SPACE));
        }

        @Override
        public int getIconHeight() {
            return (int) Math.ceil(SheetSign.HEIGHT * UIScale.scale(SPACE));
        }
    }
}
