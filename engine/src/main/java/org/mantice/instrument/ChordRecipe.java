package org.mantice.instrument;

import static org.mantice.instrument.BassRow.BASS;
import static org.mantice.instrument.BassRow.DIMINISHED;
import static org.mantice.instrument.BassRow.MAJOR;
import static org.mantice.instrument.BassRow.MINOR;
import static org.mantice.instrument.BassRow.SEVENTH;

import java.util.List;
import org.mantice.tune.ChordKind;

/**
 * How players take a kind of chord over its fundamental bass: the chord buttons by row and by semitones above the root.
 * Common practice, no source, but for those of Am7 and Fm6, which are published.
 *
 * @param keys the buttons on the chord beats
 * @param holdsRoot whether the chord buttons alone sound the root, so that another bass note costs no tone
 * @param onlyElse whether it serves only where the instrument allows none of those before it
 */
record ChordRecipe(List<Key> keys, boolean holdsRoot, boolean onlyElse) {
    /** A button by row and semitones above the chord's root, 0 to 11; BASS stands for bass or counterbass. */
    record Key(BassRow row, int semitones) {}

    /** What players take for a kind, best first, the first being what the symbol asks for; empty if nothing is usual. */
    static List<ChordRecipe> usual(ChordKind kind) {
        return switch (kind) {
            case MAJOR -> List.of(of(MAJOR, 0));
            case MINOR -> List.of(of(MINOR, 0));
            case DIMINISHED -> List.of(of(DIMINISHED, 0), orElse(MINOR, 3));
            case DIMINISHED_SEVENTH -> List.of(of(DIMINISHED, 0), of(DIMINISHED, 0, DIMINISHED, 3), orElse(MINOR, 3));
            case DOMINANT -> List.of(of(SEVENTH, 0), of(MAJOR, 0, SEVENTH, 0), orElse(MAJOR, 0));
            case AUGMENTED_SEVENTH -> List.of(of(SEVENTH, 0, BASS, 8), of(SEVENTH, 0));
            case MAJOR_SEVENTH -> List.of(of(MINOR, 4), orElse(MAJOR, 0));
            case MINOR_SEVENTH -> List.of(of(MAJOR, 3), orElse(MINOR, 0));
            case HALF_DIMINISHED -> List.of(of(MINOR, 3));
            case MAJOR_SIXTH -> List.of(of(MINOR, 9), of(MAJOR, 0), of(MAJOR, 0, MINOR, 9));
            case MINOR_SIXTH -> List.of(of(MINOR, 0, DIMINISHED, 0), of(DIMINISHED, 0), of(MINOR, 0));
            case DOMINANT_NINTH -> List.of(of(MINOR, 7, SEVENTH, 0), of(SEVENTH, 0), orElse(MAJOR, 0));
            case MAJOR_NINTH -> List.of(of(MAJOR, 7, MINOR, 4), of(MINOR, 4), orElse(MAJOR, 0));
            case MINOR_NINTH -> List.of(of(MAJOR, 3, MINOR, 7), of(MAJOR, 3), orElse(MINOR, 0));
            case DOMINANT_11TH -> List.of(of(MAJOR, 10), of(SEVENTH, 0), orElse(MAJOR, 0));
            case MAJOR_11TH -> List.of(of(MAJOR, 7, MINOR, 4), of(MINOR, 4), orElse(MAJOR, 0));
            case MINOR_11TH -> List.of(of(MAJOR, 3, MAJOR, 10), of(MAJOR, 3), orElse(MINOR, 0));
            case DOMINANT_13TH -> List.of(of(MINOR, 9, SEVENTH, 0), of(SEVENTH, 0), orElse(MAJOR, 0));
            case MAJOR_13TH -> List.of(of(MINOR, 4, MINOR, 9), of(MINOR, 4), orElse(MAJOR, 0));
            case MINOR_13TH -> List.of(of(MAJOR, 3, MAJOR, 10), of(MAJOR, 3), orElse(MINOR, 0));
            case SUSPENDED_SECOND -> List.of(of(BASS, 2, BASS, 7), of(MAJOR, 0), of(MINOR, 0));
            case SUSPENDED_FOURTH -> List.of(of(BASS, 5, BASS, 7), of(MAJOR, 0), of(MINOR, 0));
            case POWER -> List.of(of(BASS, 7), of(MAJOR, 0));
            case PEDAL, NEAPOLITAN, ITALIAN, FRENCH, GERMAN, TRISTAN, OTHER -> List.of(of(List.of()));
            case AUGMENTED, MAJOR_MINOR, NONE -> List.of();
        };
    }

    private static ChordRecipe of(BassRow row, int semitones) {
        return of(List.of(new Key(row, semitones)));
    }

    private static ChordRecipe of(BassRow row, int semitones, BassRow otherRow, int otherSemitones) {
        return of(List.of(new Key(row, semitones), new Key(otherRow, otherSemitones)));
    }

    private static ChordRecipe of(List<Key> keys) {
        boolean holdsRoot = keys.stream()
                .flatMap(key -> key.row().intervals().stream().map(tone -> (tone + key.semitones()) % 12))
                .anyMatch(tone -> tone == 0);
        return new ChordRecipe(keys, holdsRoot, false);
    }

    private static ChordRecipe orElse(BassRow row, int semitones) {
        ChordRecipe recipe = of(row, semitones);
        return new ChordRecipe(recipe.keys(), recipe.holdsRoot(), true);
    }
}
