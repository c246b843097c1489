package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;

/**
 * What sounds in the melody during a slot, in thousandths of the beat for each pitch class (0 is C) and kind of note.
 *
 * <p>Accents: 0 at the first beat of a measure, 1 at another beat, 2 between beats.
 */
final class SlotMelody {
    /** The melody goes from one pitch class to another by three semitones or more. */
    record Leap(int from, int to) {}

    private final long[] sounding = new long[12 * 6];
    private final long[] restOfMeasure = new long[12];
    private final long[] restOfHalf = new long[12];
    private final List<Leap> leaps = new ArrayList<>();
    private final List<Integer> struck = new ArrayList<>();
    private int lowest = Integer.MAX_VALUE;

    void sound(int midi, long permille, int accent, boolean byStep) {
        sounding[Math.floorMod(midi, 12) * 6 + accent * 2 + (byStep ? 1 : 0)] += permille;
        lowest = Math.min(lowest, midi);
    }

    void strike(int midi) {
        struck.add(midi);
    }

    void leap(int fromMidi, int toMidi) {
        leaps.add(new Leap(Math.floorMod(fromMidi, 12), Math.floorMod(toMidi, 12)));
    }

    /** Adds what sounds in another slot of the measure. */
    void hearMeasure(SlotMelody other, int others) {
        for (int i = 0; i < 12; i++) restOfMeasure[i] += other.sounding(i) / others;
    }

    /** Adds what sounds in another slot of the same half of the measure. */
    void hearHalf(SlotMelody other, int others) {
        for (int i = 0; i < 12; i++) restOfHalf[i] += other.sounding(i) / others;
    }

    long sounding(int pitchClass, int accent, boolean byStep) {
        return sounding[pitchClass * 6 + accent * 2 + (byStep ? 1 : 0)];
    }

    long sounding(int pitchClass) {
        long sum = 0;
        for (int i = 0; i < 6; i++) sum += sounding[pitchClass * 6 + i];
        return sum;
    }

    long restOfMeasure(int pitchClass) {
        return restOfMeasure[pitchClass];
    }

    long restOfHalf(int pitchClass) {
        return restOfHalf[pitchClass];
    }

    List<Leap> leaps() {
        return leaps;
    }

    /** The pitch class of the lowest note, as often as it is struck in the slot. */
    List<Integer> lowestStruck() {
        return struck.stream()
                .filter(midi -> midi == lowest)
                .map(midi -> Math.floorMod(midi, 12))
                .toList();
    }
}
