package org.mantice.app.window;

import java.awt.BorderLayout;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.mantice.app.words.Words;

/** Name, version, licences, and a word of caution. */
final class AboutPage extends JPanel {
    AboutPage(Words words, String version) {
        super(new BorderLayout());
        JTextArea text = new JTextArea(
                String.join(
                        "\n\n",
                        words.text("window.about.name", version),
                        words.text("window.about.caution"),
                        words.text("window.about.estimates"),
                        words.text("window.about.licence"),
                        words.text("window.about.parts")),
                16,
                56);
        text.setEditable(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setCaretPosition(0);
        text.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        text.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        text.getAccessibleContext().setAccessibleName(words.text("window.about"));
        add(new JScrollPane(text));
    }
}
