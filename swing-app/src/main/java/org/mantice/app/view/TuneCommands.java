package org.mantice.app.view;

import java.util.Optional;
import java.util.function.Consumer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.fault.ManticeException;
import org.mantice.performance.Performance;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.WrittenPlace;

/** What the commands do that edit the tune on its sheet. */
final class TuneCommands {
    private final TuneEditor editor;
    private final SheetView sheet;
    private final Words words;
    private final Consumer<String> refused;

    /** @param refused told why an edit could not be made */
    TuneCommands(TuneEditor editor, SheetView sheet, Words words, Consumer<String> refused) {
        this.editor = editor;
        this.sheet = sheet;
        this.words = words;
        this.refused = refused;
    }

    /** Binds them and has them follow what is pointed at. */
    void bind(PlannerModel model, Actions actions) {
        bindChords(actions);
        bindProposals(actions);
        bindMeasures(actions);
        editor.addListener(() -> actions.follow(model.state()));
        sheet.onMove(this::move);
    }

    private void bindChords(Actions actions) {
        actions.bind(Command.CHORD_HERE, () -> sheet.typing().open(""), this::isShown);
        actions.bind(Command.CHORD_EARLIER, () -> moveBy(-1), state -> chord().isPresent());
        actions.bind(Command.CHORD_LATER, () -> moveBy(1), state -> chord().isPresent());
        actions.bind(Command.REMOVE_CHORD, () -> here(editor::removeChord), state -> chord().isPresent());
    }

    private void bindProposals(Actions actions) {
        actions.bind(Command.PROPOSE_CHORDS, () -> attempt(editor::propose), this::isShown);
        actions.bind(Command.ACCEPT_CHORD, () -> here(editor::accept), state -> chord().filter(PlacedChord::proposed)
                .isPresent());
        actions.bind(Command.ACCEPT_CHORDS, () -> attempt(editor::acceptAll), state -> editor.hasProposals());
        actions.bind(Command.DISMISS_PROPOSALS, () -> attempt(editor::dismiss), state -> editor.hasProposals());
    }

    private void bindMeasures(Actions actions) {
        actions.bindSwitch(
                Command.PHRASE_BEGINS,
                () -> attempt(() -> editor.setPhrase(!editor.phraseBegins())),
                this::isPlaced,
                state -> editor.phraseBegins());
        actions.bind(
                Command.BARLINES,
                () -> ask("edit.barlines.title", new BarlinesForm(measure().barlines(), editor, words)),
                this::isPlaced);
        actions.bind(
                Command.TEMPO_HERE,
                () -> ask(
                        "edit.tempo.title",
                        new TempoForm(
                                editor.tempo(),
                                editor.shown().orElseThrow().settings().tempo(),
                                editor,
                                words)),
                this::isPlaced);
        actions.bind(
                Command.KEY_FROM_HERE,
                () -> ask("edit.key.title", new KeyForm(measure().key(), editor, words)),
                this::isPlaced);
    }

    private boolean isShown(PlannerState state) {
        return state.tune().isPresent() && editor.shown().isPresent();
    }

    private boolean isPlaced(PlannerState state) {
        return editor.place().isPresent();
    }

    private Optional<PlacedChord> chord() {
        return editor.chord();
    }

    private Measure measure() {
        return editor.measure().orElseThrow();
    }

    private void ask(String title, EditForm form) {
        WrittenPlace place = editor.place().orElseThrow();
        String words = new MusicWords(this.words)
                .place(editor.shown().map(Performance::tune).orElseThrow(), place);
        EditDialog.show(sheet, this.words.text(title, measure().number(), words), form, this.words);
        sheet.requestFocusInWindow();
    }

    private void here(Consumer<WrittenPlace> edit) {
        editor.selected().map(ChordSpot::place).ifPresent(place -> attempt(() -> edit.accept(place)));
    }

    private void moveBy(int way) {
        editor.selected().map(ChordSpot::place).ifPresent(from -> editor.freeBeside(from, way)
                .ifPresent(to -> move(from, to)));
    }

    private void move(WrittenPlace from, WrittenPlace to) {
        if (attempt(() -> editor.moveChord(from, to))) sheet.pointer().goTo(to);
        else sheet.pointer().goTo(from);
    }

    private boolean attempt(Runnable edit) {
        try {
            edit.run();
            return true;
        } catch (ManticeException e) {
            refused.accept(new MusicWords(words).trouble(e));
            return false;
        }
    }
}
