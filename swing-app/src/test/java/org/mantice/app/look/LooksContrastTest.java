package org.mantice.app.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.app.sheet.SheetColours;

/** Computes the contrast of what the looks and the sheet put on each other. What is disabled is exempt in WCAG 2.2. */
class LooksContrastTest {
    private static final List<String> TEXT_KINDS = List.of(
            "Label",
            "Button",
            "ToggleButton",
            "CheckBox",
            "RadioButton",
            "ComboBox",
            "Spinner",
            "TextField",
            "TextArea",
            "TextPane",
            "EditorPane",
            "FormattedTextField",
            "List",
            "Table",
            "TableHeader",
            "Tree",
            "TabbedPane",
            "Panel",
            "OptionPane",
            "MenuBar",
            "Menu",
            "MenuItem",
            "CheckBoxMenuItem",
            "RadioButtonMenuItem",
            "ToolTip",
            "Button.default");

    private static final List<String> SELECTING = List.of(
            "List",
            "Table",
            "Tree",
            "ComboBox",
            "TextField",
            "TextArea",
            "TextPane",
            "EditorPane",
            "Menu",
            "MenuItem",
            "CheckBoxMenuItem",
            "RadioButtonMenuItem");

    private LookAndFeel before;

    @BeforeEach
    void rememberLook() {
        before = UIManager.getLookAndFeel();
    }

    @AfterEach
    void putBack() throws Exception {
        UIManager.setLookAndFeel(before);
    }

