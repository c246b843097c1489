package org.mantice.instrument;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.Loudness;

/**
 * The bellows as an air reservoir.
 *
 * @param volumes air over the opening at the top edge, both rising, from opening 0 to the full opening
 * @param comfortableOpeningMm how far the player likes to open it, above 0
 * @param fullOpeningMm how far it goes
 * @param capacityReedSeconds how long one 8' reed at mf sounds from closed to the comfortable opening, 10 to 2,000
 * @param appetites what each source of sound takes
 * @param turnMillis what a turn takes from the note before, 0 to 1,000
 * @param measured false while capacity and appetites are estimates
 */
public record Bellows(
        List<OpeningVolume> volumes,
        int comfortableOpeningMm,
        int fullOpeningMm,
        int capacityReedSeconds,
        Appetites appetites,
        int turnMillis,
        boolean measured) {
    /** One row of the table: opening in millimetres, air in millilitres. */
    public record OpeningVolume(int openingMm, int millilitres) {}

    /**
     * Air taken per second, in per mille of one 8' reed at mf.
     *
     * @param banks per reed of a treble bank
     * @param bassButton a bass or counterbass button, all its reeds together
     * @param chordButton a chord button, all its reeds together
     * @param loudness factor by loudness; mf is 1,000
     */
    public record Appetites(
            SortedMap<ReedBank, Integer> banks,
            int bassButton,
            int chordButton,
            SortedMap<Loudness, Integer> loudness) {
        public Appetites {
            banks = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(banks));
            loudness = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(loudness));
        }
    }

    public Bellows {
        volumes = List.copyOf(volumes);
    }

    /** Air in millilitres at an opening, straight lines between the rows, rounded down. */
    public int millilitresAt(int openingMm) {
        OpeningVolume low = volumes.get(0);
        for (OpeningVolume high : volumes) {
            if (openingMm <= high.openingMm()) {
                if (high.openingMm() == low.openingMm()) return low.millilitres();
                long share = (long) (openingMm - low.openingMm()) * (high.millilitres() - low.millilitres());
                return (int) (low.millilitres() + share / (high.openingMm() - low.openingMm()));
            }
            low = high;
        }
        return low.millilitres();
    }

    public int comfortableMillilitres() {
        return millilitresAt(comfortableOpeningMm);
    }

    public int fullMillilitres() {
        return millilitresAt(fullOpeningMm);
    }
}
