package org.mantice.instrument;

import java.util.List;
import java.util.Optional;

/**
 * The piano keyboard of the right hand.
 *
 * @param lowestMidi lowest key, 21 to 108
 * @param highestMidi highest key, not below the lowest
 * @param whiteKeyMicrons width of a white key with its gap in thousandths of a millimetre, 10,000 to 30,000
 * @param switches one or more; an instrument without switches has a single one that is always on
 */
public record TrebleKeyboard(int lowestMidi, int highestMidi, int whiteKeyMicrons, List<RegisterSwitch> switches) {
    public TrebleKeyboard {
        if (lowestMidi < 21 || lowestMidi > 108)
            throw new IllegalArgumentException("lowestMidi is " + lowestMidi + "; allowed: 21 to 108");
        if (highestMidi < lowestMidi || highestMidi > 108)
            throw new IllegalArgumentException(
                    "highestMidi is " + highestMidi + "; allowed: " + lowestMidi + " to 108");
        if (whiteKeyMicrons < 10_000 || whiteKeyMicrons > 30_000)
            throw new IllegalArgumentException("whiteKeyMicrons is " + whiteKeyMicrons + "; allowed: 10000 to 30000");
        switches = List.copyOf(switches);
        if (switches.isEmpty()) throw new IllegalArgumentException("switches is empty; allowed: one or more");
        if (switches.stream().map(RegisterSwitch::id).distinct().count() != switches.size())
            throw new IllegalArgumentException("switches share an id; allowed: each id once");
    }

    public boolean hasKey(int midi) {
        return midi >= lowestMidi && midi <= highestMidi;
    }

    public int keys() {
        return highestMidi - lowestMidi + 1;
    }

    public int whiteKeys() {
        return (int) java.util.stream.IntStream.rangeClosed(lowestMidi, highestMidi)
                .filter(midi -> !isBlack(midi))
                .count();
    }

    /** From the left edge of a key to that of the same key an octave up. */
    public int octaveMicrons() {
        return 7 * whiteKeyMicrons;
    }

    /** The switch of an id, if there is one. */
    public Optional<RegisterSwitch> findSwitch(String id) {
        return switches.stream().filter(register -> register.id().equals(id)).findFirst();
    }

    public static boolean isBlack(int midi) {
        return switch (Math.floorMod(midi, 12)) {
            case 1, 3, 6, 8, 10 -> true;
            default -> false;
        };
    }
}
