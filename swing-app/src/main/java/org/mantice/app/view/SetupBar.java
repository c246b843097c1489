package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.SpinnerNumberModel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.PlanningProgress;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.SetupModel;
import org.mantice.app.model.Wishes;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.Accordion;
import org.mantice.player.Player;

/** What is planned: the tune, for whom, on what, how fast; and how far the planning is. What is assumed is said so. */
public final class SetupBar extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final JLabel title = new JLabel();
    private final JButton melody = new JButton();
    private final JButton leftOut = new JButton();
    private final PickField<Accordion> accordion;
    private final PickField<Player> player;
    private final JLabel air;
    private final SettingField tempo;
    private final SettingField times;
    private final SettingField shift;
    private final SettingField plans;
    private final LoudnessField loudness;
    private final ChordsField chords;
    private final LeftHandFields leftHand;
    private final JProgressBar progress = new JProgressBar();
    private final JLabel happening = new JLabel();
    private transient Optional<PlannerState> before = Optional.empty();

    /** @param choices the accordions and players to pick from */
    public SetupBar(PlannerModel model, Words words, Actions actions, ProfileChoices choices) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        MusicWords music = new MusicWords(words);
        this.accordion = new PickField<>(
                words.text("setup.accordion"),
                new PickField.Choices<>(choices::accordions, music::name, Accordion::equals, choices::lookAgain),
                model::setAccordion);
        this.player = new PickField<>(
                words.text("setup.player"),
                new PickField.Choices<>(choices::players, music::name, SetupBar::samePerson, choices::lookAgain),
                picked -> {
                    if (!samePerson(picked, model.state().setup().player())) model.setPlayer(picked);
                });
        this.air = new JLabel(words.text("setup.air"));
        this.tempo = field("setup.tempo", "setup.tempo.hint", numbers(5, 1000), true, Wishes::withTempo);
        this.times = field("setup.times", "setup.times.hint", numbers(1, 20), true, Wishes::withTimes);
        this.shift = field(
                "setup.shift",
                "setup.shift.hint",
                numbers(-11, 11),
                false,
                (wishes, semitones) -> wishes.withTransposition(semitones.orElse(0)));
        this.plans = field(
                "setup.plans",
                "setup.plans.hint",
                numbers(1, 12),
                false,
                (wishes, count) -> wishes.withPlans(count.orElse(Wishes.USUAL_PLANS)));
        this.loudness = new LoudnessField(words, chosen -> wish(wishes -> wishes.withLoudness(chosen)));
        this.chords = new ChordsField(words, chosen -> wish(wishes -> wishes.withChords(chosen)));
        this.leftHand = new LeftHandFields(model, words);
        add(settings());
        add(progress(actions), BorderLayout.PAGE_END);
        leftOut.addActionListener(event -> listLeftOut());
        melody.addActionListener(actions.get(Command.MELODY));
        getAccessibleContext().setAccessibleName(words.text("setup.title"));
        model.addListener(this::show);
        show(model.state());
    }

    private interface Change {
        Wishes of(Wishes wishes, OptionalInt number);
    }

    private SettingField field(String title, String hint, SpinnerNumberModel numbers, boolean optional, Change change) {
        return new SettingField(
                words,
                new SettingField.Title(words.text(title), words.text(hint)),
                numbers,
                optional,
                number -> wish(wishes -> change.of(wishes, number)));
    }

    private static SpinnerNumberModel numbers(int least, int most) {
        return new SpinnerNumberModel(Math.max(least, 0), least, most, 1);
    }

    private void wish(UnaryOperator<Wishes> change) {
        Wishes before = model.state().setup().wishes();
        Wishes after = change.apply(before);
        if (!after.equals(before)) model.setWishes(after);
    }

    /** The weights are moved elsewhere and make no other player. */
    private static boolean samePerson(Player one, Player other) {
        return new Player(
                        one.id(),
                        one.name(),
                        one.handSpanTenths(),
                        one.bassMethod(),
                        one.jumps(),
                        one.mayTurnInHeldNote(),
                        other.taste())
                .equals(other);
    }

    private JPanel settings() {
        JPanel who = new JPanel(new WrappingLayout(10, 4));
        title.putClientProperty("FlatLaf.styleClass", "h3");
        who.add(title);
        who.add(melody);
        who.add(leftOut);
        who.add(accordion);
        who.add(air);
        who.add(player);
        JPanel how = new JPanel(new WrappingLayout(10, 4));
        for (JPanel each : List.of(tempo, times, shift, loudness, chords, leftHand)) how.add(each);
        JPanel both = new JPanel(new BorderLayout());
        both.add(who, BorderLayout.PAGE_START);
        both.add(how);
        both.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                who.revalidate();
                how.revalidate();
            }
        });
        return both;
    }

    private JPanel progress(Actions actions) {
        JPanel line = new JPanel(new WrappingLayout(10, 4));
        progress.getAccessibleContext().setAccessibleName(words.text("setup.progress"));
        JButton stop = MenuLetters.leave(new JButton(actions.get(Command.STOP)));
        stop.getAccessibleContext().setAccessibleName(stop.getText());
        line.add(plans);
        line.add(progress);
        line.add(stop);
        line.add(happening);
        return line;
    }

    private void show(PlannerState state) {
        boolean same = before.filter(last -> last.tune().equals(state.tune())
                        && last.setup().equals(state.setup())
                        && last.answer().equals(state.answer()))
                .isPresent();
        before = Optional.of(state);
        if (!same) showOther(state);
    }

    private void showOther(PlannerState state) {
        SetupModel setup = SetupModel.of(state, words);
        title.setText(setup.title());
        melody.setVisible(!setup.melody().isEmpty());
        melody.setText(setup.melody());
        melody.getAccessibleContext().setAccessibleName(setup.melody());
        leftOut.setVisible(!setup.leftOut().isEmpty());
        leftOut.setText(words.text("setup.leftOut", setup.leftOut().size()));
        leftOut.getAccessibleContext().setAccessibleName(leftOut.getText());
        accordion.show(state.setup().accordion());
        accordion.setHint(setup.air());
        air.setVisible(!setup.air().isEmpty());
        air.setToolTipText(setup.air());
        player.show(state.setup().player());
        tempo.show(setup.tempo(), words.text("setup.tempo.unit", setup.beat()), setup.open());
        times.show(setup.times(), "", setup.open());
        shift.show(new SetupModel.Setting(setup.shift(), true, ""), key(setup), setup.open());
        plans.show(new SetupModel.Setting(setup.plans(), true, ""), "", true);
        loudness.show(setup);
        chords.show(setup.chords());
        leftHand.show(state);
        showProgress(PlanningProgress.of(state, words));
    }

    private String key(SetupModel setup) {
        return setup.open() ? words.text("setup.shift.key", setup.key()) : "";
    }

    private void showProgress(PlanningProgress now) {
        progress.setVisible(now.working());
        progress.setMaximum(Math.max(1, now.asked()));
        progress.setValue(now.found());
        happening.setText(now.text());
        happening.setToolTipText(now.text());
        progress.getAccessibleContext().setAccessibleDescription(now.text());
    }

    /** Puts the focus on how often the tune is played. */
    void goToTimes() {
        times.goTo();
    }

    /** Puts the focus on the key that the tune is played in. */
    void goToTransposition() {
        shift.goTo();
    }

    private void listLeftOut() {
        JOptionPane.showMessageDialog(
                this, new JScrollPane(leftOutList()), words.text("setup.leftOut.title"), JOptionPane.PLAIN_MESSAGE);
    }

    /** What the tune does not hold as its file has it, one line each. */
    JList<String> leftOutList() {
        JList<String> list =
                new JList<>(SetupModel.of(model.state(), words).leftOut().toArray(String[]::new));
        list.setVisibleRowCount(Math.min(12, list.getModel().getSize()));
        list.getAccessibleContext().setAccessibleName(words.text("setup.leftOut.title"));
        return list;
    }
}
