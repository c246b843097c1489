package org.mantice.instrument;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.mantice.tune.NoteName;

/** Bass buttons as the trade names them: {@code "C bass"}, {@code "E counterbass"}, {@code "G major"}. */
public final class ButtonNames {
    private static final int OUTERMOST_COLUMN = 24;

    /** Fifths from a root to the tone so many semitones above it, as chords usually spell them. */
    private static final List<Integer> FIFTHS = List.of(0, -5, 2, -3, 4, -1, -6, 1, -4, 3, -2, 5);

    private static final Map<String, BassButton> BY_NAME = byName();

    private ButtonNames() {}

    private static Map<String, BassButton> byName() {
        Map<String, BassButton> buttons = new HashMap<>();
        for (BassRow row : BassRow.values())
            for (int column = 0; column <= OUTERMOST_COLUMN; column++)
                for (int side : new int[] {column, -column}) {
                    BassButton button = new BassButton(row, side);
                    buttons.putIfAbsent(of(button).toLowerCase(Locale.ROOT), button);
                }
        return buttons;
    }

    /**
     * The button of a name as {@link #of} gives it, in large or small letters; of several with one name the one nearest
     * to C. Empty if there is none.
     */
    public static Optional<BassButton> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name.strip().toLowerCase(Locale.ROOT)));
    }

    /**
     * The buttons of names with a plus between them, as in {@code "C bass + C major"}.
     *
     * @throws IllegalArgumentException if one of them is no button
     */
    public static Set<BassButton> all(String names) {
        Set<BassButton> buttons = new TreeSet<>();
        for (String name : names.split("\\+"))
            buttons.add(find(name)
                    .orElseThrow(() -> new IllegalArgumentException("button is " + name.strip()
                            + "; allowed: as C bass, E counterbass, G major, A minor, D seventh, B diminished")));
        return buttons;
    }

    /** A counterbass is named by the note that it sounds. */
    public static String of(BassButton button) {
        return button.noteName()
                + switch (button.row()) {
                    case COUNTERBASS -> " counterbass";
                    case BASS -> " bass";
                    case MAJOR -> " major";
                    case MINOR -> " minor";
                    case SEVENTH -> " seventh";
                    case DIMINISHED -> " diminished";
                };
    }

    /**
     * A tone's name over a root: B-flat over C, A-sharp never.
     *
     * @param pitchClass 0 to 11
     */
    public static NoteName tone(NoteName root, int pitchClass) {
        return NoteName.ofFifths(root.fifths() + FIFTHS.get(Math.floorMod(pitchClass - root.pitchClass(), 12)));
    }
}
