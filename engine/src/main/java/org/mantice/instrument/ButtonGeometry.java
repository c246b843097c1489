package org.mantice.instrument;

/**
 * Where bass buttons lie, in thousandths of a millimetre. The defaults are an estimate: no published source.
 *
 * @param columnMicrons distance between columns along a row, 5,000 to 40,000
 * @param rowMicrons distance between rows, 5,000 to 40,000
 * @param driftMicrons how far up a row lies against the row nearer the bellows, 0 to columnMicrons
 * @param buttonMicrons diameter of a button, 2,000 to 20,000
 */
public record ButtonGeometry(int columnMicrons, int rowMicrons, int driftMicrons, int buttonMicrons) {
    public static final ButtonGeometry ESTIMATE = new ButtonGeometry(17_500, 14_000, 8_000, 9_000);

    public ButtonGeometry {
        check("columnMicrons", columnMicrons, 5_000, 40_000);
        check("rowMicrons", rowMicrons, 5_000, 40_000);
        check("driftMicrons", driftMicrons, 0, columnMicrons);
        check("buttonMicrons", buttonMicrons, 2_000, 20_000);
    }

    /** How far up a button lies against the C counterbass, along the rows. */
    public int alongMicrons(BassButton button) {
        return button.column() * columnMicrons + button.row().ordinal() * driftMicrons;
    }

    /** How far out from the counterbass row a button lies; a row that an instrument lacks keeps its place. */
    public int acrossMicrons(BassButton button) {
        return button.row().ordinal() * rowMicrons;
    }

    /** Square of the distance between two buttons' centres, exact. */
    public long distanceSquared(BassButton one, BassButton other) {
        long along = (long) alongMicrons(one) - alongMicrons(other);
        long across = (long) acrossMicrons(one) - acrossMicrons(other);
        return along * along + across * across;
    }

    private static void check(String name, int value, int least, int most) {
        if (value < least || value > most)
            throw new IllegalArgumentException(name + " is " + value + "; allowed: " + least + " to " + most);
    }
}
