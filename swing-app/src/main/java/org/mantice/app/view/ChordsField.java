package org.mantice.app.view;

import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.mantice.app.model.SetupModel;
import org.mantice.app.words.Words;
import org.mantice.performance.ChordsPlayed;

/** Which chords are played where the tune leaves a choice; only what it leaves open is shown. */
final class ChordsField extends JPanel {
    private final transient Consumer<ChordsPlayed> chosen;
    private final JLabel label;
    private final JComboBox<String> alternates = new JComboBox<>();
    private final JCheckBox optional;
    private boolean showing;

    ChordsField(Words words, Consumer<ChordsPlayed> chosen) {
        super(WrappingLayout.together(3));
        this.chosen = chosen;
        label = new JLabel(words.text("setup.alternates"));
        label.setLabelFor(alternates);
        for (ChordsPlayed.Alternates each : ChordsPlayed.Alternates.values())
            alternates.addItem(words.of("setup", each));
        alternates.setToolTipText(words.text("setup.alternates.hint"));
        alternates.getAccessibleContext().setAccessibleName(words.text("setup.alternates"));
        alternates.getAccessibleContext().setAccessibleDescription(words.text("setup.alternates.hint"));
        alternates.addActionListener(event -> choose());
        optional = new JCheckBox(words.text("setup.optional"));
        optional.setToolTipText(words.text("setup.optional.hint"));
        optional.getAccessibleContext().setAccessibleName(words.text("setup.optional"));
        optional.getAccessibleContext().setAccessibleDescription(words.text("setup.optional.hint"));
        optional.addActionListener(event -> choose());
        add(label);
        add(alternates);
        add(optional);
    }

    private void choose() {
        if (showing) return;
        ChordsPlayed.Alternates when = ChordsPlayed.Alternates.values()[alternates.getSelectedIndex()];
        chosen.accept(new ChordsPlayed(when, optional.isSelected()));
    }

    void show(SetupModel.Chords chords) {
        showing = true;
        alternates.setSelectedIndex(chords.chosen().alternates().ordinal());
        optional.setSelected(chords.chosen().optional());
        showing = false;
        label.setVisible(chords.alternates());
        alternates.setVisible(chords.alternates());
        optional.setVisible(chords.optional());
        setVisible(chords.alternates() || chords.optional());
    }
}
