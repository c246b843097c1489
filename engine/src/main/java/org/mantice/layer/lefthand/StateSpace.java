package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.mantice.instrument.BassButton;
import org.mantice.rule.ButtonMoment;

/**
 * The states of one beat. A state is a way to play it and, where the chord sounds before and after a bass, the buttons
 * of that chord, so that a chord keeps its buttons as long as it lasts; in a bass run, the line that it follows. All of
 * it is visible in the plan.
 *
 * @param ways indices into the moments, by state
 * @param chords by state the chord buttons that hold in this span; empty where the state says nothing about them
 * @param lines by state the number of the run's line; {@link #NO_LINE} outside runs
 */
record StateSpace(int id, MomentSpace moments, List<Integer> ways, List<List<BassButton>> chords, List<Integer> lines) {
    static final int NO_LINE = -1;

    StateSpace {
        ways = List.copyOf(ways);
        chords = List.copyOf(chords);
        lines = List.copyOf(lines);
    }

    private StateSpace(int id, MomentSpace moments, List<Integer> ways, List<List<BassButton>> chords) {
        this(id, moments, ways, chords, Collections.nCopies(ways.size(), NO_LINE));
    }

    /** A state for each line of a run and each way to play its note. */
    static StateSpace run(int id, MomentSpace moments, List<Wanted.RunNote> notes) {
        List<Integer> ways = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        for (int line = 0; line < notes.size(); line++)
            for (int way = 0; way < moments.size(); way++) {
                BassButton button = moments.moments().get(way).buttons().get(0);
                if (button.pitchClasses().first() != notes.get(line).pitchClass()) continue;
                ways.add(way);
                lines.add(line);
            }
        return new StateSpace(id, moments, ways, Collections.nCopies(ways.size(), List.of()), lines);
    }

    /** A state for each way; a chord beat speaks for its chord. */
    static StateSpace plain(int id, MomentSpace moments, boolean chordBeat) {
        List<Integer> ways = new ArrayList<>();
        List<List<BassButton>> chords = new ArrayList<>();
        for (int way = 0; way < moments.size(); way++) {
            ways.add(way);
            chords.add(chordBeat ? moments.moments().get(way).buttons() : List.of());
        }
        return new StateSpace(id, moments, ways, chords);
    }

    /** A state for each way and each set of chord buttons that it may lie between. */
    static StateSpace between(int id, MomentSpace moments, MomentSpace chordMoments) {
        List<Integer> ways = new ArrayList<>();
        List<List<BassButton>> chords = new ArrayList<>();
        List<List<BassButton>> sets = chordMoments.moments().stream()
                .map(ButtonMoment::buttons)
                .distinct()
                .toList();
        for (int way = 0; way < moments.size(); way++) {
            ways.addAll(Collections.nCopies(sets.size(), way));
            chords.addAll(sets);
        }
        return new StateSpace(id, moments, ways, chords);
    }

    int size() {
        return ways.size();
    }

    ButtonMoment moment(int state) {
        return moments.moments().get(ways.get(state));
    }

    Candidate candidate(int state) {
        return moments.candidates().get(ways.get(state));
    }

    /** Whether a state may follow one of the beat before in the same span: with the same chord buttons and line. */
    boolean mayFollow(StateSpace before, int stateBefore, int state) {
        int line = before.lines.get(stateBefore);
        if (line != NO_LINE && lines.get(state) != NO_LINE && lines.get(state) != line) return false;
        List<BassButton> one = before.chords.get(stateBefore);
        List<BassButton> other = chords.get(state);
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /**
     * The state with these visible decisions, or -1.
     *
     * @param chord the chord buttons before it in its span; empty for none
     * @param line of the run that it belongs to, {@link #NO_LINE} where it belongs to none
     */
    int find(List<BassButton> buttons, List<Integer> fingers, int handColumn, List<BassButton> chord, int line) {
        for (int state = 0; state < size(); state++) {
            ButtonMoment moment = moment(state);
            if (moment.handColumn() == handColumn
                    && lines.get(state) == line
                    && moment.buttons().equals(buttons)
                    && moment.fingers().equals(fingers)
                    && (chord.isEmpty()
                            || chords.get(state).isEmpty()
                            || chords.get(state).equals(chord))) return state;
        }
        return -1;
    }
}
