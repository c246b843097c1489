package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import javax.swing.JComponent;
import org.mantice.app.look.Looks;

/** What is painted on the sheet's view besides the sheet. */
final class SheetFrame {
    private SheetFrame() {}

    /** A frame inside the edges of what is seen. */
    static void paintFocus(JComponent view, Graphics2D graphics) {
        Rectangle seen = view.getVisibleRect();
        int width = UIScale.scale(2);
        Graphics2D own = (Graphics2D) graphics.create();
        own.setColor(Looks.sheetColours().selection());
        own.setStroke(new BasicStroke(width));
        own.drawRect(seen.x + width / 2, seen.y + width / 2, seen.width - width, seen.height - width);
        own.dispose();
    }

    static void paintMessage(JComponent view, Graphics2D graphics, String message) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setFont(view.getFont());
        own.setColor(Looks.sheetColours().ink());
        FontMetrics metrics = own.getFontMetrics();
        Rectangle seen = view.getVisibleRect();
        own.drawString(
                message,
                seen.x + Math.max(0, (seen.width - metrics.stringWidth(message)) / 2),
                seen.y + seen.height / 2);
        own.dispose();
    }
}
