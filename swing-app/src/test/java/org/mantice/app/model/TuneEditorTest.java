package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.editing.TuneEditException;
import org.mantice.performance.Performance;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class TuneEditorTest {
    private static final Tune BARE =
            Tunes.melody("3/4", "C4 q, E4 q, G4 q | C5 h, B4 q | A4 q, C5 q, A4 q | G4 h. | F4 q, A4 q, F4 q | E4 h.");

    private final SteppedBackground background = new SteppedBackground();
    private final PlannerModel model = new PlannerModel(States.packs(), background, SmallTunes.setup());
    private final TuneEditor editor = new TuneEditor(model);

    private void open(Tune tune) {
        model.open(SmallTunes.open(tune));
        background.runAll();
    }

    private static WrittenPlace place(int measure, long quarters) {
        return new WrittenPlace(measure, MusicalTime.of(quarters, 4));
    }

    private void point(int measure, long quarters) {
        editor.select(Optional.of(new ChordSpot(measure, place(measure, quarters))));
    }

    private String chord(int measure, long quarters) {
        return editor.chordAt(place(measure, quarters))
                .map(PlacedChord::symbol)
                .map(Object::toString)
                .orElse("");
    }

    @Test
    void aChordIsOnTheSheetAtOnceAndThePlansComeLater() {
        open(BARE);
        Performance before = model.state().performance().orElseThrow();

        editor.setChord(place(0, 0), "am7");

        assertThat(chord(0, 0)).isEqualTo("Am7");
        assertThat(model.state().isWorking()).isTrue();
        assertThat(model.state().performance()).contains(before);
        assertThat(editor.plansFit()).isTrue();
        background.runAll();
        assertThat(model.state().performance().orElseThrow().tune().measure(0).chords())
                .hasSize(1);
        assertThat(editor.shown()).isEqualTo(model.state().performance());
    }

    @Test
    void theTuneAsShownIsWorkedOutOnce() {
        open(BARE);
        editor.setChord(place(0, 0), "C");

        assertThat(editor.shown().orElseThrow()).isSameAs(editor.shown().orElseThrow());
    }

    @Test
    void pointingAtTheChordLineTakesTheSelectionAndIsTakenByIt() {
        open(BARE);
        Selection finger = new Selection(
                0, new org.mantice.app.sheet.Spot(org.mantice.app.sheet.Strip.FINGERS, 0, 1, place(0, 0), 0));
        model.select(Optional.of(finger));
        List<String> told = new ArrayList<>();
        editor.addListener(() ->
                told.add(editor.selected().map(spot -> spot.place().toString()).orElse("none")));

        point(1, 2);
        assertThat(model.state().selection()).isEmpty();
        model.select(Optional.of(finger));

        assertThat(editor.selected()).isEmpty();
        assertThat(editor.place()).contains(place(0, 0));
        assertThat(told).hasSize(2);
    }

    @Test
    void theSelectionStaysWhileThePlansCome() {
        open(BARE);
        point(1, 0);

        editor.setChord(place(1, 0), "F");
        background.runAll();

        assertThat(editor.selected()).contains(new ChordSpot(1, place(1, 0)));
        assertThat(chord(1, 0)).isEqualTo("F");
    }

    @Test
    void aSmallLetterAndAnHAreUnderstoodAndProseIsNot() {
        open(BARE);

        editor.setChord(place(0, 0), "hm");
        editor.setChord(place(1, 0), "g/h");
        editor.setChord(place(2, 0), "n.c.");

        assertThat(chord(0, 0)).isEqualTo("Bm");
        assertThat(chord(1, 0)).isEqualTo("G/B");
        assertThat(editor.chordAt(place(2, 0)).orElseThrow().symbol().isSilent())
                .isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> editor.setChord(place(0, 0), "slowly"));
        assertThat(chord(0, 0)).isEqualTo("Bm");
    }

    @Test
    void inATransposedTuneChordsAreTypedAsTheSheetShowsThem() {
        open(BARE);
        model.setWishes(Wishes.NONE.withTransposition(2));
        background.runAll();

        editor.setChord(place(0, 0), "F#m7/C#");

        assertThat(chord(0, 0)).isEqualTo("F#m7/C#");
        assertThat(model.state()
                        .editedTune()
                        .orElseThrow()
                        .measure(0)
                        .chords()
                        .get(0)
                        .symbol())
                .hasToString("Em7/B");
        model.setWishes(Wishes.NONE);
        background.runAll();
        assertThat(chord(0, 0)).isEqualTo("Em7/B");
    }

    @Test
    void aChordForLaterPassesAndOneInBracketsAreTypedInAnyKey() {
        open(BARE);
        model.setWishes(Wishes.NONE.withTransposition(2));
        background.runAll();

        editor.setChord(place(0, 0), "D(Bm)");
        editor.setChord(place(1, 0), "(A7)");

        PlacedChord two = editor.chordAt(place(0, 0)).orElseThrow();
        assertThat(two.symbol()).hasToString("D");
        assertThat(two.alternate().map(Object::toString)).contains("Bm");
        assertThat(editor.chordAt(place(1, 0)).orElseThrow().optional()).isTrue();
        assertThat(chord(1, 0)).isEqualTo("A7");
    }

    @Test
    void anEmptyTextTakesAChordAwayAndDoesNothingWhereNoneIs() {
        open(SmallTunes.WALTZ);

        editor.setChord(place(0, 1), "  ");
        assertThat(model.state().undo()).isEmpty();
        editor.setChord(place(0, 0), "");

        assertThat(chord(0, 0)).isEmpty();
        model.undo();
        assertThat(chord(0, 0)).isEqualTo("C");
    }

    @Test
    void aChordMovesToTheNextFreePlaceOnEitherSide() {
        open(SmallTunes.WALTZ);

        assertThat(editor.freeBeside(place(2, 0), 1)).contains(place(2, 1));
        assertThat(editor.freeBeside(place(2, 0), -1)).contains(place(1, 2));
        assertThat(editor.freeBeside(place(0, 0), -1)).isEmpty();

        editor.moveChord(place(2, 0), place(1, 2));
        assertThat(chord(1, 2)).isEqualTo("F");
        assertThat(chord(2, 0)).isEmpty();
        assertThatThrownBy(() -> editor.moveChord(place(0, 0), place(1, 2))).isInstanceOf(TuneEditException.class);
        assertThat(chord(0, 0)).isEqualTo("C");
    }

    @Test
    void proposalsAreMarkedExplainedAcceptedAndDismissed() {
        open(BARE);
        assertThat(editor.hasProposals()).isFalse();

        editor.propose();
        PlacedChord first = editor.chordAt(place(0, 0)).orElseThrow();
        assertThat(first.proposed()).isTrue();
        assertThat(editor.proposalAt(place(0, 0)).orElseThrow().symbol()).isEqualTo(first.symbol());
        assertThat(editor.proposalAt(place(0, 0)).orElseThrow().facts()).isNotEmpty();

        editor.accept(place(0, 0));
        assertThat(editor.chordAt(place(0, 0)).orElseThrow().proposed()).isFalse();
        assertThat(editor.proposalAt(place(0, 0))).isEmpty();
        assertThat(editor.hasProposals()).isTrue();
        editor.dismiss();
        assertThat(editor.hasProposals()).isFalse();
        assertThat(chord(0, 0)).isEqualTo(first.symbol().toString());

        model.undo();
        editor.acceptAll();
        assertThat(editor.hasProposals()).isFalse();
        assertThat(model.state().editedTune().orElseThrow().measures())
                .flatExtracting(Measure::chords)
                .hasSizeGreaterThan(1)
                .noneMatch(PlacedChord::proposed);
    }

    @Test
    void theChordThatGoesOnIsTheOnePlayedBeforeNotTheOneWrittenBefore() {
        open(Tunes.melody(
                "3/4", "C4 h. | \"C\" C4 h. | @ending1 @end @stop \"G7\" D4 h. | @ending2 @stop C4 h. | C4 h."));

        assertThat(editor.sounding(place(0, 0))).isEmpty();
        assertThat(editor.sounding(place(1, 2)).map(Object::toString)).contains("C");
        assertThat(editor.sounding(place(2, 1)).map(Object::toString)).contains("G7");
        assertThat(editor.sounding(place(3, 0)).map(Object::toString)).contains("C");
    }

    @Test
    void phraseTempoAndKeyAreSetWhereThePlayerPoints() {
        open(BARE);
        point(2, 1);

        editor.setPhrase(true);
        assertThat(editor.phraseBegins()).isTrue();
        editor.setPhrase(false);
        assertThat(editor.phraseBegins()).isFalse();

        Tempo slow = Tempo.quarters(72);
        editor.setTempo(Optional.of(slow));
        assertThat(editor.tempo()).contains(slow);
        editor.setTempo(Optional.empty());
        assertThat(editor.tempo()).isEmpty();

        Key minor = new Key(-3, Mode.MINOR);
        editor.setKey(minor);
        assertThat(editor.measure().orElseThrow().key()).isEqualTo(minor);
        assertThat(model.state().editedTune().orElseThrow().measure(1).key()).isEqualTo(Key.C_MAJOR);
    }

    @Test
    void whatIsAsItWasIsNoStepToUndo() {
        open(BARE);
        point(2, 1);

        editor.setTempo(Optional.empty());
        editor.setKey(Key.C_MAJOR);
        editor.setBarlines(Barlines.PLAIN);

        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void aRepeatOfThreeTimesWithEndingsIsPlayedSoAndPlansOfBeforeNoLongerFit() {
        open(BARE);
        point(3, 0);
        editor.setBarlines(new Barlines(
                false, Optional.of(3), true, List.of(1, 2), true, false, false, Optional.empty(), false, false, false));
        point(4, 0);
        editor.setBarlines(new Barlines(
                false, Optional.empty(), false, List.of(3), true, false, false, Optional.empty(), false, false, false));

        assertThat(editor.plansFit()).isFalse();
        assertThat(played(editor.shown().orElseThrow())).startsWith(0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 4, 5);
        background.runAll();
        assertThat(editor.plansFit()).isTrue();
        model.undo();
        model.undo();
        background.runAll();
        assertThat(played(editor.shown().orElseThrow())).startsWith(0, 1, 2, 3, 4, 5);
    }

    private static List<Integer> played(Performance performance) {
        return performance.measures().stream().map(measure -> measure.written()).toList();
    }

    @Test
    void anotherTuneTakesAwayWhatWasPointedAtBeyondItsEnd() {
        open(BARE);
        point(5, 0);

        open(Tunes.melody("3/4", "C4 h. | D4 h."));

        assertThat(editor.selected()).isEmpty();
        assertThat(editor.place()).isEmpty();
    }

    @Test
    void aChangeOfSettingsIsShownOnceItIsPlanned() {
        open(BARE);
        Performance before = editor.shown().orElseThrow();

        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(2)));

        assertThat(editor.shown()).contains(before);
    }
}
