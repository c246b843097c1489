package org.mantice.app.window;

import static java.awt.event.InputEvent.CTRL_MASK;
import static java.awt.event.InputEvent.SHIFT_MASK;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.PlannerState;
import org.mantice.app.sheet.Strip;
import org.mantice.app.view.SheetView;

/** No mouse at all: what is needed is reached by keys, the tabulator and mnemonics. */
class MainJobByKeyboardIT extends MainJob {
    @Test
    void fromOpeningToExport() throws Exception {
        press(KeyEvent.VK_O, CTRL_MASK);
        typeFileName(tune());
        tuneIsOpen("The Rusty Gate");

        press(KeyEvent.VK_E, CTRL_MASK | SHIFT_MASK);
        tabTo("the accordions", focus -> focus instanceof JComboBox<?> && isCalled(focus, "Accordion"));
        press(KeyEvent.VK_UP);
        until(
                "another accordion is picked",
                () -> !state().setup().accordion().id().startsWith("full"));
        tabTo("the tempo", focus -> focus instanceof JTextField && isCalled(focus, "Tempo"));
        type((JTextComponent) focus(), "92");
        press(KeyEvent.VK_ENTER);
        until(
                "the tempo is set",
                () -> state().setup().wishes().beatsPerMinute().orElse(0) == 92);
        ready("it is planned anew");

        press(KeyEvent.VK_F3);
        until("a difference is stepped to", () -> state().differenceAt().isPresent());
        press(KeyEvent.VK_5, CTRL_MASK);
        until("the sheet has the focus", () -> focus() instanceof SheetView);
        press(KeyEvent.VK_HOME);
        for (int i = 0; i < 4 && !onStrip(Strip.FINGERS); i++) press(KeyEvent.VK_UP);
        until("a finger is selected", () -> onStrip(Strip.FINGERS));
        press(KeyEvent.VK_RIGHT);
        until("a finger is explained", () -> state().insight()
                .filter(insight ->
                        insight.selection().equals(state().selection().orElseThrow()))
                .isPresent());
        press(KeyEvent.VK_7, CTRL_MASK);
        tabTo("the choices", focus -> focus instanceof JTable && isCalled(focus, "What else was possible here"));
        press(KeyEvent.VK_DOWN);
        press(KeyEvent.VK_DOWN);
        until("another finger is pointed at", () -> ((JTable) focus()).getSelectedRow() == 1);
        press(KeyEvent.VK_ENTER);
        until("the finger is locked", () -> state().setup().locks().size() == 1);
        ready("it is planned with the lock");

        press(KeyEvent.VK_Z, CTRL_MASK);
        until("the lock is undone", () -> state().setup().locks().isEmpty());
        press(KeyEvent.VK_Y, CTRL_MASK);
        until("the lock is back", () -> state().setup().locks().size() == 1);
        ready("it is planned with the lock again");
        press(KeyEvent.VK_2, CTRL_MASK);
        until("plan B is chosen", () -> state().chosen() == 1);
        picture("keyboard-chosen");

        Path exported = folder.resolve("exported.plan.json");
        press(KeyEvent.VK_E, CTRL_MASK);
        typeFileName(exported);
        until("the plan is exported", () -> Files.exists(exported));
        PlannerState chosen = state();
        assertThat(Files.readAllBytes(exported))
                .isEqualTo(fromCommandLine(chosen, chosen.setup().accordion().id(), "92"));
    }

    private boolean onStrip(Strip strip) {
        return state().selection().filter(one -> one.spot().strip() == strip).isPresent();
    }
}
