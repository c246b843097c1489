package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import javax.swing.plaf.metal.MetalLookAndFeel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.Selection;
import org.mantice.app.model.States;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;
import org.mantice.plan.Lock;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** The panel as another program would use it: in a plain panel, without our window, menu or look. */
class PlannerPanelTest {
    private LookAndFeel before;
    private PlannerModel model;
    private Actions actions;
    private PlannerPanel panel;

    @BeforeEach
    void rememberLook() {
        before = UIManager.getLookAndFeel();
    }

    @AfterEach
    void putBack() throws Exception {
        UIManager.setLookAndFeel(before);
    }

    private void embed(Locale language) {
        model = Planners.empty();
        Words words = Words.of(language);
        actions = new Actions(words);
        panel = new PlannerPanel(model, words, actions, ProfileChoices.PRESETS);
    }

    private Container foreign() {
        JPanel host = new JPanel(new BorderLayout());
        host.add(new JTextField("the other program"), BorderLayout.PAGE_START);
        host.add(panel);
        return host;
    }

    @Test
    void panelWorksInAForeignPanelUnderAForeignLook() throws Exception {
        UIManager.setLookAndFeel(new MetalLookAndFeel());
        embed(Locale.ENGLISH);
        Container host = foreign();

        model.open(States.open("the-rusty-gate"));
        BufferedImage picture = Pictures.of(host, 1400, 900);
        Pictures.keep(picture, "shell-foreign");

        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        assertThat(Pictures.colours(picture)).isGreaterThan(30);
    }

    @ParameterizedTest
    @CsvSource({"en,false", "en,true", "de,false", "de,true"})
    void everythingThatTakesTheFocusHasAName(String language, boolean dark) throws IOException {
        Looks.use(dark);
        embed(Locale.forLanguageTag(language));

        AccessibleNames.check(panel);
        model.open(States.open("lanterns-at-the-weir"));
        panel.say("A jar of rules could not be read.");

        AccessibleNames.check(panel);
        Pictures.keep(Pictures.of(panel, 1400, 960), "shell-panel-" + language + (dark ? "-dark" : "-light"));
    }

    /** Ctrl+2 while the focus is in any component of the panel; there is no menu. */
    @Test
    void keysWorkWithoutAMenu() {
        Looks.use(false);
        embed(Locale.ENGLISH);
        foreign();
        model.open(States.open("lanterns-at-the-weir"));
        assertThat(model.state().chosen()).isZero();

        press(KeyEvent.VK_2, InputEvent.CTRL_DOWN_MASK);

        assertThat(model.state().chosen()).isEqualTo(1);
        press(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK);
        assertThat(model.state().chosen()).isZero();
        press(KeyEvent.VK_F3, 0);
        assertThat(model.state().differenceAt()).hasValue(0);
    }

