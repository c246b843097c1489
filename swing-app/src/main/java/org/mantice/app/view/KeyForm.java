package org.mantice.app.view;

import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;

/** A key signature: its mode, and its key note or, where no mode is named, its accidentals. */
final class KeyForm extends EditForm {
    private static final int MOST = 7;

    private final transient TuneEditor editor;
    private final transient Words words;
    private final JComboBox<String> mode = new JComboBox<>();
    private final JComboBox<String> signature = new JComboBox<>();

    KeyForm(Key now, TuneEditor editor, Words words) {
        this.editor = editor;
        this.words = words;
        for (Mode each : Mode.values()) mode.addItem(words.of("music", each));
        mode.setSelectedIndex(now.mode().ordinal());
        list(now.fifths() + MOST);
        mode.addActionListener(event -> list(signature.getSelectedIndex()));
        JPanel line = new JPanel(new WrappingLayout(6));
        line.add(labelled("edit.key.signature", signature));
        line.add(labelled("edit.key.mode", mode));
        add(line);
        add(new JLabel(words.text("edit.key.note")), java.awt.BorderLayout.PAGE_END);
    }

    private JPanel labelled(String key, JComboBox<String> combo) {
        JLabel label = new JLabel(words.text(key));
        label.setLabelFor(combo);
        combo.getAccessibleContext().setAccessibleName(words.text(key));
        JPanel both = new JPanel(WrappingLayout.together(4));
        for (JComponent each : List.of(label, combo)) both.add(each);
        return both;
    }

    private void list(int selected) {
        MusicWords music = new MusicWords(words);
        signature.removeAllItems();
        for (int fifths = -MOST; fifths <= MOST; fifths++) {
            Key key = new Key(fifths, chosenMode());
            String accidentals = music.key(new Key(fifths, Mode.NONE));
            signature.addItem(
                    chosenMode() == Mode.NONE ? accidentals : words.text("edit.key.both", music.key(key), accidentals));
        }
        signature.setSelectedIndex(selected);
    }

    private Mode chosenMode() {
        return Mode.values()[mode.getSelectedIndex()];
    }

    @Override
    JComponent first() {
        return signature;
    }

    Key key() {
        return new Key(signature.getSelectedIndex() - MOST, chosenMode());
    }

    @Override
    void make() {
        editor.setKey(key());
    }
}
