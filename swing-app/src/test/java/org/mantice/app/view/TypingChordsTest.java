package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.ChordText;
import org.mantice.app.words.Words;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** Chords typed, moved and taken away on the sheet, by keys and by mouse, without a window. */
class TypingChordsTest {
    private final PlannerModel model = Planned.of("the-rusty-gate");
    private final TuneEditor editor = new TuneEditor(model);
    private final Actions actions = new Actions(Planned.ENGLISH);
    private final List<String> refused = new ArrayList<>();
    private SheetView view;

    @BeforeEach
    void showATune() {
        view = new SheetView(model, editor, Planned.ENGLISH, actions);
        view.setSize(1200, 900);
        new TuneCommands(editor, view, Planned.ENGLISH, refused::add).bind(model, actions);
        model.addListener(actions::follow);
        actions.follow(model.state());
    }

    private static void press(JComponent component, String key) {
        Object name = component.getInputMap().get(KeyStroke.getKeyStroke(key));
        Action action = component.getActionMap().get(name);
        assertThat(action).as(key).isNotNull();
        action.actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, key));
    }

    private void press(String key) {
        press(view, key);
    }

    private void inField(String key) {
        press(view.typing().field().field(), key);
    }

    private void letter(char letter, int held) {
        KeyEvent typed = new KeyEvent(view, KeyEvent.KEY_TYPED, 0, held, KeyEvent.VK_UNDEFINED, letter);
        // Without a window nothing has the focus, and keys go nowhere by themselves.
        for (KeyListener listener : view.getKeyListeners()) listener.keyTyped(typed);
    }

    private List<ChordTarget> chords() {
        return view.sheet().orElseThrow().chords();
    }

    private ChordTarget first(boolean taken) {
        return chords().stream()
                .filter(target -> target.taken() == taken)
                .findFirst()
                .orElseThrow();
    }

    private void mouse(int id, ChordTarget target, int clicks, int button) {
        int held = id == MouseEvent.MOUSE_DRAGGED ? InputEvent.BUTTON1_DOWN_MASK : 0;
        view.dispatchEvent(new MouseEvent(
                view,
                id,
                0,
                held,
                (int) target.bounds().getCenterX(),
                (int) target.bounds().getCenterY(),
                clicks,
                false,
                button));
    }

    private void click(ChordTarget target, int times) {
        for (int id : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED, MouseEvent.MOUSE_CLICKED})
            mouse(id, target, times, MouseEvent.BUTTON1);
    }

    private String at(WrittenPlace place) {
        return editor.chordAt(place).map(ChordText::of).orElse("");
    }

    private String at(ChordTarget target) {
        return at(target.spot().place());
    }

    @Test
    void upFromTheFingersComesToTheChordLineAndDownGoesBack() {
        press("RIGHT");
        var finger = model.state().selection();

        press("UP");

        assertThat(editor.selected()).contains(chords().get(0).spot());
        assertThat(model.state().selection()).isEmpty();
        assertThat(view.getAccessibleContext().getAccessibleDescription()).startsWith("Chord line, measure ");
        press("DOWN");
        assertThat(model.state().selection()).isEqualTo(finger);
        assertThat(editor.selected()).isEmpty();
    }

    @Test
    void rightGoesThroughEveryPlaceOfTheChordLine() {
        press("RIGHT");
        press("UP");
        List<ChordSpot> seen = new ArrayList<>(List.of(editor.selected().orElseThrow()));
        for (int i = 1; i < chords().size(); i++) {
            press("RIGHT");
            seen.add(editor.selected().orElseThrow());
        }

        assertThat(seen).isEqualTo(chords().stream().map(ChordTarget::spot).toList());
        press("HOME");
        assertThat(editor.selected()).contains(seen.get(0));
        press("PAGE_DOWN");
        assertThat(chords().stream()
                        .filter(target -> target.spot().equals(editor.selected().orElseThrow()))
                        .findFirst()
                        .orElseThrow()
                        .line())
                .isEqualTo(1);
    }

    @Test
    void aLetterOpensTheFieldWithItAndEnterTakesTheChord() {
        ChordTarget target = first(true);
        click(target, 1);

        letter('e', 0);
        assertThat(view.typing().field().isOpen()).isTrue();
        assertThat(view.typing().field().field().getText()).isEqualTo("E");
        view.typing().field().field().setText("Em");
        inField("ENTER");

        assertThat(view.typing().field().isOpen()).isFalse();
        assertThat(at(target)).isEqualTo("Em");
        assertThat(editor.selected()).contains(target.spot());
        model.undo();
        assertThat(at(target)).isNotEqualTo("Em");
    }

    @Test
    void aLetterWithControlOrWithoutAPlaceOpensNothing() {
        letter('e', 0);
        click(first(true), 1);
        letter('e', InputEvent.CTRL_DOWN_MASK);
        letter('q', 0);

        assertThat(view.typing().field().isOpen()).isFalse();
    }

    @Test
    void enterOpensTheFieldWithWhatStandsThereAndEscapeLeavesIt() {
        ChordTarget target = first(true);
        String before = at(target);
        click(target, 1);

        press("ENTER");
        assertThat(view.typing().field().field().getText()).isEqualTo(before);
        assertThat(view.typing().field().field().getAccessibleContext().getAccessibleName())
                .startsWith("Chord at measure ");
        view.typing().field().field().setText("F#dim");
        inField("ESCAPE");

        assertThat(view.typing().field().isOpen()).isFalse();
        assertThat(at(target)).isEqualTo(before);
        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void tabTakesTheChordAndGoesOnAndBackAgain() {
        ChordTarget target = first(false);
        click(target, 1);
        letter('b', 0);
        view.typing().field().field().setText("Bb");

        inField("TAB");

        assertThat(at(target)).isEqualTo("B♭");
        int next = chords().stream().map(ChordTarget::spot).toList().indexOf(target.spot()) + 1;
        assertThat(editor.selected()).contains(chords().get(next).spot());
        assertThat(view.typing().field().isOpen()).isTrue();
        inField("shift TAB");
        assertThat(editor.selected()).contains(target.spot());
        assertThat(view.typing().field().field().getText()).isEqualTo("B♭");
    }

    @Test
    void whatIsNoChordKeepsTheFieldOpenAndIsSaidBelowIt() {
        ChordTarget target = first(true);
        String before = at(target);
        click(target, 2);
        view.typing().field().field().setText("slowly");

        inField("ENTER");

        ChordField field = view.typing().field();
        assertThat(field.isOpen()).isTrue();
        assertThat(field.said()).startsWith("“slowly” is no chord symbol");
        assertThat(field.field().getAccessibleContext().getAccessibleDescription())
                .isEqualTo(field.said());
        assertThat(at(target)).isEqualTo(before);
        field.field().setText("D7");
        assertThat(field.said()).isEmpty();
        inField("ENTER");
        assertThat(at(target)).isEqualTo("D7");
    }

    @Test
    void theFieldStaysInItsPlaceWhenTheSheetIsLaidOutAnew() {
        ChordTarget target = first(true);
        click(target, 2);
        int x = view.typing().field().getX();

        view.setZoom(1.5);

        assertThat(view.typing().field().isOpen()).isTrue();
        assertThat(view.typing().field().getX()).isNotEqualTo(x);
        ChordTarget now = view.sheet().orElseThrow().chord(target.spot()).orElseThrow();
        assertThat(view.typing().field().getBounds().contains(now.bounds().getBounds().x + 2, (int)
                        now.bounds().getCenterY()))
                .isTrue();
    }

    @Test
    void deleteTakesTheChordAway() {
        ChordTarget target = first(true);
        click(target, 1);

        press("DELETE");

        assertThat(at(target)).isEmpty();
        assertThat(editor.selected()).contains(target.spot());
        press("DELETE");
        assertThat(refused).isEmpty();
        model.undo();
        assertThat(at(target)).isNotEmpty();
    }

    @Test
    void altWithAnArrowMovesTheChordAndTheSelectionWithIt() {
        ChordTarget target = first(true);
        String chord = at(target);
        click(target, 1);

        press("alt RIGHT");

        WrittenPlace now = editor.selected().orElseThrow().place();
        assertThat(now).isGreaterThan(target.spot().place());
        assertThat(at(now)).isEqualTo(chord);
        assertThat(at(target)).isEmpty();
        press("alt LEFT");
        assertThat(at(target)).isEqualTo(chord);
    }

    @Test
    void draggingMovesAChordAndDroppingItOnAnotherIsRefused() {
        ChordTarget from = first(true);
        String chord = at(from);
        ChordTarget to = first(false);
        mouse(MouseEvent.MOUSE_PRESSED, from, 1, MouseEvent.BUTTON1);
        mouse(MouseEvent.MOUSE_DRAGGED, to, 0, 0);
        mouse(MouseEvent.MOUSE_RELEASED, to, 1, MouseEvent.BUTTON1);
        assertThat(at(to)).isEqualTo(chord);
        assertThat(at(from)).isEmpty();

        ChordTarget here = view.sheet().orElseThrow().chord(to.spot()).orElseThrow();
        ChordTarget other = chords().stream()
                .filter(target -> target.taken() && !target.spot().equals(to.spot()))
                .findFirst()
                .orElseThrow();
        mouse(MouseEvent.MOUSE_PRESSED, here, 1, MouseEvent.BUTTON1);
        mouse(MouseEvent.MOUSE_DRAGGED, other, 0, 0);
        mouse(MouseEvent.MOUSE_RELEASED, other, 1, MouseEvent.BUTTON1);
        assertThat(refused).hasSize(1);
        assertThat(refused.get(0)).contains("there is a chord already");
        assertThat(at(to)).isEqualTo(chord);
        assertThat(editor.selected()).contains(to.spot());
    }

    @Test
    void chordHereOpensAboveTheDecisionSelected() {
        press("RIGHT");
        press("RIGHT");
        WrittenPlace note = model.state().selection().orElseThrow().spot().place();

        actions.get(Command.CHORD_HERE).actionPerformed(null);

        assertThat(view.typing().field().isOpen()).isTrue();
        assertThat(editor.selected().orElseThrow().place()).isEqualTo(note);
    }

    @Test
    void proposingAcceptingAndDismissingAreCommandsOfTheirOwn() {
        assertThat(actions.get(Command.ACCEPT_CHORDS).isEnabled()).isFalse();
        for (ChordTarget target : chords())
            if (target.taken()) editor.removeChord(target.spot().place());

        actions.get(Command.PROPOSE_CHORDS).actionPerformed(null);

        ChordTarget proposed = first(true);
        assertThat(editor.chordAt(proposed.spot().place()).orElseThrow().proposed())
                .isTrue();
        click(proposed, 1);
        assertThat(view.getAccessibleContext().getAccessibleDescription()).endsWith(", proposed");
        assertThat(actions.get(Command.ACCEPT_CHORD).isEnabled()).isTrue();
        actions.get(Command.ACCEPT_CHORD).actionPerformed(null);
        assertThat(editor.chordAt(proposed.spot().place()).orElseThrow().proposed())
                .isFalse();
        assertThat(actions.get(Command.ACCEPT_CHORD).isEnabled()).isFalse();
        actions.get(Command.DISMISS_PROPOSALS).actionPerformed(null);
        assertThat(chords().stream().filter(ChordTarget::taken)).hasSize(1);
    }

    @Test
    void aPhraseIsMarkedAndUnmarkedByOneCommand() {
        click(chords().get(0), 1);

        actions.get(Command.PHRASE_BEGINS).actionPerformed(null);
        assertThat(actions.get(Command.PHRASE_BEGINS).getValue(Action.SELECTED_KEY))
                .isEqualTo(true);
        actions.get(Command.PHRASE_BEGINS).actionPerformed(null);
        assertThat(actions.get(Command.PHRASE_BEGINS).getValue(Action.SELECTED_KEY))
                .isEqualTo(false);
    }

    @Test
    void aPhraseWhereNoNoteBeginsIsRefusedWithThePlace() {
        ChordTarget held = chords().stream()
                .filter(target -> isHeld(target.spot().place()))
                .findFirst()
                .orElseThrow();
        click(held, 1);

        actions.get(Command.PHRASE_BEGINS).actionPerformed(null);

        assertThat(refused).hasSize(1);
        assertThat(refused.get(0)).contains("No note begins at");
    }

    private boolean isHeld(WrittenPlace place) {
        return model.state().editedTune().orElseThrow().measure(place.measure()).melody().stream()
                .noneMatch(event -> event.offset().equals(place.offset()));
    }

    @Test
    void everyPlaceIsSaidInBothLanguages() {
        editor.removeChord(first(true).spot().place());
        editor.propose();
        for (Words words : List.of(Planned.ENGLISH, Words.of(java.util.Locale.GERMAN))) {
            SheetSaying saying = new SheetSaying(words, editor);
            for (ChordTarget target : chords()) {
                editor.select(Optional.of(target.spot()));
                assertThat(saying.selected(Optional.of(content()))).matches(".+, .+: .+");
            }
        }
        assertThat(new SheetSaying(Planned.ENGLISH, editor).place(new WrittenPlace(0, MusicalTime.ZERO)))
                .startsWith("measure ");
    }

    private org.mantice.app.sheet.SheetContent content() {
        return new SheetContents(
                        new org.mantice.app.words.PlanWords(
                                Planned.ENGLISH, model.packs().providers()),
                        editor)
                .of(model.state())
                .orElseThrow();
    }
}
