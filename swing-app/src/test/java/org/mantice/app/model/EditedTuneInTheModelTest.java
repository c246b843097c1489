package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.FallenLock;
import org.mantice.editing.TuneEdit;
import org.mantice.editing.TuneEditException;
import org.mantice.file.PlanFile;
import org.mantice.instrument.ButtonNames;
import org.mantice.performance.HarmonySpan;
import org.mantice.plan.Lock;
import org.mantice.tune.Barlines;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

/** What is edited is planned, kept, undone, and told. */
class EditedTuneInTheModelTest {
    private static final Barlines REPEATED = new Barlines(
            false, Optional.of(2), false, List.of(), false, false, false, Optional.empty(), false, false, true);

    private final PlannerModel model = new PlannerModel(States.packs(), new DirectBackground(), SmallTunes.setup());

    private PlannerState open(Tune tune) {
        model.open(SmallTunes.open(tune));
        return model.state();
    }

    private static WrittenPlace at(int measure) {
        return new WrittenPlace(measure, MusicalTime.ZERO);
    }

    private Set<String> chordsPlayed() {
        return model.state().performance().orElseThrow().harmony().stream()
                .map(HarmonySpan::chord)
                .flatMap(Optional::stream)
                .map(ChordSymbol::toString)
                .collect(Collectors.toSet());
    }

    @Test
    void an_edited_tune_is_planned_anew() {
        PlannerState before = open(SmallTunes.WALTZ);
        assertThat(before.editedTune()).contains(SmallTunes.WALTZ);

        model.edit(new TuneEdit.SetChord(at(2), "Dm"));

        PlannerState after = model.state();
        assertThat(after.answer()).isInstanceOf(Answer.Ready.class);
        assertThat(chordsPlayed()).contains("Dm").doesNotContain("F");
        assertThat(after.editedTune().orElseThrow().measure(2).chords().get(0).symbol())
                .hasToString("Dm");
        assertThat(after.tune()).isEqualTo(before.tune());
        assertThat(after.offers().get(0).plan().leftHand())
                .isNotEqualTo(before.offers().get(0).plan().leftHand());
    }

    @Test
    void several_edits_are_one_step_to_undo() {
        PlannerState before = open(SmallTunes.WALTZ);

        model.edit(new TuneEdit.SetChord(at(1), "Em"), new TuneEdit.RemoveChord(at(2)));
        PlannerState after = model.state();

        assertThat(after.undo()).contains("model.did.chord");
        assertThat(after.unsaved()).isTrue();
        assertThat(after.setup().edits()).hasSize(2);
        model.undo();
        assertThat(model.state().setup()).isEqualTo(before.setup());
        assertThat(model.state().editedTune()).contains(SmallTunes.WALTZ);
        assertThat(model.state().offers()).isEqualTo(before.offers());
        assertThat(model.state().unsaved()).isFalse();
        model.redo();
        assertThat(model.state().editedTune()).isEqualTo(after.editedTune());
        assertThat(model.state().offers()).isEqualTo(after.offers());
    }

    @Test
    void an_edit_that_does_not_fit_changes_nothing() {
        open(SmallTunes.WALTZ);
        model.edit(new TuneEdit.SetChord(at(1), "Em"));
        PlannerState before = model.state();

        assertThatThrownBy(() -> model.edit(new TuneEdit.SetChord(at(2), "Dm"), new TuneEdit.SetChord(at(8), "C")))
                .isInstanceOf(TuneEditException.class)
                .hasMessageContaining("edit 3 is in written measure 9; allowed: 1 to 8");

        assertThat(model.state()).isSameAs(before);
        model.edit();
        assertThat(model.state()).isSameAs(before);
    }

