package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.StradellaBass;
import org.mantice.layer.Question;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.performance.Performance;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.player.BassMethod;
import org.mantice.player.Taste;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.WrittenPlace;

/** Bass runs; which lines are played is common practice, no source. */
class BassRunsTest {
    private static final IntPredicate ALL = note -> true;
    private static final String[] NAMES = {"C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"};

    private static Performance tune(Tempo tempo, String pattern, String chords) {
        return PlayedTune.of(Meter.of(3, 4), tempo, 1, chords, asking(pattern));
    }

    private static Accompaniment asking(String pattern) {
        return Accompaniment.NONE.with(Choice.everywhere(Optional.of(pattern), Optional.empty()));
    }

    private static List<String> lines(int from, int to, int steps, Key key, IntPredicate has) {
        return BassRuns.lines(from, to, steps, key, has).stream()
                .map(line -> line.stream()
                        .map(note -> NAMES[note.pitchClass()] + (note.inKey() ? "" : "*"))
                        .collect(Collectors.joining(" ")))
                .toList();
    }

    @Test
    void linesComeFromBelowAndAboveInTheKeyAndBySemitones() {
        assertThat(lines(0, 5, 2, Key.C_MAJOR, ALL)).containsExactly("D E", "A G", "Eb* E");
        assertThat(lines(0, 7, 2, Key.C_MAJOR, ALL)).containsExactly("E F", "B A", "A Ab*");
        assertThat(lines(7, 0, 2, Key.C_MAJOR, ALL)).containsExactly("A B", "E D", "Bb* B");
        assertThat(lines(0, 9, 1, Key.C_MAJOR, ALL)).containsExactly("B", "Ab*", "Bb*");
        assertThat(lines(2, 7, 2, new Key(1, Mode.MAJOR), ALL)).containsExactly("E F#", "B A", "F* F#");
    }

    @Test
    void lineNeverBeginsOnTheBassThatIsLeftNorAsksForANoteThatIsNotThere() {
        assertThat(lines(2, 5, 2, Key.C_MAJOR, ALL)).noneMatch(line -> line.startsWith("D "));
        assertThat(lines(0, 5, 2, Key.C_MAJOR, note -> note != 4)).containsExactly("A G");
        assertThat(lines(0, 5, 2, Key.C_MAJOR, note -> false)).isEmpty();
    }

    @Test
    void runStandsBeforeAnotherBassOnlyAndWhereTimeSuffices() {
        Performance slow = tune(Tempo.quarters(140), "waltz-with-runs", "C|C|F|N.C.");
        assertThat(parts(slow)).isEqualTo("B C C | B R R | B C C");

        Performance fast = tune(Tempo.quarters(301), "waltz-with-runs", "C|C|F|N.C.");
        assertThat(parts(fast)).isEqualTo("B C C | B C C | B C C");

        Performance plain = tune(Tempo.quarters(140), "waltz", "C|C|F|N.C.");
        assertThat(parts(plain)).isEqualTo("B C C | B C C | B C C");

        Performance twoChords = tune(Tempo.quarters(140), "waltz-with-runs", "C F@1/2|G|N.C.");
        assertThat(parts(twoChords)).isEqualTo("B C H | B C C");
    }

    private static String parts(Performance performance) {
        StringBuilder words = new StringBuilder();
        int measure = -1;
        for (Beat beat : LeftHandBeats.of(performance, StradellaBass.ofSize(120))) {
            if (measure >= 0) words.append(beat.measure() == measure ? " " : " | ");
            measure = beat.measure();
            words.append(
                    beat.wanted() instanceof Wanted.OfChord chord
                            ? switch (chord.part()) {
                                case BASS -> "B";
                                case CHORD -> "C";
                                case BOTH -> "H";
                            }
                            : "R");
        }
        return words.toString();
    }

    /** Fitted to small numbers: every way to press, kept where the notes of the run are a line, priced by the rules. */
    @Test
    void bestPlanWithARunEqualsBruteForceOverAllPressesAndLines() {
        for (String chords : List.of("C|F|N.C.", "C|G7|N.C.", "Am|Dm|N.C."))
            for (int buttons : List.of(24, 48)) {
                Performance tune = tune(Tempo.quarters(140), "waltz-with-runs", chords);
                Taste taste = Taste.PLAIN.with("left-hand.bass-variety", buttons == 24 ? 0 : 1_000);
                LeftHandScore score = LeftHandScore.of(
                        tune,
                        LeftHands.accordion(StradellaBass.ofSize(buttons)),
                        LeftHands.player(BassMethod.FOUR_THREE_TWO),
                        LeftHands.RULES);
                assertThat(score.stages).as(chords).hasSize(6);

                LeftHandPlan plan = LeftHands.found(
                                LeftHands.layer(tune, buttons).best(new Question(taste, List.of(), 1, () -> false)))
                        .best();

                assertThat(plan.cost(taste)).as(chords + " on " + buttons).isEqualTo(bruteForce(score, taste));
                assertThat(LeftHands.layer(tune, buttons).rescore(plan)).isEqualTo(plan);
            }
    }

