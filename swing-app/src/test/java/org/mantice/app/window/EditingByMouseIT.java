package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JDialog;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import org.mantice.app.view.SheetSpots;
import org.mantice.tune.Mark;

/** The same by mouse: only letters are typed. */
class EditingByMouseIT extends EditingJob {
    @Test
    void chordsPhraseAndBarlinesByMouse() {
        GuiActionRunner.execute(() -> ((MainWindow) window.target()).opening().open(java.util.List.of(melody())));
        tuneIsOpen(TITLE);

        window.menuItemWithPath("Tune", "Propose chords").click();
        until("chords are proposed", () -> chordAt(0).startsWith("proposed "));
        ready("it is planned with the proposals");
        robot.click(sheet, at(0));
        until("a place is pointed at", () -> selected() == 0);
        window.menuItemWithPath("Tune", "Accept proposed chord").click();
        until("the chord is accepted", () -> !chordAt(0).startsWith("proposed "));

        robot.click(sheet, at(1), MouseButton.LEFT_BUTTON, 2);
        until("the field is open", this::isTyping);
        robot.enterText("Em");
        robot.click(sheet, at(5));
        until("what was typed is taken by a click elsewhere", () -> chordAt(1).equals("Em") && !isTyping());
        ready("it is planned with it");

        drag(1, 2);
        until("the chord is moved", () -> chordAt(2).equals("Em") && chordAt(1).isEmpty());
        robot.click(sheet, at(2), MouseButton.RIGHT_BUTTON, 1);
        robot.click(item("Remove chord"));
        until("the chord is taken away", () -> chordAt(2).isEmpty());

        robot.click(sheet, at(0), MouseButton.RIGHT_BUTTON, 1);
        robot.click(item("Phrase begins here"));
        until("a phrase begins", () -> measure(0).marks().stream().anyMatch(mark -> mark instanceof Mark.PhraseStart));

        window.menuItemWithPath("Tune", "Barlines of this measure…").click();
        DialogFixture dialog =
                WindowFinder.findDialog(JDialog.class).withTimeout(10_000).using(robot);
        robot.click(inDialog(dialog, JCheckBox.class, "Double bar"));
        robot.click(inDialog(dialog, JTextField.class, "Ending for times"));
        robot.enterText("soon");
        robot.click(inDialog(dialog, JButton.class, "Set"));
        assertThat(dialog.target().isShowing()).as("soon is no ending").isTrue();
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("the dialog is closed", () -> !dialog.target().isShowing());
        assertThat(measure(0).barlines().doubleBar()).isFalse();
        picture("editing-mouse");
    }

    private Point at(int number) {
        Rectangle bounds = GuiActionRunner.execute(() -> SheetSpots.ofChord(sheet, number));
        return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
    }

    private void drag(int from, int to) {
        Point start = at(from);
        Point end = at(to);
        robot.moveMouse(sheet, start);
        robot.pressMouse(MouseButton.LEFT_BUTTON);
        robot.moveMouse(sheet, new Point((start.x + end.x) / 2, end.y));
        robot.moveMouse(sheet, end);
        robot.waitForIdle();
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    private JMenuItem item(String text) {
        return robot.finder().find(robot.findActivePopupMenu(), new GenericTypeMatcher<>(JMenuItem.class, true) {
            @Override
            protected boolean isMatching(JMenuItem item) {
                return text.equals(item.getText());
            }
        });
    }

    private <T extends javax.swing.JComponent> T inDialog(DialogFixture dialog, Class<T> type, String name) {
        return robot.finder().find(dialog.target(), new GenericTypeMatcher<>(type, true) {
            @Override
            protected boolean isMatching(T component) {
                return name.equals(component.getAccessibleContext().getAccessibleName());
            }
        });
    }
}
