package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Places;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.player.Player;
import org.mantice.tune.WrittenPlace;

/** The stages of the left hand with their kept numbers; making it calls the rules. */
final class LeftHandScore {
    final List<Stage> stages;
    final RuleTables tables;
    final MoveTime moveTime;
    /** What the left hand leaves out, in plain sentences. */
    final List<String> remarks;

    private final Map<WrittenPlace, List<Integer>> places = new HashMap<>();

    private LeftHandScore(List<Stage> stages, RuleTables tables, MoveTime moveTime, List<String> remarks) {
        this.stages = List.copyOf(stages);
        this.tables = tables;
        this.moveTime = moveTime;
        this.remarks = List.copyOf(remarks);
        for (int i = 0; i < stages.size(); i++)
            places.computeIfAbsent(stages.get(i).beat().place(), place -> new ArrayList<>()).add(i);
    }

    static LeftHandScore of(Performance performance, Accordion accordion, Player player, RuleBook book) {
        MoveTime moveTime = new MoveTime(player.jumps(), accordion.bass().geometry());
        RuleTables tables = new RuleTables(book, moveTime);
        if (accordion.bass().isAbsent())
            return new LeftHandScore(
                    List.of(), tables, moveTime, List.of("The left hand is silent: the instrument has no bass side."));
        List<Beat> beats = performance.bass().isEmpty() ? PatternBeats.of(performance) : StaffBeats.of(performance);
        if (beats.isEmpty())
            return new LeftHandScore(
                    List.of(), tables, moveTime, List.of("The left hand is silent: no chords and no bass are written."));
        Spaces spaces = new Spaces(accordion, player);
        List<Stage> stages = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (Beat beat : beats) {
            String where = Places.words(performance, performance.measures().get(beat.measure()), beat.place());
            StateSpace space = spaces.of(beat.wanted());
            if (space.size() == 0) remarks.add("No buttons of this instrument come near what is written at " + where + ".");
            else stages.add(stage(stages, beat, space, tables, where));
        }
        return new LeftHandScore(stages, tables, moveTime, remarks);
    }

    /** The stages at a written place, in order of play. */
    List<Integer> at(WrittenPlace place) {
        return places.getOrDefault(place, List.of());
    }

    private static Stage stage(List<Stage> before, Beat beat, StateSpace space, RuleTables tables, String where) {
        Optional<RuleTables.PairTable> moves = Optional.empty();
        boolean named = true;
        if (!before.isEmpty()) {
            Stage last = before.get(before.size() - 1);
            moves = Optional.of(tables.pairs(last.space(), space, availableMillis(last.beat(), beat), where));
            named = !isChord(beat) || beat.span() != last.beat().span() || !hasChord(before, beat.span());
        }
        return new Stage(beat, space, tables.moments(space, where), moves, named, where);
    }

    /** From the release to the next onset, in whole milliseconds rounded down. */
    static long availableMillis(Beat from, Beat to) {
        return Math.max(0, (to.onsetMicros() - from.releaseMicros()) / 1_000);
    }

    private static boolean isChord(Beat beat) {
        return beat.wanted() instanceof Wanted.OfChord chord && chord.part() == Wanted.Part.CHORD;
    }

    private static boolean hasChord(List<Stage> before, int span) {
        for (int i = before.size() - 1; i >= 0 && before.get(i).beat().span() == span; i--)
            if (isChord(before.get(i).beat())) return true;
        return false;
    }

    /** State spaces by wish, and equal ones once. */
    private static final class Spaces {
        private final Candidates candidates;
        private final HandReach reach;
        private final Player player;
        private final Map<Wanted, StateSpace> known = new HashMap<>();
        private final Map<List<Object>, StateSpace> equal = new HashMap<>();

        Spaces(Accordion accordion, Player player) {
            this.candidates = new Candidates(accordion.bass());
            this.reach = new HandReach(accordion.bass().geometry());
            this.player = player;
        }

        StateSpace of(Wanted wanted) {
            StateSpace space = known.get(wanted);
            if (space != null) return space;
            StateSpace made = StateSpace.of(equal.size(), wanted, candidates, reach, player.bassMethod());
            space = equal.computeIfAbsent(List.of(made.moments(), made.candidates()), key -> made);
            known.put(wanted, space);
            return space;
        }
    }
}
