package org.mantice.instrument;

/**
 * Air through a reed slot by the orifice formula: flow = C · area · √(2 · pressure / density), so flow grows with the
 * square root of pressure (quasi-static form in J. Woodhouse, Euphonics, 11.6.2). Pressure is force over area.
 *
 * <p>Here real numbers are physics; what a plan counts is whole per mille and whole seconds, made at one place,
 * {@link #whole}. Only {@link StrictMath} is used, so that every machine gets the same number.
 */
public final class ReedFlow {
    /** Kilograms per cubic metre of air at about 20 °C. */
    public static final double AIR_DENSITY = 1.2;
    /** Discharge coefficient of a sharp-edged slit; about 0.6, from memory. */
    public static final double DISCHARGE = 0.61;

    private ReedFlow() {}

    /** Speed of the jet in metres per second; pressure in pascals, 0 or more. */
    public static double jetMetresPerSecond(double pascals) {
        if (!(pascals >= 0)) throw new IllegalArgumentException("pascals is " + pascals + "; allowed: 0 or more");
        return StrictMath.sqrt(2 * pascals / AIR_DENSITY);
    }

    /** Flow in litres per second through an opening of so many square millimetres, 0 or more. */
    public static double litresPerSecond(double pascals, double squareMillimetres) {
        if (!(squareMillimetres >= 0))
            throw new IllegalArgumentException("squareMillimetres is " + squareMillimetres + "; allowed: 0 or more");
        return DISCHARGE * squareMillimetres * jetMetresPerSecond(pascals) / 1_000;
    }

    /** Pressure in pascals of a force in newtons on an area in square metres, above 0. */
    public static double pascals(double newtons, double squareMetres) {
        if (!(squareMetres > 0))
            throw new IllegalArgumentException("squareMetres is " + squareMetres + "; allowed: above 0");
        return newtons / squareMetres;
    }

    /** How long so much air lasts in seconds; flow in litres per second, above 0. */
    public static double seconds(double litres, double litresPerSecond) {
        if (!(litresPerSecond > 0))
            throw new IllegalArgumentException("litresPerSecond is " + litresPerSecond + "; allowed: above 0");
        return litres / litresPerSecond;
    }

    /** What one flow is of another, in whole per mille. */
    public static int perMille(double flow, double reference) {
        return whole(1_000 * seconds(flow, reference));
    }

    /** The one place where a real number becomes a whole one: to the nearest, halves up. */
    static int whole(double value) {
        return Math.toIntExact(StrictMath.round(value));
    }
}
