package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.words.Words;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.WrittenPlace;

class EditFormsTest {
    private static final Barlines ALL = new Barlines(
            true,
            Optional.of(3),
            true,
            List.of(1, 2),
            true,
            true,
            true,
            Optional.of(Barlines.Jump.DAL_SEGNO),
            true,
            true,
            true);

    private final PlannerModel model = Planned.of("the-rusty-gate");
    private final TuneEditor editor = new TuneEditor(model);

    private BarlinesForm barlines(Barlines now) {
        return new BarlinesForm(now, editor, Planned.ENGLISH);
    }

    @Test
    void barlinesComeOutAsTheyWentIn() {
        for (Barlines each : List.of(ALL, Barlines.PLAIN))
            assertThat(barlines(each).barlines()).isEqualTo(each);
    }

    @Test
    void aRepeatIsSetUpByItsFields() {
        BarlinesForm form = barlines(Barlines.PLAIN);
        JSpinner times = Planned.all(form, JSpinner.class).get(0);
        assertThat(times.isEnabled()).isFalse();

        Planned.named(form, JCheckBox.class, "Repeat ends").doClick();
        assertThat(times.isEnabled()).isTrue();
        times.setValue(3);
        Planned.named(form, JTextField.class, "Ending for times").setText("1-2");
        Planned.named(form, JCheckBox.class, "Ending ends").doClick();

        assertThat(form.barlines())
                .isEqualTo(new Barlines(
                        false,
                        Optional.of(3),
                        true,
                        List.of(1, 2),
                        true,
                        false,
                        false,
                        Optional.empty(),
                        false,
                        false,
                        false));
    }

    @Test
    void timesOfAnEndingAreNumbers() {
        BarlinesForm form = barlines(Barlines.PLAIN);
        JTextField ending = Planned.named(form, JTextField.class, "Ending for times");

        for (String wrong : List.of("first", "0", "1;2", "1-", ",")) {
            ending.setText(wrong);
            assertThatIllegalArgumentException()
                    .as(wrong)
                    .isThrownBy(form::barlines)
                    .withMessageContaining("An ending is for times such as");
        }
        ending.setText("1., 3");
        assertThat(form.barlines().endingStart()).containsExactly(1, 3);
    }

    @Test
    void aTempoIsOfferedAndTakenAway() {
        TempoForm fresh = new TempoForm(Optional.empty(), Tempo.quarters(96), editor, Planned.ENGLISH);
        assertThat(fresh.tempo()).contains(Tempo.quarters(96));
        assertThat(Planned.named(fresh, JCheckBox.class, "No tempo mark here").isVisible())
                .isFalse();

        Tempo odd = new Tempo(MusicalTime.of(5, 8), 60_500);
        TempoForm there = new TempoForm(Optional.of(odd), Tempo.quarters(96), editor, Planned.ENGLISH);
        assertThat(there.tempo()).contains(odd);
        Planned.named(there, JCheckBox.class, "No tempo mark here").doClick();
        assertThat(there.tempo()).isEmpty();
    }

    @Test
    void everyKeyAndModeCanBeChosen() {
        for (Mode mode : Mode.values())
            for (int fifths = -7; fifths <= 7; fifths++) {
                Key key = new Key(fifths, mode);
                assertThat(new KeyForm(key, editor, Planned.ENGLISH).key()).isEqualTo(key);
            }
        KeyForm form = new KeyForm(Key.C_MAJOR, editor, Planned.ENGLISH);
        JComboBox<?> mode = Planned.named(form, JComboBox.class, "Mode");
        mode.setSelectedItem("minor");
        assertThat(form.key()).isEqualTo(new Key(0, Mode.MINOR));
        assertThat(Planned.named(form, JComboBox.class, "Key").getSelectedItem())
                .isEqualTo("A minor: no sharps or flats");
    }

    @Test
    void formsEditTheMeasurePointedAt() {
        editor.select(Optional.of(new ChordSpot(2, new WrittenPlace(2, MusicalTime.ZERO))));

        barlines(new Barlines(
                        false,
                        Optional.empty(),
                        false,
                        List.of(),
                        false,
                        false,
                        false,
                        Optional.empty(),
                        false,
                        false,
                        true))
                .make();
        new TempoForm(Optional.empty(), Tempo.quarters(80), editor, Planned.ENGLISH).make();
        new KeyForm(new Key(2, Mode.MAJOR), editor, Planned.ENGLISH).make();

        assertThat(editor.measure().orElseThrow().barlines().doubleBar()).isTrue();
        assertThat(editor.tempo()).contains(Tempo.quarters(80));
        assertThat(editor.measure().orElseThrow().key()).isEqualTo(new Key(2, Mode.MAJOR));
        for (int i = 0; i < 3; i++) model.undo();
        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void everyFieldHasAName() {
        for (Locale language : Words.LANGUAGES) {
            Words words = Words.of(language);
            for (EditForm form : List.of(
                    new BarlinesForm(ALL, editor, words),
                    new TempoForm(Optional.of(Tempo.quarters(96)), Tempo.quarters(96), editor, words),
                    new KeyForm(Key.C_MAJOR, editor, words))) AccessibleNames.check(form);
        }
    }
}
