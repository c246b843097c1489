package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.player.BassMethod;
import org.mantice.rule.ButtonMoment;

/**
 * All ways to play one wish: buttons, fingers and hand place, as rules see them. Shared by all beats with the same wish;
 * order: candidates best first, then the hand nearest.
 *
 * @param id in order of making
 */
record MomentSpace(int id, List<ButtonMoment> moments, List<Candidate> candidates) {
    MomentSpace {
        moments = List.copyOf(moments);
        candidates = List.copyOf(candidates);
    }

    static MomentSpace of(int id, Wanted wanted, Candidates source, HandReach reach, BassMethod method) {
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
        return new MomentSpace(id, moments, candidates);
    }

    int size() {
        return moments.size();
    }
}
