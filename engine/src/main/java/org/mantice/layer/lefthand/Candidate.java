package org.mantice.layer.lefthand;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.rule.ButtonMoment;

/**
 * Buttons that could be pressed at a beat.
 *
 * @param buttons one or more, in row order
 * @param missing by the chord's buttons together with its bass note
 * @param notes what is not as the symbol asks, in words
 * @param charged those of the notes that change what is heard or how it is played
 */
record Candidate(
        List<BassButton> buttons,
        ButtonMoment.Bass bass,
        SortedSet<Integer> missing,
        SortedSet<Integer> foreign,
        List<String> notes,
        List<String> charged) {
    static final SortedSet<Integer> NO_TONES = Collections.unmodifiableSortedSet(new TreeSet<>());

    Candidate {
        buttons = buttons.stream().sorted().distinct().toList();
        notes = List.copyOf(notes);
        charged = List.copyOf(charged);
    }

    SortedSet<Integer> sounding() {
        SortedSet<Integer> sounding = new TreeSet<>();
        for (BassButton button : buttons) sounding.addAll(button.pitchClasses());
        return sounding;
    }
}
