package org.mantice.rule;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.player.BassMethod;

/**
 * The left hand at one moment.
 *
 * @param buttons pressed together, one or more, in row order
 * @param fingers for each button, 2 to 5
 * @param handColumn the column under the fourth finger, in fifths from C
 * @param offsets for each button, hundredths of a column from the fourth finger's place on the bass row up to it
 * @param method which fingers the player uses for what
 * @param bass what the bass button is to the chord
 * @param changeDue the pattern would like another bass note than the root here
 * @param missing pitch classes of the symbol, 0 to 11, that the chord's buttons leave out; empty for a bass alone
 * @param foreign pitch classes that the chord's buttons add; empty for a bass alone
 * @param substitutions what stands in for the usual buttons and why, in words
 */
public record ButtonMoment(
        List<BassButton> buttons,
        List<Integer> fingers,
        int handColumn,
        List<Integer> offsets,
        BassMethod method,
        Bass bass,
        boolean changeDue,
        SortedSet<Integer> missing,
        SortedSet<Integer> foreign,
        List<String> substitutions)
        implements LeftHandStep {
    /** What a bass button is to the chord that it belongs to. */
    public enum Bass {
        /** The root, or the note under a slash. */
        ROOT,
        FIFTH,
        THIRD,
        /** A note of the key on the way to the next chord's bass. */
        PASSING,
        /** A note outside the key on the way to the next chord's bass. */
        CHROMATIC,
        /** Written in the bass staff, or another note because the instrument lacks the right one. */
        OTHER,
        /** No bass button is pressed. */
        NONE
    }

    public ButtonMoment {
        buttons = List.copyOf(buttons);
        fingers = List.copyOf(fingers);
        offsets = List.copyOf(offsets);
        missing = sorted(missing);
        foreign = sorted(foreign);
        substitutions = List.copyOf(substitutions);
        if (buttons.isEmpty()) throw new IllegalArgumentException("buttons is empty; allowed: one or more");
        if (fingers.size() != buttons.size())
            throw new IllegalArgumentException("fingers is " + fingers + "; allowed: one for each of " + buttons);
        if (offsets.size() != buttons.size())
            throw new IllegalArgumentException("offsets is " + offsets + "; allowed: one for each of " + buttons);
        for (int finger : fingers)
            if (finger < 2 || finger > 5)
                throw new IllegalArgumentException("finger is " + finger + "; allowed: 2 to 5");
    }

    private static SortedSet<Integer> sorted(Collection<Integer> classes) {
        return Collections.unmodifiableSortedSet(new TreeSet<>(classes));
    }

    /** The button under a finger as "C bass", for facts. */
    public String name(int index) {
        return buttons.get(index).toString();
    }
}
