package org.mantice.app.view;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.mantice.app.model.SetupModel;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.tune.Loudness;

/** The loudness where nothing is written: a list, and a check box that says what holds without a choice. */
final class LoudnessField extends JPanel {
    private final transient Words words;
    private final transient Consumer<Optional<Loudness>> chosen;
    private final JComboBox<String> loudness = new JComboBox<>();
    private final JCheckBox otherwise = new JCheckBox();
    private boolean showing;

    /** @param chosen takes the loudness, empty for none */
    LoudnessField(Words words, Consumer<Optional<Loudness>> chosen) {
        super(WrappingLayout.together(3));
        this.words = words;
        this.chosen = chosen;
        MusicWords music = new MusicWords(words);
        JLabel label = new JLabel(words.text("setup.loudness"));
        label.setLabelFor(loudness);
        for (Loudness each : Loudness.values()) loudness.addItem(music.loudness(each));
        loudness.setToolTipText(words.text("setup.loudness.hint"));
        loudness.getAccessibleContext().setAccessibleName(words.text("setup.loudness"));
        loudness.getAccessibleContext().setAccessibleDescription(words.text("setup.loudness.hint"));
        loudness.addActionListener(event -> {
            if (!showing) choose();
        });
        otherwise.addActionListener(event -> {
            if (otherwise.isSelected()) chosen.accept(Optional.empty());
            else choose();
        });
        add(label);
        add(loudness);
        add(otherwise);
    }

    private void choose() {
        chosen.accept(Optional.of(Loudness.values()[loudness.getSelectedIndex()]));
    }

    void show(SetupModel setup) {
        showing = true;
        loudness.setSelectedIndex(setup.loudness().ordinal());
        showing = false;
        loudness.setEnabled(setup.open());
        String text = setup.loudnessLevel().otherwise();
        otherwise.setVisible(setup.open());
        otherwise.setText(text);
        otherwise.setSelected(!setup.loudnessLevel().chosen());
        otherwise
                .getAccessibleContext()
                .setAccessibleName(words.text("setup.otherwise", words.text("setup.loudness"), text));
    }
}