    /** One colour on another. */
    private record Pair(String name, Color over, Color under) {
        void holds(double least, SoftAssertions softly) {
            softly.assertThat(Contrast.of(over, under)).as(name).isGreaterThanOrEqualTo(least);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void textOfTheSheetIsReadable(boolean dark) {
        Looks.use(dark);

        SheetColours sheet = Looks.sheetColours();

        List<Pair> pairs = new ArrayList<>();
        for (Color ground : List.of(sheet.paper(), sheet.strip())) {
            pairs.add(new Pair("ink", sheet.ink(), ground));
            pairs.add(new Pair("faint", sheet.faint(), ground));
            pairs.add(new Pair("caution", sheet.caution(), ground));
            pairs.add(new Pair("difference", sheet.difference(), ground));
            pairs.add(new Pair("lock", sheet.lock(), ground));
            sheet.plans().forEach(plan -> pairs.add(new Pair("plan", plan, ground)));
        }
        pairs.add(new Pair("word out", sheet.onFan(), sheet.out()));
        pairs.add(new Pair("word in", sheet.onFan(), sheet.in()));
        pairs.add(new Pair("letter on its mark", sheet.paper(), sheet.plans().get(0)));
        pairs.add(new Pair("letter on its mark", sheet.paper(), sheet.plans().get(1)));
        pairs.add(new Pair("letter on its mark", sheet.paper(), sheet.plans().get(2)));
        pairs.add(new Pair("letter on its mark", sheet.paper(), sheet.plans().get(3)));
        pairs.add(new Pair("message", Looks.colour("messageText"), Looks.colour("message")));
        SoftAssertions.assertSoftly(softly -> pairs.forEach(pair -> pair.holds(Contrast.TEXT, softly)));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void graphicsOfTheSheetStandOut(boolean dark) {
        Looks.use(dark);

        SheetColours sheet = Looks.sheetColours();

        List<Pair> pairs = new ArrayList<>();
        for (Color ground : List.of(sheet.paper(), sheet.strip())) {
            pairs.add(new Pair("fan out", sheet.out(), ground));
            pairs.add(new Pair("fan in", sheet.in(), ground));
            pairs.add(new Pair("selection", sheet.selection(), ground));
        }
        pairs.add(new Pair("edge of a message", Looks.colour("messageEdge"), Looks.colour("message")));
        pairs.add(new Pair("edge of a message", Looks.colour("messageEdge"), UIManager.getColor("Panel.background")));
        SoftAssertions.assertSoftly(softly -> pairs.forEach(pair -> pair.holds(Contrast.GRAPHIC, softly)));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void textOfEveryKindOfComponentIsReadable(boolean dark) {
        Looks.use(dark);

        List<Pair> pairs = new ArrayList<>();
        for (String kind : TEXT_KINDS) pairs.add(pair(kind + ".foreground", kind + ".background"));
        for (String kind : SELECTING) pairs.add(pair(kind + ".selectionForeground", kind + ".selectionBackground"));
        for (String kind : List.of("List", "Table", "Tree"))
            pairs.add(pair(kind + ".selectionInactiveForeground", kind + ".selectionInactiveBackground"));
        for (String kind : List.of("Button", "ToggleButton"))
            pairs.add(pair(kind + ".selectedForeground", kind + ".selectedBackground"));
        for (String state : List.of("hoverBackground", "pressedBackground")) {
            pairs.add(pair("Button.foreground", "Button." + state));
            pairs.add(pair("Button.default.foreground", "Button.default." + state));
            pairs.add(pair("Button.foreground", "Button.toolbar." + state));
            pairs.add(pair("TableHeader.foreground", "TableHeader." + state));
        }
        pairs.add(pair("ToggleButton.foreground", "ToggleButton.toolbar.selectedBackground"));
        pairs.add(pair("TabbedPane.foreground", "TabbedPane.hoverColor"));
        pairs.add(pair("TabbedPane.foreground", "TabbedPane.focusColor"));
        pairs.add(pair("MenuItem.acceleratorForeground", "MenuItem.background"));
        pairs.add(pair("MenuItem.acceleratorSelectionForeground", "MenuItem.selectionBackground"));
        pairs.add(pair("Menu.foreground", "MenuBar.hoverBackground"));
        pairs.add(pair("ProgressBar.selectionBackground", "ProgressBar.background"));
        pairs.add(pair("ProgressBar.selectionForeground", "ProgressBar.foreground"));
        pairs.add(pair("TextField.placeholderForeground", "TextField.background"));
        pairs.add(pair("TitledBorder.titleColor", "Panel.background"));
        pairs.add(pair("Component.linkColor", "Panel.background"));
        SoftAssertions.assertSoftly(softly -> pairs.forEach(pair -> pair.holds(Contrast.TEXT, softly)));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void edgesAndSignsOfComponentsStandOut(boolean dark) {
        Looks.use(dark);

        List<Pair> pairs = new ArrayList<>();
        for (String ground : List.of("Panel.background", "TextField.background")) {
            pairs.add(pair("Component.borderColor", ground));
            pairs.add(pair("Component.focusedBorderColor", ground));
            pairs.add(pair("Component.focusColor", ground));
            pairs.add(pair("Button.borderColor", ground));
            pairs.add(pair("CheckBox.icon.borderColor", ground));
            pairs.add(pair("Slider.trackColor", ground));
            pairs.add(pair("Slider.thumbColor", ground));
            pairs.add(pair("TabbedPane.underlineColor", ground));
        }
        pairs.add(pair("CheckBox.icon.checkmarkColor", "CheckBox.icon.background"));
        pairs.add(pair("CheckBox.icon.checkmarkColor", "CheckBox.icon.selectedBackground"));
        pairs.add(pair("CheckBoxMenuItem.icon.checkmarkColor", "CheckBoxMenuItem.background"));
        pairs.add(pair("ComboBox.buttonArrowColor", "ComboBox.buttonBackground"));
        pairs.add(pair("Spinner.buttonArrowColor", "Spinner.buttonBackground"));
        pairs.add(pair("Menu.icon.arrowColor", "Menu.background"));
        pairs.add(pair("ScrollBar.thumb", "ScrollBar.track"));
        pairs.add(pair("ScrollBar.hoverThumbColor", "ScrollBar.hoverTrackColor"));
        pairs.add(pair("ScrollBar.pressedThumbColor", "ScrollBar.track"));
        pairs.add(pair("ProgressBar.foreground", "ProgressBar.background"));
        pairs.add(pair("SplitPaneDivider.gripColor", "SplitPane.background"));
        pairs.add(pair("Table.sortIconColor", "TableHeader.background"));
        pairs.add(pair("Tree.icon.collapsedColor", "Tree.background"));
        pairs.add(pair("Tree.icon.expandedColor", "Tree.background"));
        pairs.add(pair("List.selectionBackground", "List.background"));
        pairs.add(pair("Table.selectionBackground", "Table.background"));
        pairs.add(pair("Tree.selectionBackground", "Tree.background"));
        SoftAssertions.assertSoftly(softly -> pairs.forEach(pair -> pair.holds(Contrast.GRAPHIC, softly)));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void strokesAndPlansAreToldApartWithAnyColourVision(boolean dark) {
        Looks.use(dark);

        SheetColours sheet = Looks.sheetColours();

        assertThat(Contrast.of(sheet.out(), sheet.in()))
                .as("lightness of out against in")
                .isGreaterThan(2);
        for (ColourVision vision : ColourVision.values()) {
            assertThat(vision.distance(sheet.out(), sheet.in()))
                    .as("out and in " + vision)
                    .isGreaterThan(50);
            for (int i = 0; i < 4; i++)
                for (int j = 0; j < i; j++)
                    assertThat(vision.distance(
                                    sheet.plans().get(i), sheet.plans().get(j)))
                            .as("plans " + i + " and " + j + " " + vision)
                            .isGreaterThan(20);
        }
    }

    private static Pair pair(String over, String under) {
        return new Pair(over + " on " + under, colour(over), colour(under));
    }

    private static Color colour(String key) {
        Color colour = UIManager.getColor(key);
        assertThat(colour).as(key).isNotNull();
        assertThat(colour.getAlpha()).as("alpha of " + key).isEqualTo(255);
        return colour;
    }
}
