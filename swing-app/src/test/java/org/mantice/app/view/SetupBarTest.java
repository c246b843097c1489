package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.MelodyModel;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.pattern.Accompaniment;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.reading.MelodyChoice;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;
import org.mantice.reading.Skipped;
import org.mantice.reading.SkippedWhat;
import org.mantice.tune.Loudness;

class SetupBarTest {
    private final PlannerModel model = Planned.of("five-steps-to-the-ferry");
    private final SetupBar bar = bar(model, ProfileChoices.PRESETS);

    private static SetupBar bar(PlannerModel model, ProfileChoices choices) {
        Looks.use(false);
        return new SetupBar(model, Planned.ENGLISH, Planned.actions(model, Planned.ENGLISH), choices);
    }

    @Test
    void aTempoThatRestsIsWishedFor() {
        SettingField tempo = field("Tempo");
        tempo.spinner().setValue(90);
        assertThat(model.state().setup().wishes().beatsPerMinute()).isEmpty();

        tempo.settle();

        assertThat(model.state().setup().wishes().beatsPerMinute()).hasValue(90);
        assertThat(tempo.otherwise().isSelected()).isFalse();
        assertThat(tempo.otherwise().getText()).isEqualTo("assumed: 112");
    }

    @Test
    void aPatternIsChosenForTheTuneAndTakenBack() {
        JComboBox<?> pattern = combo("Left-hand pattern");
        assertThat(pattern.getSelectedItem()).hasToString("assumed: Four-beat, bass in turns");

        select(pattern, "Walking bass");

        assertThat(model.state().setup().wishes().leftHand().choices())
                .containsExactly(Accompaniment.Choice.everywhere(Optional.of("walking-bass"), Optional.empty()));
        model.undo();
        assertThat(model.state().setup().wishes().leftHand()).isEqualTo(Accompaniment.NONE);
        assertThat(pattern.getSelectedItem()).hasToString("assumed: Four-beat, bass in turns");
        model.redo();
        pattern.setSelectedIndex(0);
        assertThat(model.state().setup().wishes().leftHand()).isEqualTo(Accompaniment.NONE);
    }

    @Test
    void theHandMayPlayAPartOfThePattern() {
        select(combo("Left hand plays"), "bass only");

        assertThat(model.state().setup().wishes().leftHand().choices())
                .extracting(Accompaniment.Choice::hand)
                .containsExactly(Optional.of(Accompaniment.Hand.BASS_ONLY));
    }

    private JComboBox<?> combo(String name) {
        return Planned.named(bar, JComboBox.class, name);
    }

    private static void select(JComboBox<?> combo, String item) {
        for (int i = 0; i < combo.getItemCount(); i++)
            if (combo.getItemAt(i).toString().equals(item)) combo.setSelectedIndex(i);
    }

    @Test
    void theCheckBoxGoesBackToWhatIsAssumed() {
        SettingField tempo = field("Tempo");
        tempo.spinner().setValue(90);
        tempo.settle();

        tempo.otherwise().doClick();

        assertThat(model.state().setup().wishes().beatsPerMinute()).isEmpty();
        assertThat(tempo.spinner().getValue()).isEqualTo(112);
    }

    @Test
    void uncheckingChoosesTheNumberShown() {
        field("Times through").otherwise().doClick();

        assertThat(model.state().setup().wishes().timesThrough()).hasValue(2);
    }

    @Test
    void aNumberBeingSetIsNotOverwrittenByNews() {
        SettingField tempo = field("Tempo");
        tempo.spinner().setValue(90);

        model.setWishes(model.state().setup().wishes().withPlans(1));

        assertThat(tempo.spinner().getValue()).isEqualTo(90);
        tempo.settle();
        assertThat(model.state().setup().wishes().beatsPerMinute()).hasValue(90);
        assertThat(model.state().setup().wishes().plans()).isEqualTo(1);
    }

    @Test
    void numbersOutOfRangeAreImpossible() {
        assertRange("Tempo", 5, 1000);
        assertRange("Times through", 1, 20);
        assertRange("Key shift", -11, 11);
        assertRange("Plans", 1, 12);
    }

    private void assertRange(String name, int least, int most) {
        SpinnerNumberModel numbers = (SpinnerNumberModel) field(name).spinner().getModel();
        assertThat(numbers.getMinimum()).isEqualTo(least);
        assertThat(numbers.getMaximum()).isEqualTo(most);
    }

    @Test
    void aShiftNamesTheKeyThatResults() {
        SettingField shift = field("Key shift");
        String before = texts(shift);

        shift.spinner().setValue(2);
        shift.settle();

        assertThat(model.state().setup().wishes().transposition()).isEqualTo(2);
        assertThat(texts(shift)).contains("gives ").isNotEqualTo(before);
    }

