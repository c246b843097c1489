package org.mantice.rule;

/** Where keys and resting fingers lie, counted in white keys from C0 = 0. At rest each finger has a white key. */
public final class HandPlaces {
    private static final int[] HALF_KEYS = {0, 1, 2, 3, 4, 6, 7, 8, 9, 10, 11, 12};

    private HandPlaces() {}

    /** Half white keys from C0: C4 is 56, C#4 57, D4 58. */
    public static int halfKeys(int midi) {
        return 14 * (Math.floorDiv(midi, 12) - 1) + HALF_KEYS[Math.floorMod(midi, 12)];
    }

    /**
     * How far a key lies above (positive) or below the resting key of a finger, in half white keys.
     *
     * @param finger 1 to 5
     * @param place the white key under the thumb at rest
     */
    public static int halfKeysOff(int midi, int finger, int place) {
        return halfKeys(midi) - 2 * (place + finger - 1);
    }

    public static boolean isBlack(int midi) {
        return halfKeys(midi) % 2 != 0;
    }

    /** As {@code "F#4"}; black keys are named as sharps. */
    public static String name(int midi) {
        String[] names = {"C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"};
        return names[Math.floorMod(midi, 12)] + (Math.floorDiv(midi, 12) - 1);
    }
}
