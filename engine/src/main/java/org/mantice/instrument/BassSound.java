package org.mantice.instrument;

import java.util.List;

/**
 * What the buttons sound: one octave of bass notes and one of chord notes, so that chords come in whatever inversion
 * falls into the octave. Octaves are as accordion music writes them; the sounding ones depend on the register.
 *
 * @param lowestBassMidi lowest bass note as a MIDI number, 12 to 60; the eleven semitones above follow
 * @param lowestChordMidi lowest note of the chord buttons as a MIDI number, 24 to 84; the eleven semitones above follow
 * @param reedsPerBassButton reeds that a bass or counterbass button opens, 1 to 8
 * @param reedsPerChordButton reeds that a chord button opens, 1 to 16
 */
public record BassSound(int lowestBassMidi, int lowestChordMidi, int reedsPerBassButton, int reedsPerChordButton) {
    /** C of the great octave, as published (German encyclopaedia article: bass notes are written in it). */
    public static final int LOWEST_BASS = 36;
    /** Published is that chords are written from about small e-flat to f1; the highest octave in this: estimate. */
    public static final int LOWEST_CHORD = 54;

    public BassSound {
        check("lowestBassMidi", lowestBassMidi, 12, 60);
        check("lowestChordMidi", lowestChordMidi, 24, 84);
        check("reedsPerBassButton", reedsPerBassButton, 1, 8);
        check("reedsPerChordButton", reedsPerChordButton, 1, 16);
    }

    /** The usual octaves. */
    public static BassSound ofReeds(int perBassButton, int perChordButton) {
        return new BassSound(LOWEST_BASS, LOWEST_CHORD, perBassButton, perChordButton);
    }

    /** The notes of a button as MIDI numbers, from the lowest. */
    public List<Integer> midi(BassButton button) {
        int lowest = button.row().isChord() ? lowestChordMidi : lowestBassMidi;
        return button.pitchClasses().stream()
                .map(pitchClass -> lowest + Math.floorMod(pitchClass - lowest, 12))
                .sorted()
                .toList();
    }

    private static void check(String name, int value, int least, int most) {
        if (value < least || value > most)
            throw new IllegalArgumentException(name + " is " + value + "; allowed: " + least + " to " + most);
    }
}
