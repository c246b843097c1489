package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.mantice.editing.Edits;
import org.mantice.editing.RandomEdits;
import org.mantice.editing.TuneEdit;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.layer.lefthand.LeftHandLayer;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.VariationPlan;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Barlines;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class FallenLocksTest {
    private static final Barlines ENDS_REPEAT = new Barlines(
            false, Optional.of(2), false, List.of(), false, false, false, Optional.empty(), false, false, false);

    /** A pass and a place. */
    private record Press(int pass, WrittenPlace place) {}

    private static Performance played(Tune tune, int times) {
        return Performer.perform(
                tune, SettingsBuilder.of(tune).timesThrough(times).build());
    }

    /** Where the left hand presses in the plans that are made. */
    private static Set<Press> presses(Performance performance) {
        LeftHandLayer layer = LeftHandLayer.of(
                performance,
                new VariationPlan(List.of(), new TreeMap<>(), List.of()),
                AccordionPresets.get("full-41-key-120-bass"),
                PlayerPresets.get("medium-hand"),
                RuleBook.of(List.of()));
        Outcome<LeftHandPlan> outcome = layer.best(new Question(Taste.PLAIN, List.of(), 1, () -> false));
        Set<Press> presses = new HashSet<>();
        for (LeftHandPlan.Event event :
                ((Outcome.Found<LeftHandPlan>) outcome).plans().get(0).events())
            presses.add(new Press(event.pass(), event.place()));
        return presses;
    }

    private static List<Lock> locks(Performance performance, Random random) {
        List<Lock> locks = new ArrayList<>();
        for (int pass = 1; pass <= performance.passes().size(); pass++)
            locks.add(new Lock.Octave(OptionalInt.of(pass), 0));
        for (TrebleMoment moment : performance.treble()) {
            OptionalInt pass = random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(performance.passOf(moment));
            if (moment.graceIndex() == 0)
                locks.add(new Lock.Finger(pass, moment.place(), moment.notes().size() - 1, 1 + random.nextInt(5)));
            locks.add(new Lock.Turn(pass, moment.place(), random.nextBoolean()));
        }
        for (Press press : presses(performance))
            locks.add(new Lock.Buttons(
                    random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(press.pass()),
                    press.place(),
                    Set.of(new BassButton(BassRow.BASS, random.nextInt(5)))));
        return locks;
    }

    /** @return how many fell */
    private static int onlyLocksWithoutTheirPressFall(Tune tune, long seed, String name) {
        Performance before = played(tune, 2);
        List<Lock> locks = locks(before, new Random(seed));
        assertThat(FallenLocks.among(locks, before)).as(name).isEmpty();

        Tune edited = Edits.apply(tune, RandomEdits.ofChords(tune, 12, seed)).tune();
        Performance after = played(edited, 2);
        Set<Press> pressed = presses(after);
        List<Lock> fallen = FallenLocks.among(locks, after).stream()
                .peek(lock -> assertThat(lock.reason().code()).isEqualTo("lock-of-press-gone"))
                .map(FallenLock::lock)
                .toList();

        for (Lock lock : locks) {
            boolean kept = !(lock instanceof Lock.Buttons buttons)
                    || pressed.stream()
                            .anyMatch(press -> lock.appliesTo(press.pass())
                                    && press.place().equals(buttons.place()));
            assertThat(fallen.contains(lock)).as(name + " " + lock).isEqualTo(!kept);
        }
        return fallen.size();
    }

    @Test
    void edits_of_chords_take_no_lock_whose_press_is_still_there() throws Exception {
        int fallen = 0;
        for (Path file : ExampleScenes.tunes())
            for (long seed = 0; seed < 4; seed++)
                fallen += onlyLocksWithoutTheirPressFall(
                        new TuneReader().read(file).tune(), seed, file + " " + seed);
        assertThat(fallen).isPositive();
    }

    @Test
    void nor_in_tunes_of_others() {
        List<Corpus.Numbered> files = Corpus.files("abc-nottingham", ".abc");
        for (Corpus.Numbered file : files)
            onlyLocksWithoutTheirPressFall(
                    new TuneReader().read(file.path()).tune(), file.index(), "abc-nottingham " + file.index());
        assertThat(files).isNotEmpty();
    }

    @Test
    void a_repeat_that_is_taken_away_takes_the_locks_on_its_pass() {
        Tune tune = Tunes.melody("2/4", "\"C\" C4 h | \"G\" D4 h | \"C\" E4 h @end");
        WrittenPlace second = new WrittenPlace(1, MusicalTime.ZERO);
        Lock.Finger inSecondPass = new Lock.Finger(OptionalInt.of(2), second, 0, 3);
        Lock.Octave register = new Lock.Octave(OptionalInt.of(2), 1);
        List<Lock> stay = List.of(
                new Lock.Finger(OptionalInt.empty(), second, 0, 3),
                new Lock.Finger(OptionalInt.of(1), second, 0, 2),
                new Lock.Turn(OptionalInt.empty(), second, true),
                new Lock.Octave(OptionalInt.empty(), 0));
        List<Lock> locks = new ArrayList<>(stay);
        locks.add(inSecondPass);
        locks.add(register);

        Tune edited = Edits.apply(tune, List.of(new TuneEdit.SetBarlines(2, Barlines.PLAIN)))
                .tune();

        assertThat(FallenLocks.among(locks, played(tune, 1))).isEmpty();
        assertThat(FallenLocks.among(locks, played(edited, 1)))
                .extracting(lock -> lock.reason().english())
                .containsExactly(
                        "There is no such pass any more: finger 3 on note 1 at measure 2, beat 1 in pass 2.",
                        "There is no such pass any more: octave 1 in pass 2.");
    }

    @Test
    void locks_on_what_a_pass_does_not_play_any_more_fall() {
        Tune tune = Tunes.melody(
                "2/4",
                "\"C\" C4 h | \"G\" D4 h | \"C\" E4 h | \"F\" @ending1 F4 h | @end \"C\" G4 h | @ending2 @stop \"C\" C4 h");
        WrittenPlace first = new WrittenPlace(3, MusicalTime.ZERO);
        WrittenPlace after = new WrittenPlace(5, MusicalTime.ZERO);
        assertThat(played(tune, 1).passes()).hasSize(2);
        List<Lock> locks = List.of(
                new Lock.Finger(OptionalInt.of(2), after, 0, 3),
                new Lock.Turn(OptionalInt.of(2), after, true),
                new Lock.Buttons(OptionalInt.of(2), after, Set.of(new BassButton(BassRow.BASS, 0))),
                new Lock.Finger(OptionalInt.of(1), first, 0, 3));
        assertThat(FallenLocks.among(locks, played(tune, 1))).isEmpty();

        Barlines third = new Barlines(
                true, Optional.empty(), false, List.of(), false, false, false, Optional.empty(), false, false, false);
        Tune edited = Edits.apply(
                        tune,
                        List.of(
                                new TuneEdit.SetBarlines(3, Barlines.PLAIN),
                                new TuneEdit.SetBarlines(4, third),
                                new TuneEdit.SetBarlines(5, Barlines.PLAIN),
                                new TuneEdit.SetBarlines(2, ENDS_REPEAT)))
                .tune();

        assertThat(played(edited, 1).passes()).hasSize(1);
        assertThat(FallenLocks.among(locks, played(edited, 1)))
                .extracting(FallenLock::lock)
                .containsExactlyElementsOf(locks.subList(0, 3));
        assertThat(FallenLocks.among(locks, played(edited, 2)))
                .as("twice through there is a second pass that plays it again")
                .isEmpty();
    }

    @Test
    void each_kind_of_lock_says_what_it_has_lost() {
        Tune tune = Tunes.melody(
                "2/4", "@start \"C\" C4 h | \"G\" D4 h | @end @ending1 \"F\" F4 h | @ending2 @stop \"C\" C4 h");
        WrittenPlace last = new WrittenPlace(3, MusicalTime.ZERO);
        List<Lock> locks = List.of(
                new Lock.Finger(OptionalInt.of(1), last, 0, 3),
                new Lock.Turn(OptionalInt.of(1), last, true),
                new Lock.Buttons(OptionalInt.of(1), last, Set.of(new BassButton(BassRow.BASS, 0))));

        assertThat(FallenLocks.among(locks, played(tune, 1)))
                .extracting(lock -> lock.reason().code())
                .containsExactly("lock-of-note-gone", "lock-of-measure-gone", "lock-of-press-gone");
    }
}
