package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.instrument.Accordion;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.plan.Sentence;
import org.mantice.player.Player;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** The stages of the left hand with their kept numbers; making it calls the rules. */
final class LeftHandScore {
    final Tune tune;
    final List<Stage> stages;
    final RuleTables tables;
    final MoveTime moveTime;
    /** What the left hand leaves out, in plain sentences. */
    final List<Sentence> remarks;

    private final Map<WrittenPlace, List<Integer>> places = new HashMap<>();

    private LeftHandScore(Tune tune, List<Stage> stages, RuleTables tables, MoveTime moveTime, List<Sentence> remarks) {
        this.tune = tune;
        this.stages = List.copyOf(stages);
        this.tables = tables;
        this.moveTime = moveTime;
        this.remarks = List.copyOf(remarks);
        for (int i = 0; i < stages.size(); i++)
            places.computeIfAbsent(stages.get(i).beat().place(), place -> new ArrayList<>())
                    .add(i);
    }

    static LeftHandScore of(Performance performance, Accordion accordion, Player player, RuleBook book) {
        MoveTime moveTime = new MoveTime(player.jumps(), accordion.bass().geometry());
        RuleTables tables = new RuleTables(book, moveTime, accordion.bass());
        if (accordion.bass().isAbsent())
            return new LeftHandScore(
                    performance.tune(),
                    List.of(),
                    tables,
                    moveTime,
                    List.of(Sentence.of("no-bass-side", "The left hand is silent: the instrument has no bass side.")));
        List<Beat> beats = LeftHandBeats.of(performance, accordion.bass());
        if (beats.isEmpty())
            return new LeftHandScore(performance.tune(), List.of(), tables, moveTime, List.of(silence(performance)));
        Spaces spaces = new Spaces(accordion, player);
        List<Stage> stages = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            Beat beat = beats.get(i);
            String where = Places.words(performance, performance.measures().get(beat.measure()), beat.place());
            StateSpace space = spaces.of(beat, isBetweenChords(beats, i));
            if (space.size() == 0) silent.add(where);
            else stages.add(stage(stages, beat, space, tables, spaces, where));
        }
        return new LeftHandScore(
                performance.tune(), stages, tables, moveTime, silent.isEmpty() ? List.of() : List.of(silence(silent)));
    }

    private static Sentence silence(Performance performance) {
        boolean written = !performance.bass().isEmpty()
                || performance.harmony().stream()
                        .anyMatch(span ->
                                span.chord().filter(chord -> !chord.isSilent()).isPresent());
        return written
                ? Sentence.of("left-hand-has-no-stroke", "The left hand is silent: nothing is asked of it.")
                : Sentence.of("no-chords-written", "The left hand is silent: no chords and no bass are written.");
    }

    private static Sentence silence(List<String> where) {
        return where.size() == 1
                ? Sentence.of(
                        "no-buttons-near",
                        "No buttons of this instrument come near what is written at {0}.",
                        where.get(0))
                : Sentence.of(
                        "no-buttons-near-at-places",
                        "No buttons of this instrument come near what is written at {0} and {1} more places as played.",
                        where.get(0),
                        where.size() - 1);
    }

    /** Whether a bass lies between two strikes of its own chord. */
    private static boolean isBetweenChords(List<Beat> beats, int index) {
        int span = beats.get(index).span();
        boolean before = false;
        boolean after = false;
        for (int i = index - 1; i >= 0 && beats.get(i).span() == span; i--) before |= isChord(beats.get(i));
        for (int i = index + 1; i < beats.size() && beats.get(i).span() == span; i++) after |= isChord(beats.get(i));
        return !isChord(beats.get(index)) && before && after;
    }

    /** The stages at a written place, in order of play. */
    List<Integer> at(WrittenPlace place) {
        return places.getOrDefault(place, List.of());
    }

    private static Stage stage(
            List<Stage> before, Beat beat, StateSpace space, RuleTables tables, Spaces spaces, String where) {
        Optional<Stage.Moves> moves = Optional.empty();
        boolean named = true;
        if (!before.isEmpty()) {
            Stage last = before.get(before.size() - 1);
            RuleTables.PairTable table =
                    tables.pairs(last.space().moments(), space.moments(), availableMillis(last.beat(), beat), where);
            moves = Optional.of(spaces.moves(last.space(), space, last.beat().span() == beat.span(), table));
            named = !isChord(beat) || !hasChord(before, beat.span());
        }
        return new Stage(beat, space, tables.moments(space.moments(), where), moves, named, where);
    }

    /** From the release to the next onset, in whole milliseconds rounded down. */
    static long availableMillis(Beat from, Beat to) {
        return Math.max(0, (to.onsetMicros() - from.releaseMicros()) / 1_000);
    }

    private static boolean isChord(Beat beat) {
        return beat.wanted() instanceof Wanted.OfChord chord && chord.isChordAlone();
    }

    private static boolean hasChord(List<Stage> before, int span) {
        for (int i = before.size() - 1; i >= 0 && before.get(i).beat().span() == span; i--)
            if (isChord(before.get(i).beat())) return true;
        return false;
    }

    /** State spaces by wish, and equal ones once; moves by what they join. */
    private static final class Spaces {
        private final Candidates candidates;
        private final HandReach reach;
        private final Player player;
        private final Map<Wanted, MomentSpace> moments = new HashMap<>();
        private final Map<List<Object>, MomentSpace> equal = new HashMap<>();
        private final Map<List<Object>, StateSpace> states = new HashMap<>();
        private final Map<List<Object>, Stage.Moves> moves = new HashMap<>();

        Spaces(Accordion accordion, Player player) {
            this.candidates = new Candidates(accordion.bass());
            this.reach = new HandReach(accordion.bass());
            this.player = player;
        }

        StateSpace of(Beat beat, boolean betweenChords) {
            MomentSpace ways = moments(beat.wanted());
            if (beat.wanted() instanceof Wanted.OfRun run)
                return states.computeIfAbsent(
                        List.of(ways.id(), run), id -> StateSpace.run(states.size(), ways, run.notes()));
            if (betweenChords && beat.wanted() instanceof Wanted.OfChord bass) {
                MomentSpace chord = moments(new Wanted.OfChord(bass.chord(), Wanted.Part.CHORD, Wanted.BassWish.ROOT));
                List<Object> key = List.of(ways.id(), chord.id());
                return states.computeIfAbsent(key, id -> StateSpace.between(states.size(), ways, chord));
            }
            List<Object> key = List.of(ways.id(), isChord(beat));
            return states.computeIfAbsent(key, id -> StateSpace.plain(states.size(), ways, isChord(beat)));
        }

        private MomentSpace moments(Wanted wanted) {
            MomentSpace known = moments.get(wanted);
            if (known != null) return known;
            MomentSpace made = MomentSpace.of(equal.size(), wanted, candidates, reach, player.bassMethod());
            MomentSpace space = equal.computeIfAbsent(List.of(made.moments(), made.candidates()), key -> made);
            moments.put(wanted, space);
            return space;
        }

        Stage.Moves moves(StateSpace from, StateSpace to, boolean sameSpan, RuleTables.PairTable table) {
            List<Object> key = List.of(from.id(), to.id(), sameSpan, table.id());
            return moves.computeIfAbsent(key, id -> new Stage.Moves(moves.size(), from, to, sameSpan, table));
        }
    }
}
