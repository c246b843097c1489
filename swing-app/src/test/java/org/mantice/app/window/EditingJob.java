package org.mantice.app.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeEach;
import org.mantice.app.view.SheetSpots;
import org.mantice.app.view.SheetView;
import org.mantice.tune.Barlines;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.WrittenPlace;

/** A bare melody of our own invention, to be edited in a real window. */
abstract class EditingJob extends MainJob {
    static final String TITLE = "Bare as a winter hedge";

    private static final String MELODY = String.join(
            "\n",
            "X:1",
            "T:" + TITLE,
            "M:3/4",
            "L:1/4",
            "K:G",
            "G2 B | A2 c | B A G | A2 D |",
            "G2 B | d2 c | B A F | G3 | G2 D | G3 |]",
            "");

    SheetView sheet;

    @BeforeEach
    void writeTheMelody() throws IOException {
        Files.writeString(melody(), MELODY);
        sheet = robot.finder().findByType(window.target(), SheetView.class, true);
    }

    Path melody() {
        return folder.resolve("hedge.abc");
    }

    /** The chord at a place as the model has it; empty for none. */
    Optional<PlacedChord> chord(int measure, WrittenPlace place) {
        return measure(measure).chords().stream()
                .filter(chord -> chord.offset().equals(place.offset()))
                .findFirst();
    }

    Measure measure(int index) {
        return state().editedTune().orElseThrow().measure(index);
    }

    /** At the n-th place of the chord line. */
    String chordAt(int number) {
        WrittenPlace place = GuiActionRunner.execute(() -> SheetSpots.chordPlace(sheet, number));
        return chord(place.measure(), place)
                .map(chord -> (chord.proposed() ? "proposed " : "") + chord.symbol())
                .orElse("");
    }

    int selected() {
        return GuiActionRunner.execute(() -> SheetSpots.chordSelected(sheet));
    }

    boolean isTyping() {
        return GuiActionRunner.execute(() -> SheetSpots.isTyping(sheet));
    }

    /** Three times through the first eight measures, the last time with the ninth in place of the eighth. */
    static final Barlines FIRST_ENDING = new Barlines(
            false, Optional.of(3), true, List.of(1, 2), true, false, false, Optional.empty(), false, false, false);

    static final Barlines LAST_ENDING = new Barlines(
            false, Optional.empty(), false, List.of(3), true, false, false, Optional.empty(), false, false, false);
}
