package org.mantice.app.look;

import java.awt.Color;

/**
 * Contrast as defined by W3C, Web Content Accessibility Guidelines (WCAG) 2.2, 5 October 2023, terms "contrast ratio" and
 * "relative luminance".
 */
final class Contrast {
    /** Success criterion 1.4.3, Contrast (Minimum). */
    static final double TEXT = 4.5;

    /** Success criterion 1.4.11, Non-text Contrast. */
    static final double GRAPHIC = 3;

    private Contrast() {}

    static double of(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    static double luminance(Color colour) {
        double[] linear = linear(colour);
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    static double[] linear(Color colour) {
        return new double[] {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
