package org.mantice.instrument;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.mantice.reading.ChordText;
import org.mantice.tune.ChordSymbol;

/** Layouts and symbols that several tests ask about. */
final class ChordLayouts {
    private static final ChordText TEXT = new ChordText(ChordText.Letters.INTERNATIONAL);

    /** Every root once, as keys are usually spelled. */
    static final List<String> ROOTS = List.of("C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B");

    private ChordLayouts() {}

    /** Every published size, both of 48. */
    static List<StradellaBass> sizes() {
        List<StradellaBass> sizes = new ArrayList<>(
                StradellaBass.SIZES.stream().map(StradellaBass::ofSize).toList());
        sizes.add(6, otherOf48());
        return sizes;
    }

    /** Eight columns of all six rows. */
    static StradellaBass otherOf48() {
        return StradellaBass.ofRows(8, EnumSet.allOf(BassRow.class));
    }

    static ChordSymbol symbol(String text) {
        return TEXT.symbol(text).orElseThrow(() -> new IllegalArgumentException(text));
    }
}