    @Test
    void aLoudnessIsChosenAndGivenBack() {
        JComboBox<?> loudness = Planned.named(bar, JComboBox.class, "Loudness");

        loudness.setSelectedIndex(Loudness.F.ordinal());
        assertThat(model.state().setup().wishes().loudness()).contains(Loudness.F);

        JCheckBox otherwise = Planned.all(bar, JCheckBox.class).stream()
                .filter(box -> box.getAccessibleContext().getAccessibleName().startsWith("Loudness, "))
                .findFirst()
                .orElseThrow();
        otherwise.doClick();
        assertThat(model.state().setup().wishes().loudness()).isEmpty();
    }

    @Test
    void anAccordionIsPicked() {
        JComboBox<?> accordions = Planned.named(bar, JComboBox.class, "Accordion");
        Accordion last = AccordionPresets.all().get(AccordionPresets.all().size() - 1);

        accordions.setSelectedIndex(accordions.getItemCount() - 1);

        assertThat(model.state().setup().accordion()).isEqualTo(last);
    }

    @Test
    void aPlayerWithOtherWeightsIsStillTheSamePlayer() {
        JComboBox<?> players = Planned.named(bar, JComboBox.class, "Player");
        int entries = players.getItemCount();

        model.setTaste(Taste.PLAIN.with("little-bellows", 2000));

        assertThat(players.getItemCount()).isEqualTo(entries);
        assertThat(players.getSelectedItem()).hasToString("Medium hand");
        players.setSelectedIndex(players.getSelectedIndex());
        assertThat(model.state().setup().player().taste().perMille("little-bellows"))
                .isEqualTo(2000);
    }

    @Test
    void aProfileThatIsNoChoiceStandsFirst() {
        Player own = PlayerPresets.get("large-hand");
        ProfileChoices few = new ProfileChoices() {
            @Override
            public List<Accordion> accordions() {
                return List.of(AccordionPresets.get("full-41-key-120-bass"));
            }

            @Override
            public List<Player> players() {
                return List.of(own);
            }
        };

        JComboBox<?> players = Planned.named(bar(model, few), JComboBox.class, "Player");

        assertThat(players.getItemCount()).isEqualTo(2);
        assertThat(players.getSelectedIndex()).isZero();
        assertThat(players.getItemAt(0)).hasToString("Medium hand");
    }

    @Test
    void withoutATuneNothingOfATuneCanBeSet() {
        SetupBar empty = bar(Planned.nothing(), ProfileChoices.PRESETS);

        assertThat(Planned.all(empty, JSpinner.class).stream().filter(JSpinner::isEnabled))
                .hasSize(1);
        assertThat(Planned.all(empty, JLabel.class)).anyMatch(label -> "No tune is open".equals(label.getText()));
    }

    @Test
    void whatIsLeftOutIsOfferedOnlyWhereThereIsSome() {
        JButton leftOut = Planned.all(bar, JButton.class).get(1);
        assertThat(leftOut.isVisible()).isFalse();

        Skipped trill = new Skipped(SkippedWhat.NOTE_MARK, List.of("trill-mark"), List.of("3", "7"), 2);
        model.open(States.leavingOut(model.state(), List.of(trill)).tune().orElseThrow());

        assertThat(leftOut.isVisible()).isTrue();
        assertThat(leftOut.getText()).isEqualTo("1 thing of the file not taken as written");
        assertThat(bar.leftOutList().getModel().getElementAt(0)).contains("3, 7");
    }

    @Test
    void theMelodysPartIsNamedWhereTheFileHasSeveral() {
        JButton melody = Planned.all(bar, JButton.class).get(0);
        assertThat(melody.isVisible()).isFalse();

        OpenTune tune = model.state().tune().orElseThrow();
        PartInfo flute = new PartInfo("P1", "Flute", 40, 0);
        model.open(new OpenTune(
                tune.fileName(),
                new ReadTune(
                        tune.read().tune(),
                        List.of(),
                        List.of(flute, new PartInfo("P2", "Bass", 20, 0), new PartInfo("P3", "Drum", 0, 0)),
                        new MelodyChoice(flute, 1, MelodyChoice.Rule.TREBLE),
                        tune.read().fingerprint()),
                Optional.empty()));

        assertThat(melody.isVisible()).isTrue();
        assertThat(melody.getText()).isEqualTo("Melody: P1 (Flute)");
        MelodyModel where = MelodyModel.of(model.state().tune().orElseThrow().read(), Words.of(Locale.ENGLISH));
        assertThat(where.parts()).extracting(PartInfo::id).containsExactly("P1", "P2");
        assertThat(where.taken()).isZero();
        assertThat(where.reason()).isEqualTo("the first part in a treble clef");
    }

    private SettingField field(String title) {
        return Planned.all(bar, SettingField.class).stream()
                .filter(field ->
                        title.equals(field.spinner().getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
    }

    private static String texts(SettingField field) {
        return Planned.all(field, JLabel.class).stream()
                .map(JLabel::getText)
                .toList()
                .toString();
    }
}
