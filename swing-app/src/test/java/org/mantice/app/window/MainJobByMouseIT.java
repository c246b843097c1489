package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.data.TableCell;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.JComboBoxFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JTabbedPaneFixture;
import org.assertj.swing.fixture.JTableFixture;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.PlannerState;
import org.mantice.app.sheet.Strip;
import org.mantice.app.view.SheetSpots;
import org.mantice.app.view.SheetView;
import org.mantice.app.view.WhyView;

class MainJobByMouseIT extends MainJob {
    @Test
    void fromOpeningToExport() throws Exception {
        window.menuItemWithPath("File", "Open tune…").click();
        JFileChooserFinder.findFileChooser()
                .withTimeout(10_000)
                .using(robot)
                .selectFile(tune().toFile())
                .approve();
        tuneIsOpen("The Rusty Gate");
        new JComboBoxFixture(robot, named(JComboBox.class, "Accordion")).selectItem("Standard, 34 keys, 72 bass");
        until("the accordion is picked", () -> state().setup().accordion().id().contains("34"));
        JTextComponent tempo = named(JTextComponent.class, "Tempo");
        robot.click(tempo);
        until("the tempo has the focus", tempo::isFocusOwner);
        type(tempo, "92");
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until(
                "the tempo is set",
                () -> state().setup().wishes().beatsPerMinute().orElse(0) == 92);
        ready("it is planned anew");
        picture("mouse-1-planned");

        JTabbedPaneFixture side = new JTabbedPaneFixture(robot, named(JTabbedPane.class, "Why, differences, taste"));
        side.selectTab("Differences");
        click(named(JButton.class, "Next difference"));
        until("a difference is stepped to", () -> state().differenceAt().isPresent());
        picture("mouse-2-difference");

        SheetView sheet = robot.finder().findByType(window.target(), SheetView.class, true);
        Rectangle finger = GuiActionRunner.execute(() -> {
            Rectangle bounds = SheetSpots.of(sheet, 0, Strip.FINGERS, 5);
            sheet.scrollRectToVisible(bounds);
            return bounds;
        });
        robot.click(sheet, new Point((int) finger.getCenterX(), (int) finger.getCenterY()));
        until("a finger is selected and explained", () -> state().insight()
                .filter(insight -> insight.selection().spot().strip() == Strip.FINGERS
                        && insight.selection().equals(state().selection().orElseThrow()))
                .isPresent());
        side.selectTab("Why");
        until(
                "why is in view",
                () -> robot.finder().findByType(window.target(), WhyView.class).isShowing());
        JTableFixture choices = new JTableFixture(robot, named(JTable.class, "What else was possible here"));
        choices.selectCell(TableCell.row(1).column(0));
        picture("mouse-3-why");
        click(named(JButton.class, "Take this"));
        until("the finger is locked", () -> state().setup().locks().size() == 1);
        ready("it is planned with the lock");

        window.menuItemWithPath("Edit", "Undo: lock").click();
        until("the lock is undone", () -> state().setup().locks().isEmpty());
        window.menuItemWithPath("Edit", "Redo: lock").click();
        until("the lock is back", () -> state().setup().locks().size() == 1);
        ready("it is planned with the lock again");
        window.menuItemWithPath("Plans", "Choose plan B").click();
        until("plan B is chosen", () -> state().chosen() == 1);
        picture("mouse-4-chosen");

        Path exported = folder.resolve("exported.plan.json");
        window.menuItemWithPath("File", "Export plan as JSON…").click();
        JFileChooserFixture chooser =
                JFileChooserFinder.findFileChooser().withTimeout(10_000).using(robot);
        chooser.fileNameTextBox().setText(exported.toString());
        chooser.approve();
        until("the plan is exported", () -> Files.exists(exported));
        PlannerState chosen = state();
        assertThat(Files.readAllBytes(exported))
                .isEqualTo(fromCommandLine(chosen, chosen.setup().accordion().id(), "92"));
    }

    private void click(Component component) {
        robot.click(component);
    }
}
