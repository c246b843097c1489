package org.mantice.instrument;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Where bass buttons lie, in thousandths of a millimetre: a grid whose columns drift, with what single rows differ by.
 * No published source gives the sizes: until {@code measured} they are estimates.
 *
 * @param columnMicrons distance between columns along a row, 5,000 to 40,000
 * @param rowMicrons distance between rows, 5,000 to 40,000
 * @param driftMicrons how far up a row lies against the row nearer the bellows, 0 to columnMicrons
 * @param buttonMicrons diameter of a button, 2,000 to 20,000
 * @param offsets rows that lie elsewhere than the grid says; others have none
 * @param measured whether the figures come from an instrument
 */
public record ButtonGeometry(
        int columnMicrons,
        int rowMicrons,
        int driftMicrons,
        int buttonMicrons,
        Map<BassRow, Offset> offsets,
        boolean measured) {
    public static final ButtonGeometry ESTIMATE = estimate(17_500, 14_000, 8_000, 9_000);

    /**
     * How far a row lies from its place in the grid.
     *
     * @param alongMicrons toward the chin, -20,000 to 20,000
     * @param acrossMicrons away from the bellows, -20,000 to 20,000
     */
    public record Offset(int alongMicrons, int acrossMicrons) {
        public Offset {
            check("alongMicrons", alongMicrons, -20_000, 20_000);
            check("acrossMicrons", acrossMicrons, -20_000, 20_000);
        }
    }

    public ButtonGeometry {
        check("columnMicrons", columnMicrons, 5_000, 40_000);
        check("rowMicrons", rowMicrons, 5_000, 40_000);
        check("driftMicrons", driftMicrons, 0, columnMicrons);
        check("buttonMicrons", buttonMicrons, 2_000, 20_000);
        EnumMap<BassRow, Offset> copy = new EnumMap<>(BassRow.class);
        copy.putAll(offsets);
        offsets = Collections.unmodifiableMap(copy);
    }

    /** A regular grid that nobody has measured. */
    public static ButtonGeometry estimate(int columnMicrons, int rowMicrons, int driftMicrons, int buttonMicrons) {
        return new ButtonGeometry(columnMicrons, rowMicrons, driftMicrons, buttonMicrons, Map.of(), false);
    }

    /** How far up a place lies, along the rows, against column 0 of the innermost row of the grid. */
    int alongMicrons(BassRow row, int rowsInside, int column) {
        Offset offset = offsets.get(row);
        return column * columnMicrons + rowsInside * driftMicrons + (offset == null ? 0 : offset.alongMicrons());
    }

    /** How far out from the innermost row of the grid a row lies. */
    int acrossMicrons(BassRow row, int rowsInside) {
        Offset offset = offsets.get(row);
        return rowsInside * rowMicrons + (offset == null ? 0 : offset.acrossMicrons());
    }

    private static void check(String name, int value, int least, int most) {
        if (value < least || value > most)
            throw new IllegalArgumentException(name + " is " + value + "; allowed: " + least + " to " + most);
    }
}