    @Test
    void without_a_tune_there_is_nothing_to_edit() {
        assertThatThrownBy(() -> model.edit(new TuneEdit.ProposeChords()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no tune is open");
    }

    @Test
    void another_tune_begins_without_edits() {
        open(SmallTunes.WALTZ);
        model.edit(new TuneEdit.SetChord(at(1), "Em"));

        open(SmallTunes.TWO_PARTS);

        assertThat(model.state().setup().edits()).isEmpty();
        assertThat(model.state().editedTune()).contains(SmallTunes.TWO_PARTS);
    }

    @Test
    void a_proposal_is_played_and_tells_its_reasons() {
        open(Tunes.melody("4/4", "C4 q, E4 q, G4 q, E4 q | G4 q, B4 q, D5 q, F5 q | C5 w"));
        assertThat(chordsPlayed()).isEmpty();

        model.edit(new TuneEdit.ProposeChords());

        assertThat(chordsPlayed()).containsExactlyInAnyOrder("C", "G7");
        assertThat(model.state().edited().orElseThrow().proposals()).hasSize(3);
        assertThat(model.state().undo()).contains("model.did.proposeChords");
    }

    @Test
    void a_lock_on_a_pass_that_is_gone_falls_with_the_edit_and_comes_back_with_undo() {
        open(Tunes.melody("3/4", "\"C\" C4 q, E4 q, G4 q | \"G7\" F4 q, D4 q, B3 q | \"C\" C4 h. @end"));
        model.setWishes(model.state().setup().wishes().withTimes(OptionalInt.of(1)));
        Lock second = new Lock.Octave(OptionalInt.of(2), 1);
        Lock first = new Lock.Finger(OptionalInt.of(1), at(0), 0, 2);
        model.lock(second);
        model.lock(first);

        model.edit(new TuneEdit.SetBarlines(2, Barlines.PLAIN));

        assertThat(model.state().setup().locks()).containsExactly(first);
        assertThat(model.state().fallen()).extracting(FallenLock::lock).containsExactly(second);
        assertThat(model.state().fallen().get(0).reason())
                .hasToString("There is no such pass any more: octave 1 in pass 2.");
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);

        model.undo();
        assertThat(model.state().setup().locks()).containsExactly(second, first);
        assertThat(model.state().fallen()).isEmpty();
        model.redo();
        assertThat(model.state().setup().locks()).containsExactly(first);
        assertThat(model.state().fallen()).hasSize(1);
        model.freeAll();
        assertThat(model.state().fallen()).isEmpty();
    }

    @Test
    void a_lock_on_buttons_falls_where_nothing_is_pressed_any_more() {
        open(SmallTunes.WALTZ);
        Lock off = new Lock.Buttons(
                OptionalInt.empty(), new WrittenPlace(2, MusicalTime.of(1, 2)), ButtonNames.all("F major"));
        Lock on = new Lock.Buttons(OptionalInt.empty(), at(7), ButtonNames.all("C bass"));
        model.lock(off);
        model.lock(on);

        model.edit(new TuneEdit.SetChord(at(2), "N.C."));

        assertThat(model.state().setup().locks()).containsExactly(on);
        assertThat(model.state().fallen())
                .extracting(fallen -> fallen.reason().code())
                .containsExactly("lock-of-press-gone");
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
    }

    @Test
    void a_repeat_makes_a_second_pass() {
        open(SmallTunes.WALTZ);
        model.setWishes(model.state().setup().wishes().withTimes(OptionalInt.of(1)));
        assertThat(model.state().performance().orElseThrow().passes()).hasSize(1);

        model.edit(new TuneEdit.SetBarlines(7, REPEATED));

        assertThat(model.state().performance().orElseThrow().passes()).hasSize(2);
    }

    @Test
    void a_plan_file_keeps_the_edits_and_is_reopened_at_the_same_total() {
        open(SmallTunes.WALTZ);
        model.edit(
                new TuneEdit.SetChord(at(1), "Em7"),
                new TuneEdit.SetBarlines(7, REPEATED),
                new TuneEdit.SetPhrase(at(4), true));
        PlannerState edited = model.state();
        List<PlanFile> files = new ArrayList<>();
        model.planFile(files::add);

        PlannerModel other = new PlannerModel(States.packs(), new DirectBackground(), SmallTunes.setup());
        other.reopen(SmallTunes.open(SmallTunes.WALTZ), files.get(0).document());

        assertThat(other.state().setup().edits()).isEqualTo(edited.setup().edits());
        assertThat(other.state().editedTune()).isEqualTo(edited.editedTune());
        assertThat(other.state().chosenOffer().orElseThrow().plan())
                .isEqualTo(edited.chosenOffer().orElseThrow().plan());
        assertThat(other.state().chosenOffer().orElseThrow().cost())
                .isEqualTo(edited.chosenOffer().orElseThrow().cost());
        assertThat(other.state().unsaved()).isFalse();
    }
}
