package org.mantice.instrument;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.Loudness;

/**
 * The bellows as an air reservoir.
 *
 * @param volumes air over the opening at the top edge, both rising strictly, from 0 mm and 0 ml to the full opening or
 *     beyond; at least two rows, at most 100
 * @param comfortableOpeningMm how far the player likes to open it, 1 to the full opening
 * @param fullOpeningMm how far it goes, 1 to 1,000
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
    /**
     * One row of the table.
     *
     * @param openingMm opening at the top edge in millimetres, 0 to 1,000
     * @param millilitres air, 0 to 100,000
     */
    public record OpeningVolume(int openingMm, int millilitres) {
        public OpeningVolume {
            check("openingMm", openingMm, 0, 1_000);
            check("millilitres", millilitres, 0, 100_000);
        }
    }

    /**
     * Air taken per second, in per mille of one 8' reed at mf.
     *
     * @param banks per reed of a treble bank, 1 to 20,000 each
     * @param bassButton a bass or counterbass button, all its reeds together, 1 to 100,000
     * @param chordButton a chord button, all its reeds together, 1 to 100,000
     * @param loudness factor by loudness, 1 to 20,000, every loudness once, never falling; mf is 1,000
     */
    public record Appetites(
            SortedMap<ReedBank, Integer> banks,
            int bassButton,
            int chordButton,
            SortedMap<Loudness, Integer> loudness) {
        public Appetites {
            banks = Collections.unmodifiableSortedMap(new TreeMap<>(banks));
            loudness = Collections.unmodifiableSortedMap(new TreeMap<>(loudness));
            banks.forEach((bank, value) -> check("banks." + bank, value, 1, 20_000));
            check("bassButton", bassButton, 1, 100_000);
            check("chordButton", chordButton, 1, 100_000);
            int before = 0;
            for (Loudness level : Loudness.values()) {
                if (!loudness.containsKey(level))
                    throw new IllegalArgumentException("loudness lacks " + level + "; allowed: every loudness once");
                check("loudness." + level, loudness.get(level), Math.max(1, before), 20_000);
                before = loudness.get(level);
            }
            check("loudness." + Loudness.MF, Objects.requireNonNull(loudness.get(Loudness.MF)), 1_000, 1_000);
        }
    }

    public Bellows {
        volumes = List.copyOf(volumes);
        check("fullOpeningMm", fullOpeningMm, 1, 1_000);
        check("comfortableOpeningMm", comfortableOpeningMm, 1, fullOpeningMm);
        check("capacityReedSeconds", capacityReedSeconds, 10, 2_000);
        check("turnMillis", turnMillis, 0, 1_000);
        checkTable(volumes, fullOpeningMm);
    }

    private static void checkTable(List<OpeningVolume> volumes, int fullOpeningMm) {
        if (volumes.size() < 2 || volumes.size() > 100)
            throw new IllegalArgumentException(
                    "volumes is a table of " + volumes.size() + " rows; allowed: 2 to 100 rows");
        check("volumes[0].openingMm", volumes.get(0).openingMm(), 0, 0);
        check("volumes[0].millilitres", volumes.get(0).millilitres(), 0, 0);
        for (int row = 1; row < volumes.size(); row++) {
            OpeningVolume before = volumes.get(row - 1);
            OpeningVolume here = volumes.get(row);
            check("volumes[" + row + "].openingMm", here.openingMm(), before.openingMm() + 1, 1_000);
            check("volumes[" + row + "].millilitres", here.millilitres(), before.millilitres() + 1, 100_000);
        }
        int last = volumes.size() - 1;
        check("volumes[" + last + "].openingMm", volumes.get(last).openingMm(), fullOpeningMm, 1_000);
    }

    private static void check(String name, int value, int least, int most) {
        if (value < least || value > most)
            throw new IllegalArgumentException(
                    name + " is " + value + "; allowed: " + (least == most ? "" + least : least + " to " + most));
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
