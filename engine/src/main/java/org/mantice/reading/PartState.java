package org.mantice.reading;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** What carries over from measure to measure while a part is read. */
final class PartState {
    /** Length of one division in whole notes. */
    MusicalTime division = MusicalTime.QUARTER;

    /** The file is taken at its word. */
    final boolean verbatim;

    boolean divisionsGiven;
    /** How many measures back the measure repeat sign in force points; 0 for none. */
    int measuresRepeated;

    Key writtenKey = Key.C_MAJOR;
    Optional<Meter> meter = Optional.empty();
    /** The clef that each staff began with. */
    final Map<Integer, String> clefs = new TreeMap<>();

    private final Map<Integer, Transposition> transpositions = new TreeMap<>();

    PartState(boolean verbatim) {
        this.verbatim = verbatim;
    }

    /** Staff 0 stands for all staves. */
    void transpose(int staff, Transposition transposition) {
        if (staff == 0) transpositions.clear();
        transpositions.put(staff, transposition);
    }

    Transposition transposition(int staff) {
        Transposition all = transpositions.getOrDefault(0, Transposition.NONE);
        return transpositions.getOrDefault(staff, all).keeping(writtenKey);
    }
}
