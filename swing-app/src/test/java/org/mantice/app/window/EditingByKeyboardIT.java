package org.mantice.app.window;

import static java.awt.event.InputEvent.CTRL_MASK;
import static java.awt.event.InputEvent.SHIFT_MASK;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JDialog;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.PlannerState;
import org.mantice.app.view.SheetView;
import org.mantice.editing.TuneEdit;
import org.mantice.tune.Barlines;
import org.mantice.tune.Mark;
import org.mantice.tune.Tempo;

/** A bare melody gets its chords, phrases, repeats and tempo by keys alone, is saved and opened again. */
class EditingByKeyboardIT extends EditingJob {
    @Test
    void fromABareMelodyToASavedPlanAndBack() throws Exception {
        press(KeyEvent.VK_O, CTRL_MASK);
        typeFileName(melody());
        tuneIsOpen(TITLE);

        press(KeyEvent.VK_5, CTRL_MASK);
        until("the sheet has the focus", () -> focus() instanceof SheetView);
        press(KeyEvent.VK_H, CTRL_MASK | SHIFT_MASK);
        until("chords are proposed", () -> chordAt(0).startsWith("proposed "));
        ready("it is planned with the proposals");
        press(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_UP);
        until("the chord line is pointed at", () -> selected() == 0);
        picture("editing-keyboard-1-proposed");

        type("Em", KeyEvent.VK_ENTER);
        until("a chord is typed in place", () -> chordAt(0).equals("Em"));
        until("the sheet has the focus again", () -> focus() instanceof SheetView);
        assertThat(selected()).isZero();
        press(KeyEvent.VK_RIGHT);
        type("Bm", KeyEvent.VK_TAB);
        until("the next chord is typed", () -> chordAt(1).equals("Bm"));
        until("Tab went on", () -> selected() == 2 && isTyping());
        robot.enterText("xyz");
        press(KeyEvent.VK_ENTER);
        assertThat(isTyping()).as("xyz is no chord").isTrue();
        press(KeyEvent.VK_ESCAPE);
        until("the field is closed", () -> !isTyping() && focus() instanceof SheetView);
        assertThat(chordAt(2)).isEmpty();

        press(KeyEvent.VK_LEFT);
        pressWithAlt(KeyEvent.VK_RIGHT);
        until("the chord is moved", () -> chordAt(2).equals("Bm") && chordAt(1).isEmpty());
        assertThat(selected()).isEqualTo(2);
        press(KeyEvent.VK_DELETE);
        until("the chord is taken away", () -> chordAt(2).isEmpty());
        press(KeyEvent.VK_Z, CTRL_MASK);
        until("it is back", () -> chordAt(2).equals("Bm"));

        press(KeyEvent.VK_HOME);
        press(KeyEvent.VK_J, CTRL_MASK);
        until("a phrase begins", () -> measure(0).marks().stream().anyMatch(mark -> mark instanceof Mark.PhraseStart));
        setTempo("84");
        setEndings();
        press(KeyEvent.VK_F9, SHIFT_MASK);
        until(
                "all proposals are accepted",
                () -> state().edited().orElseThrow().proposals().isEmpty());
        ready("it is planned with all of it");
        picture("editing-keyboard-2-edited");
        saveAndOpenAgain();
    }

    /** Types into the field that the first letter opens. */
    private void type(String chord, int last) {
        press(KeyEvent.getExtendedKeyCodeForChar(chord.charAt(0)), SHIFT_MASK);
        until("the field is open", () -> isTyping() && focus() instanceof JTextField);
        robot.enterText(chord.substring(1));
        until(chord + " is typed", () -> ((JTextComponent) focus()).getText().equals(chord));
        press(last);
    }

    private void setTempo(String beats) {
        press(KeyEvent.VK_M, CTRL_MASK);
        until("the tempo is asked for", () -> focus() instanceof JTextField && isCalled(focus(), "So many a minute"));
        type((JTextComponent) focus(), beats);
        press(KeyEvent.VK_ENTER);
        until("the tempo is set", () -> measure(0).marks().stream()
                .anyMatch(mark -> mark instanceof Mark.TempoChange change
                        && change.tempo().equals(Tempo.quarters(Integer.parseInt(beats)))));
        backOnTheSheet();
    }

    private void backOnTheSheet() {
        takeFocusBack();
        press(KeyEvent.VK_5, CTRL_MASK);
        until("the sheet has the focus", () -> focus() instanceof SheetView);
    }

    /** Of measures 8 and 9. */
    private void setEndings() {
        goTo(7);
        openBarlines();
        tabTo("the ending", focus -> isCalled(focus, "Ending for times"));
        robot.enterText("1, 2");
        tabTo("the repeat", focus -> focus instanceof JCheckBox && isCalled(focus, "Repeat ends"));
        press(KeyEvent.VK_SPACE);
        tabTo("the times", focus -> focus instanceof JTextField && isCalled(focus, "Played how often in all"));
        type((JTextComponent) focus(), "3");
        tabTo("the end of the ending", focus -> focus instanceof JCheckBox && isCalled(focus, "Ending ends"));
        press(KeyEvent.VK_SPACE);
        take(7, FIRST_ENDING);
        goTo(8);
        openBarlines();
        tabTo("the ending", focus -> isCalled(focus, "Ending for times"));
        robot.enterText("3");
        tabTo("the end of the ending", focus -> focus instanceof JCheckBox && isCalled(focus, "Ending ends"));
        press(KeyEvent.VK_SPACE);
        take(8, LAST_ENDING);
    }

    private void goTo(int measure) {
        press(KeyEvent.VK_HOME);
        for (int i = 0; i < 60 && placeMeasure() < measure; i++) press(KeyEvent.VK_RIGHT);
        assertThat(placeMeasure()).isEqualTo(measure);
    }

    private int placeMeasure() {
        return org.assertj.swing.edt.GuiActionRunner.execute(() -> org.mantice.app.view.SheetSpots.chordPlace(
                        sheet, org.mantice.app.view.SheetSpots.chordSelected(sheet))
                .measure());
    }

    private void openBarlines() {
        press(KeyEvent.VK_R, CTRL_MASK);
        until(
                "barlines are asked for",
                () -> focus() != null && SwingUtilities.getWindowAncestor(focus()) instanceof JDialog);
    }

    private void take(int measure, Barlines wanted) {
        press(KeyEvent.VK_ENTER);
        until("the barlines are set", () -> measure(measure).barlines().equals(wanted));
        backOnTheSheet();
    }

    private void saveAndOpenAgain() throws Exception {
        PlannerState edited = state();
        List<TuneEdit> edits = edited.setup().edits();
        assertThat(edits).hasSizeGreaterThan(6);
        Path plan = folder.resolve("hedge.plan.json");
        press(KeyEvent.VK_S, CTRL_MASK | SHIFT_MASK);
        typeFileName(plan);
        until("the plan is saved", () -> Files.exists(plan) && !state().unsaved());

        press(KeyEvent.VK_O, CTRL_MASK);
        typeFileName(tune());
        tuneIsOpen("The Rusty Gate");
        press(KeyEvent.VK_P, CTRL_MASK | SHIFT_MASK);
        typeFileName(plan);
        tuneIsOpen(TITLE);

        assertThat(state().setup().edits()).isEqualTo(edits);
        assertThat(state().editedTune()).isEqualTo(edited.editedTune());
        assertThat(state().chosenOffer().orElseThrow().cost())
                .isEqualTo(edited.chosenOffer().orElseThrow().cost());
        picture("editing-keyboard-3-reopened");
    }
}
