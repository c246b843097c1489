package org.mantice.plan;

import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.ButtonNames;
import org.mantice.tune.WrittenPlace;

/** A decision that the player has made: every plan keeps it. An empty pass means every pass. */
public sealed interface Lock {
    OptionalInt pass();

    /** The register of a pass. */
    record Register(OptionalInt pass, String switchId) implements Lock {}

    /** The octave of a pass. */
    record Octave(OptionalInt pass, int octave) implements Lock {}

    /** The buttons at a written place; in every pass means: in every one that plays the same chord there. */
    record Buttons(OptionalInt pass, WrittenPlace place, Set<BassButton> buttons) implements Lock {
        public Buttons {
            buttons = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(buttons));
        }
    }

    /** The bellows turn, or do not turn, just before a written place. */
    record Turn(OptionalInt pass, WrittenPlace place, boolean turn) implements Lock {}

    /** The finger on a note of the event at a written place; note 0 is the lowest. */
    record Finger(OptionalInt pass, WrittenPlace place, int note, int finger) implements Lock {
        public Finger {
            if (finger < 1 || finger > 5)
                throw new IllegalArgumentException("finger is " + finger + "; allowed: 1 to 5");
        }
    }

    default boolean appliesTo(int passNumber) {
        return pass().isEmpty() || pass().getAsInt() == passNumber;
    }

    /**
     * The lock in plain words, for messages.
     *
     * @param place a written place in words
     */
    default String words(Function<WrittenPlace, String> place) {
        String where = pass().isPresent() ? " in pass " + pass().getAsInt() : "";
        if (this instanceof Register register) return "register " + register.switchId() + where;
        if (this instanceof Octave octave) return "octave " + octave.octave() + where;
        if (this instanceof Buttons buttons)
            return buttons.buttons().stream().map(ButtonNames::of).collect(Collectors.joining(" + ")) + " at "
                    + place.apply(buttons.place()) + where;
        if (this instanceof Turn turn)
            return (turn.turn() ? "a turn" : "no turn") + " at " + place.apply(turn.place()) + where;
        if (this instanceof Finger finger)
            return "finger " + finger.finger() + " on note " + (finger.note() + 1) + " at "
                    + place.apply(finger.place()) + where;
        throw new IllegalStateException("no words for " + this);
    }
}
