package org.mantice.reading.midi;

import org.mantice.tune.Key;
import org.mantice.tune.Mode;

/**
 * Finds a key from how long each pitch class sounds: the one whose profile correlates best with it (Krumhansl, Cognitive
 * Foundations of Musical Pitch, 1990, chapter 4; the profiles are those of Krumhansl and Kessler, Psychological Review
 * 89, 1982). Of equals the major key and the one with fewer sharps and flats is taken.
 */
public final class KeyFinder {
    private static final int[] MAJOR = {635, 223, 348, 233, 438, 409, 252, 519, 239, 366, 229, 288};
    private static final int[] MINOR = {633, 268, 352, 538, 260, 353, 254, 475, 398, 269, 334, 317};
    /** Signatures by how often they are written. */
    private static final int[] FIFTHS = {0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6};

    private KeyFinder() {}

    /** @param weights twelve, from C; C major if all are equal */
    public static Key find(long[] weights) {
        Key best = Key.C_MAJOR;
        double most = 0;
        for (int fifths : FIFTHS)
            for (Mode mode : new Mode[] {Mode.MAJOR, Mode.MINOR}) {
                Key key = new Key(fifths, mode);
                double fit = correlation(
                        weights, mode == Mode.MAJOR ? MAJOR : MINOR, key.tonic().pitchClass());
                if (fit > most + 1e-9) {
                    most = fit;
                    best = key;
                }
            }
        return best;
    }

    private static double correlation(long[] weights, int[] profile, int tonic) {
        double meanWeight = 0;
        double meanProfile = 0;
        for (int i = 0; i < 12; i++) {
            meanWeight += weights[i] / 12.0;
            meanProfile += profile[i] / 12.0;
        }
        double both = 0;
        double ofWeights = 0;
        double ofProfile = 0;
        for (int i = 0; i < 12; i++) {
            double weight = weights[(i + tonic) % 12] - meanWeight;
            double stands = profile[i] - meanProfile;
            both += weight * stands;
            ofWeights += weight * weight;
            ofProfile += stands * stands;
        }
        return ofWeights == 0 ? 0 : both / Math.sqrt(ofWeights * ofProfile);
    }
}
