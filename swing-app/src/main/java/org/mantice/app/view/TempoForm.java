package org.mantice.app.view;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.words.Words;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/** A metronome mark: which note value, and how many of them a minute. */
final class TempoForm extends EditForm {
    private static final List<MusicalTime> BEATS = List.of(
            MusicalTime.of(1, 8),
            MusicalTime.of(3, 16),
            MusicalTime.of(1, 4),
            MusicalTime.of(3, 8),
            MusicalTime.of(1, 2),
            MusicalTime.of(3, 4),
            MusicalTime.of(1, 1));
    private static final double LEAST = 5;
    private static final double MOST = 1000;

    private final transient TuneEditor editor;
    private final transient List<MusicalTime> beats;
    private final JComboBox<String> beat = new JComboBox<>();
    private final JSpinner number;
    private final JCheckBox none;

    /**
     * @param now the mark that stands there
     * @param otherwise what is offered where none stands
     */
    TempoForm(Optional<Tempo> now, Tempo otherwise, TuneEditor editor, Words words) {
        this.editor = editor;
        Tempo shown = now.orElse(otherwise);
        this.beats = BEATS.contains(shown.beat())
                ? BEATS
                : java.util.stream.Stream.concat(java.util.stream.Stream.of(shown.beat()), BEATS.stream())
                        .toList();
        double perMinute = BigDecimal.valueOf(shown.milliBeatsPerMinute(), 3).doubleValue();
        this.number = new JSpinner(new SpinnerNumberModel(perMinute, LEAST, MOST, 1.0));
        number.setEditor(new JSpinner.NumberEditor(number, "0.###"));
        for (MusicalTime each : beats) beat.addItem(name(each, words));
        beat.setSelectedIndex(beats.indexOf(shown.beat()));
        this.none = new JCheckBox(words.text("edit.tempo.none"));
        none.setVisible(now.isPresent());
        none.getAccessibleContext().setAccessibleName(none.getText());
        beat.getAccessibleContext().setAccessibleName(words.text("edit.tempo.beat"));
        JLabel equals = new JLabel(words.text("edit.tempo.number"));
        equals.setLabelFor(number);
        for (JComponent each : List.of(number, ((JSpinner.DefaultEditor) number.getEditor()).getTextField()))
            each.getAccessibleContext().setAccessibleName(words.text("edit.tempo.perMinute"));
        JPanel line = new JPanel(new WrappingLayout(6));
        line.add(beat);
        line.add(equals);
        line.add(number);
        line.add(new JLabel(words.text("edit.tempo.unit")));
        add(line);
        add(none, java.awt.BorderLayout.PAGE_END);
        none.addActionListener(event -> {
            beat.setEnabled(!none.isSelected());
            number.setEnabled(!none.isSelected());
        });
    }

    private static String name(MusicalTime beat, Words words) {
        return switch (beat.toString()) {
            case "1/8" -> words.text("edit.tempo.eighth");
            case "3/16" -> words.text("edit.tempo.dottedEighth");
            case "1/4" -> words.text("edit.tempo.quarter");
            case "3/8" -> words.text("edit.tempo.dottedQuarter");
            case "1/2" -> words.text("edit.tempo.half");
            case "3/4" -> words.text("edit.tempo.dottedHalf");
            case "1" -> words.text("edit.tempo.whole");
            default -> beat.toString();
        };
    }

    @Override
    JComponent first() {
        return ((JSpinner.DefaultEditor) number.getEditor()).getTextField();
    }

    /** Empty for no mark. */
    Optional<Tempo> tempo() {
        if (none.isSelected()) return Optional.empty();
        int milli = BigDecimal.valueOf((Double) number.getValue())
                .movePointRight(3)
                .setScale(0, java.math.RoundingMode.HALF_UP)
                .intValueExact();
        return Optional.of(new Tempo(beats.get(beat.getSelectedIndex()), milli));
    }

    @Override
    void make() {
        editor.setTempo(tempo());
    }
}
