package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.InputMap;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;

class CommandsTest {
    static Stream<Locale> languages() {
        return Words.LANGUAGES.stream();
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyCommandHasALabelAHintAndAMnemonicThatIsAKey(Locale language) {
        Actions actions = new Actions(Words.of(language));

        for (Command command : Command.values()) {
            Action action = actions.get(command);
            assertThat((String) action.getValue(Action.NAME))
                    .as(command + "")
                    .isNotBlank()
                    .doesNotContain("&");
            assertThat((String) action.getValue(Action.SHORT_DESCRIPTION))
                    .as(command + "")
                    .endsWith(".");
            assertThat((Integer) action.getValue(Action.MNEMONIC_KEY))
                    .as("mnemonic of " + command)
                    .isNotNull()
                    .matches(key -> key >= 'A' && key <= 'Z', "a plain letter");
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void mnemonicsAreUniqueInEveryMenu(Locale language) {
        Words words = Words.of(language);
        Actions actions = new Actions(words);
        Map<String, Command> taken = new HashMap<>();

        for (Command command : Command.values()) {
            String place = command.group() + " " + actions.get(command).getValue(Action.MNEMONIC_KEY);
            assertThat(taken.put(place, command)).as(command + " in " + place).isNull();
        }
        assertThat(Stream.of(Command.Group.values()).map(group -> MarkedLabel.of(words.of("commands", group))
                        .mnemonic()))
                .doesNotHaveDuplicates()
                .allMatch(java.util.Optional::isPresent);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void keysAreUniqueAndTheSameInEveryLanguage(Locale language) {
        Actions actions = new Actions(Words.of(language));
        Actions english = new Actions(Words.of(Locale.ENGLISH));
        List<KeyStroke> all = new ArrayList<>();

        for (Command command : Command.values()) {
            all.addAll(actions.keys(command));
            assertThat(actions.keys(command)).isEqualTo(english.keys(command));
        }
        assertThat(all).doesNotHaveDuplicates().hasSizeGreaterThan(30);
    }

    /** A key that a field, table or tree takes for itself never reaches the command. */
    @Test
    void noKeyIsTakenByAComponentOfTheLook() {
        LookAndFeel before = UIManager.getLookAndFeel();
        Map<KeyStroke, String> taken = new HashMap<>();
        try {
            Looks.use(false);
            for (JComponent component : List.of(
                    new JTextField(),
                    new JTextArea(),
                    new JEditorPane(),
                    new JSpinner(),
                    new JComboBox<>(),
                    new JTable(),
                    new JTree(),
                    new JList<>(),
                    new JSlider(),
                    new JCheckBox(),
                    new JButton(),
                    new JTabbedPane(),
                    new JScrollPane(),
                    new JSplitPane())) {
                for (int when : new int[] {JComponent.WHEN_FOCUSED, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT}) {
                    KeyStroke[] keys = component.getInputMap(when).allKeys();
                    if (keys != null)
                        for (KeyStroke key : keys)
                            taken.put(key, component.getClass().getSimpleName());
                }
            }
        } finally {
            restore(before);
        }
        assertThat(taken).hasSizeGreaterThan(60);

        Actions actions = new Actions(Words.of(Locale.ENGLISH));
        for (Command command : Command.values())
            for (KeyStroke key : actions.keys(command))
                assertThat(taken.get(key)).as(command + " " + key).isNull();
    }

    private static void restore(LookAndFeel before) {
        try {
            UIManager.setLookAndFeel(before);
        } catch (javax.swing.UnsupportedLookAndFeelException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void noKeyIsAPlainLetterThatSomebodyMightType() {
        Actions actions = new Actions(Words.of(Locale.ENGLISH));

        for (Command command : Command.values())
            for (KeyStroke key : actions.keys(command))
                assertThat((key.getModifiers() & InputEvent.CTRL_DOWN_MASK) != 0
                                || key.getKeyCode() >= KeyEvent.VK_F1 && key.getKeyCode() <= KeyEvent.VK_F12)
                        .as(command + " " + key)
                        .isTrue();
    }

    @Test
    void theKeyOfMenusIsThePlatforms() {
        assertThat(Keys.of("menu shift S, F5", InputEvent.META_DOWN_MASK))
                .containsExactly(
                        KeyStroke.getKeyStroke(KeyEvent.VK_S, InputEvent.META_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK),
                        KeyStroke.getKeyStroke(KeyEvent.VK_F5, 0));
        assertThat(Keys.of("", InputEvent.META_DOWN_MASK)).isEmpty();
    }

    @Test
    void aKeyThatIsNoneIsRefusedByName() {
        assertThatThrownBy(() -> Keys.of("menu Sesame", 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("menu Sesame");
    }

    @Test
    void aCommandNobodyHasBoundStaysDisabled() {
        Actions actions = new Actions(Words.of(Locale.ENGLISH));
        int[] done = {0};
        actions.bind(Command.PLAN_AGAIN, () -> done[0]++, state -> state.tune().isEmpty());

        actions.follow(States.nothing());
        actions.get(Command.PLAN_AGAIN).actionPerformed(null);

        assertThat(actions.get(Command.PLAN_AGAIN).isEnabled()).isTrue();
        assertThat(actions.get(Command.UNDO).isEnabled()).isFalse();
        assertThat(done[0]).isEqualTo(1);
        actions.follow(States.of("the-rusty-gate").comparing(0));
        assertThat(actions.get(Command.PLAN_AGAIN).isEnabled()).isFalse();
    }

    @Test
    void keysWorkInAComponentWithoutAMenu() {
        Actions actions = new Actions(Words.of(Locale.ENGLISH));
        JPanel panel = new JPanel();

        actions.installKeys(panel);

        InputMap map = panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        Object bound = map.get(KeyStroke.getKeyStroke(KeyEvent.VK_Y, InputEvent.CTRL_DOWN_MASK));
        assertThat(panel.getActionMap().get(bound)).isSameAs(actions.get(Command.REDO));
    }
}