    private static long bruteForce(LeftHandScore score, Taste taste) {
        Wanted.OfRun first = (Wanted.OfRun) score.stages.get(1).beat().wanted();
        Wanted.OfRun second = (Wanted.OfRun) score.stages.get(2).beat().wanted();
        Set<List<Integer>> lines = new HashSet<>();
        for (int i = 0; i < first.notes().size(); i++)
            lines.add(List.of(
                    first.notes().get(i).pitchClass(), second.notes().get(i).pitchClass()));
        long best = Long.MAX_VALUE;
        // the ends are independent of the run once the bass before and the bass after it are fixed
        for (ButtonMoment start : score.stages.get(0).space().moments().moments())
            for (ButtonMoment one : score.stages.get(1).space().moments().moments())
                for (ButtonMoment two : score.stages.get(2).space().moments().moments()) {
                    if (!lines.contains(List.of(note(one), note(two)))) continue;
                    long run = at(start, taste) + step(score, 1, start, one, taste) + step(score, 2, one, two, taste);
                    if (run >= best) continue;
                    for (ButtonMoment bass :
                            score.stages.get(3).space().moments().moments()) {
                        long there = run + step(score, 3, two, bass, taste);
                        if (there >= best) continue;
                        for (ButtonMoment chord :
                                score.stages.get(4).space().moments().moments()) {
                            long struck = there + step(score, 4, bass, chord, taste);
                            if (struck >= best) continue;
                            for (ButtonMoment again :
                                    score.stages.get(5).space().moments().moments())
                                if (again.buttons().equals(chord.buttons()))
                                    best = Math.min(best, struck + step(score, 5, chord, again, taste));
                        }
                    }
                }
        return best;
    }

    private static int note(ButtonMoment moment) {
        BassButton button = moment.buttons().get(0);
        return button.pitchClasses().first();
    }

    private static long at(ButtonMoment moment, Taste taste) {
        long cost = 0;
        for (Rule<ButtonMoment> rule : LeftHands.RULES.rules(RuleSet.JUMP_COST, ButtonMoment.class))
            cost += rule.cost(moment) * taste.perMille(rule.info().id());
        return cost;
    }

    private static long step(LeftHandScore score, int stage, ButtonMoment from, ButtonMoment to, Taste taste) {
        long available = LeftHandScore.availableMillis(
                score.stages.get(stage - 1).beat(), score.stages.get(stage).beat());
        ButtonPair pair = new ButtonPair(
                from,
                to,
                score.moveTime.millis(to.handColumn() - from.handColumn()),
                available,
                StradellaBass.ofSize(120).columnsToMark(to.handColumn()));
        long cost = at(to, taste);
        for (Rule<ButtonPair> rule : LeftHands.RULES.rules(RuleSet.JUMP_COST, ButtonPair.class))
            cost += rule.cost(pair) * taste.perMille(rule.info().id());
        return cost;
    }

    @Test
    void everyOneOfTheBestPlansFollowsALineToItsEnd() {
        Performance tune = tune(Tempo.quarters(140), "waltz-with-runs", "C|F|N.C.");

        List<LeftHandPlan> plans = LeftHands.found(
                        LeftHands.layer(tune, 72).best(new Question(Taste.PLAIN, List.of(), 200, () -> false)))
                .plans();

        assertThat(plans).hasSize(200).doesNotHaveDuplicates();
        assertThat(plans)
                .extracting(plan -> note(plan, 1) + " " + note(plan, 2))
                .isSubsetOf("D E", "A G", "Eb E");
    }

    private static String note(LeftHandPlan plan, int event) {
        return NAMES[plan.events().get(event).buttons().get(0).pitchClasses().first()];
    }

    /** With D for its first step: the buttons of the scale as in Wikibooks, Accordion, lesson 4. */
    @Test
    void runFromCUpToFTakesTheButtonsOfTheScale() {
        LeftHandLayer layer = LeftHands.layer(tune(Tempo.quarters(100), "waltz-with-runs", "C|F|N.C."), 120);
        Lock step = new Lock.Buttons(
                OptionalInt.empty(), new WrittenPlace(0, MusicalTime.QUARTER), Set.of(new BassButton(BassRow.BASS, 2)));

        LeftHandPlan plan = LeftHands.found(layer.best(new Question(Taste.PLAIN, List.of(step), 1, () -> false)))
                .best();

        assertThat(plan.events().subList(0, 4))
                .extracting(event -> LeftHandPlan.name(event.buttons()))
                .containsExactly("C bass", "D bass", "E counterbass", "F bass");
    }
}
