package org.mantice.layer.variation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.PassChoice;

/** What the instrument allows in each pass: working switches, and octaves at which every note has a key. */
final class PassChoices {
    private static final int[] OCTAVES = {0, 1, -1};
    /** One over the share of the last note before a pass that may be given up to press a switch: estimate. */
    private static final int SHARE_OF_LAST_NOTE = 2;

    private final List<List<PassChoice>> choices = new ArrayList<>();
    private final List<Long> pressMillis = new ArrayList<>();
    private Optional<Obstacle> obstacle = Optional.empty();

    PassChoices(Performance performance, TrebleKeyboard treble) {
        for (Pass pass : performance.passes()) {
            List<TrebleMoment> moments = performance.treble().stream()
                    .filter(moment -> performance.passOf(moment) == pass.number())
                    .toList();
            List<PassChoice> here = choices(pass, performance.passes().size(), moments, treble);
            choices.add(here);
            pressMillis.add(pressMillis(performance, moments));
            if (here.isEmpty() && obstacle.isEmpty()) obstacle = Optional.of(obstacle(performance, moments, treble));
        }
    }

    /** By pass; empty for a pass that cannot be played. */
    List<List<PassChoice>> choices() {
        return choices;
    }

    /** Whether a choice of a pass can follow one of the pass before: the switch stays, or there is time to press it. */
    boolean canFollow(int pass, int stateBefore, int state) {
        RegisterSwitch before = choices.get(pass - 1).get(stateBefore).register();
        RegisterSwitch after = choices.get(pass).get(state).register();
        return before.id().equals(after.id()) || pressMillis.get(pass) >= after.reachMillis();
    }

    Optional<Obstacle> obstacle() {
        return obstacle;
    }

    private static List<PassChoice> choices(Pass pass, int passes, List<TrebleMoment> moments, TrebleKeyboard treble) {
        int lowest = moments.stream().mapToInt(TrebleMoment::lowestMidi).min().orElse(treble.lowestMidi());
        int highest = moments.stream().mapToInt(TrebleMoment::highestMidi).max().orElse(treble.lowestMidi());
        List<PassChoice> offered = new ArrayList<>();
        for (int octave : OCTAVES) {
            if (!treble.hasKey(lowest + 12 * octave) || !treble.hasKey(highest + 12 * octave)) continue;
            for (RegisterSwitch register : treble.switches())
                if (register.works())
                    offered.add(new PassChoice(
                            pass.number(), passes, register, octave, lowest + 12 * octave, highest + 12 * octave));
        }
        return List.copyOf(offered);
    }

    private static long pressMillis(Performance performance, List<TrebleMoment> moments) {
        if (moments.isEmpty() || moments.get(0).index() == 0) return Long.MAX_VALUE;
        TrebleMoment first = moments.get(0);
        TrebleMoment before = performance.treble().get(first.index() - 1);
        long silence = Math.max(0, first.onsetMicros() - before.releaseMicros());
        long given = (before.releaseMicros() - before.onsetMicros()) / SHARE_OF_LAST_NOTE;
        return (silence + given) / 1_000;
    }

    private static Obstacle obstacle(Performance performance, List<TrebleMoment> moments, TrebleKeyboard treble) {
        if (treble.switches().stream().noneMatch(RegisterSwitch::works))
            return Obstacle.of(
                    Sentence.of("no-working-switch", "No register switch of this accordion works."),
                    List.of(Sentence.of("mark-switch-as-working", "Mark the switch that is on as working.")));
        SortedSet<Integer> keys = new TreeSet<>();
        for (TrebleMoment moment : moments) for (PlayedNote note : moment.notes()) keys.add(note.midi());
        List<String> outside = keys.stream()
                .filter(key -> !treble.hasKey(key))
                .map(HandPlaces::name)
                .toList();
        return Obstacle.of(
                Sentence.of(
                        "note-off-keyboard",
                        "Notes without a key on this accordion ({0} to {1}): {2}.",
                        HandPlaces.name(treble.lowestMidi()),
                        HandPlaces.name(treble.highestMidi()),
                        String.join(", ", outside)),
                remedies(performance, keys.first(), keys.last(), treble));
    }

    private static List<Sentence> remedies(Performance performance, int lowest, int highest, TrebleKeyboard treble) {
        List<Sentence> remedies = new ArrayList<>();
        for (int transposition : fittingKeys(performance.settings().transposition(), lowest, highest, treble))
            remedies.add(Sentence.of(
                    "another-key",
                    "Another key: transpose by {0} semitones.",
                    (transposition > 0 ? "+" : "") + transposition));
        int span = highest - lowest + 1;
        if (span > treble.keys())
            remedies.add(Sentence.of(
                    "tune-spans-more-keys",
                    "The tune spans {0} keys and this accordion has {1}: move or leave out its outermost notes.",
                    span,
                    treble.keys()));
        remedies.add(Sentence.of(
                "accordion-with-keys",
                "An accordion with keys from {0} to {1}.",
                HandPlaces.name(lowest),
                HandPlaces.name(highest)));
        return remedies;
    }

    /** The two nearest transpositions that fit at some octave. */
    private static List<Integer> fittingKeys(int asked, int lowest, int highest, TrebleKeyboard treble) {
        List<Integer> fitting = new ArrayList<>();
        for (int distance = 1; distance <= 11; distance++)
            for (int shift : new int[] {distance, -distance})
                if (Math.abs(asked + shift) <= 11 && fits(lowest + shift, highest + shift, treble))
                    fitting.add(asked + shift);
        return fitting.subList(0, Math.min(2, fitting.size()));
    }

    private static boolean fits(int lowest, int highest, TrebleKeyboard treble) {
        for (int octave : OCTAVES)
            if (treble.hasKey(lowest + 12 * octave) && treble.hasKey(highest + 12 * octave)) return true;
        return false;
    }
}
