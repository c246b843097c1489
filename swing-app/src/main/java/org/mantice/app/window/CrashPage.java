package org.mantice.app.window;

import java.awt.BorderLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.mantice.app.words.Words;

/** What is shown when the program itself failed: a sentence, and a report that can be copied. */
final class CrashPage extends JPanel {
    CrashPage(Words words, String report) {
        super(new BorderLayout(0, 8));
        JLabel sentence = new JLabel(words.text("window.crash.sentence"));
        JTextArea text = new JTextArea(report, 14, 72);
        text.setEditable(false);
        text.setCaretPosition(0);
        text.getAccessibleContext().setAccessibleName(words.text("window.crash.report"));
        text.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        text.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        sentence.setLabelFor(text);
        JButton copy = new JButton(words.text("window.crash.copy"));
        copy.addActionListener(event ->
                Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(report), null));
        add(sentence, BorderLayout.PAGE_START);
        add(new JScrollPane(text));
        add(copy, BorderLayout.PAGE_END);
    }
}
