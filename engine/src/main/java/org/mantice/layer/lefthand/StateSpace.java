package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.instrument.BassButton;
import org.mantice.player.BassMethod;
import org.mantice.rule.ButtonMoment;

/**
 * All states of the left hand for one wish: buttons, fingers and hand place. Everything in a state is visible in the
 * plan. Shared by all beats with the same wish; order: candidates best first, then the hand nearest.
 *
 * @param id in order of making
 */
record StateSpace(int id, List<ButtonMoment> moments, List<Candidate> candidates) {
    StateSpace {
        moments = List.copyOf(moments);
        candidates = List.copyOf(candidates);
    }

    static StateSpace of(int id, Wanted wanted, Candidates source, HandReach reach, BassMethod method) {
        boolean changeDue = wanted instanceof Wanted.OfChord chord && chord.changeDue();
        List<ButtonMoment> moments = new ArrayList<>();
        List<Candidate> candidates = new ArrayList<>();
        for (Candidate candidate : source.of(wanted))
            for (HandReach.Placement placement : reach.placements(candidate.buttons())) {
                candidates.add(candidate);
                moments.add(new ButtonMoment(
                        candidate.buttons(),
                        placement.fingers(),
                        placement.handColumn(),
                        placement.offsets(),
                        method,
                        candidate.bass(),
                        changeDue,
                        candidate.missing(),
                        candidate.foreign(),
                        candidate.charged()));
            }
        return new StateSpace(id, moments, candidates);
    }

    int size() {
        return moments.size();
    }

    /** The state with these visible decisions, or -1. */
    int find(List<BassButton> buttons, List<Integer> fingers, int handColumn) {
        for (int state = 0; state < moments.size(); state++) {
            ButtonMoment moment = moments.get(state);
            if (moment.handColumn() == handColumn
                    && moment.buttons().equals(buttons)
                    && moment.fingers().equals(fingers)) return state;
        }
        return -1;
    }
}