    private void press(int key, int modifiers) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key, modifiers);
        Object name =
                panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(stroke);
        Action action = panel.getActionMap().get(name);
        assertThat(action.isEnabled()).as(name + "").isTrue();
        action.actionPerformed(null);
    }

    @Test
    void whatIsSelectedIsLockedFreedAndTakenBack() {
        Looks.use(false);
        embed(Locale.ENGLISH);
        model.open(States.open("the-rusty-gate"));
        assertThat(actions.get(Command.LOCK).isEnabled()).isFalse();

        model.select(Optional.of(
                new Selection(0, new Spot(Strip.REGISTERS, 0, 1, new WrittenPlace(0, MusicalTime.ZERO), 0))));
        act(Command.LOCK);

        assertThat(model.state().setup().locks()).isNotEmpty();
        assertThat((String) actions.get(Command.UNDO).getValue(Action.NAME)).startsWith("Undo: ");
        act(Command.FREE);
        assertThat(model.state().setup().locks()).isEmpty();
        act(Command.UNDO);
        assertThat(model.state().setup().locks()).isNotEmpty();
        act(Command.FREE_ALL);
        assertThat(model.state().setup().locks()).isEmpty();
    }

    private void act(Command command) {
        Action action = actions.get(command);
        assertThat(action.isEnabled()).as(command + "").isTrue();
        action.actionPerformed(null);
    }

    @Test
    void stripsAreHiddenAndTicked() {
        Looks.use(false);
        embed(Locale.ENGLISH);

        act(Command.SHOW_BELLOWS);

        assertThat(model.state().strips()).doesNotContain(Strip.BELLOWS);
        assertThat(actions.get(Command.SHOW_BELLOWS).getValue(Action.SELECTED_KEY))
                .isEqualTo(false);
        assertThat(actions.get(Command.SHOW_FINGERS).getValue(Action.SELECTED_KEY))
                .isEqualTo(true);
    }

    @Test
    void sheetGrowsToTwoHundredPerCentAndNoFurther() {
        Looks.use(false);
        embed(Locale.ENGLISH);

        for (int i = 0; i < 20 && actions.get(Command.LARGER).isEnabled(); i++) act(Command.LARGER);
        assertThat(panel.zoomPercent()).isEqualTo(200);
        for (int i = 0; i < 20 && actions.get(Command.SMALLER).isEnabled(); i++) act(Command.SMALLER);
        assertThat(panel.zoomPercent()).isEqualTo(75);
        act(Command.USUAL_SIZE);
        assertThat(panel.zoomPercent()).isEqualTo(100);
    }

    @Test
    void sheetAndTableTakeTurns() {
        Looks.use(false);
        embed(Locale.ENGLISH);

        act(Command.SHOW_TABLE);

        assertThat(find(panel, SheetTableView.class).getParent().isVisible()).isTrue();
        assertThat(actions.get(Command.SHOW_TABLE).getValue(Action.SELECTED_KEY))
                .isEqualTo(true);
        act(Command.SHOW_SHEET);
        assertThat(find(panel, SheetTableView.class).getParent().isVisible()).isFalse();
    }

    @Test
    void sidesAreReachedByTheirCommands() {
        Looks.use(false);
        embed(Locale.ENGLISH);
        JTabbedPane side = find(panel, JTabbedPane.class);

        act(Command.SHOW_TASTE);
        assertThat(find((Container) side.getSelectedComponent(), TasteView.class))
                .isNotNull();
        act(Command.SHOW_MAP);
        assertThat(find((Container) side.getSelectedComponent(), ButtonMapView.class))
                .isNotNull();
        act(Command.SHOW_DIFFERENCES);
        assertThat(find((Container) side.getSelectedComponent(), DifferencesView.class))
                .isNotNull();
        act(Command.SHOW_WHY);
        assertThat(find((Container) side.getSelectedComponent(), WhyView.class)).isNotNull();
    }

    @Test
    void whatCannotBePlayedIsSaidWithItsRemedies() throws IOException {
        Looks.use(false);
        embed(Locale.GERMAN);
        model.open(States.open("lanterns-at-the-weir"));

        model.lock(new Lock.Register(OptionalInt.empty(), "no-such-switch"));
        Pictures.keep(Pictures.of(panel, 1400, 960), "shell-unplayable");

        assertThat(model.state().answer()).isInstanceOf(Answer.NotPlayable.class);
        MessageBox box = find(find(panel, MessageArea.class), MessageBox.class);
        assertThat(box.isVisible()).isTrue();
        assertThat(box.text()).contains("→");
        act(Command.FREE_ALL);
        assertThat(box.isVisible()).isFalse();
    }

    @Test
    void noticesStayTogetherUntilTheyArePutAway() {
        Looks.use(false);
        embed(Locale.ENGLISH);

        panel.say("One.");
        panel.say("Two.");
        panel.say("One.");

        MessageArea area = find(panel, MessageArea.class);
        MessageBox box = (MessageBox) area.getComponent(1);
        assertThat(box.text()).isEqualTo("One.\nTwo.");
        List<AbstractButton> buttons = new ArrayList<>();
        collect(box, AbstractButton.class, buttons);
        buttons.stream().filter(button -> button.getAction() != null).forEach(AbstractButton::doClick);
        assertThat(box.isVisible()).isFalse();
        panel.say("Three.");
        assertThat(box.text()).isEqualTo("Three.");
    }

    @Test
    void aPanelThatIsThrownAwayListensNoMore() {
        Looks.use(false);
        List<PlannerPanel> panels = new ArrayList<>();
        embed(Locale.ENGLISH);
        Words german = Words.of(Locale.GERMAN);
        Actions own = new Actions(german);

        model.listeningDuring(() -> panels.add(new PlannerPanel(model, german, own, ProfileChoices.PRESETS)))
                .letGo();
        model.open(States.open("the-rusty-gate"));

        assertThat(own.get(Command.CHOOSE_A).isEnabled()).isFalse();
        assertThat(actions.get(Command.CHOOSE_A).isEnabled()).isTrue();
    }

    private static <T extends Component> T find(Container root, Class<T> type) {
        List<T> found = new ArrayList<>();
        collect(root, type, found);
        assertThat(found).as(type.getSimpleName()).isNotEmpty();
        return found.get(0);
    }

    private static <T extends Component> void collect(Container root, Class<T> type, List<T> found) {
        for (Component child : root.getComponents()) {
            if (type.isInstance(child)) found.add(type.cast(child));
            if (child instanceof Container container) collect(container, type, found);
        }
    }
}
