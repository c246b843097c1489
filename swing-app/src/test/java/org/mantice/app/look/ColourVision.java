package org.mantice.app.look;

import java.awt.Color;

/**
 * How far apart two colours look, as CIE 1976 L*a*b* distance (CIE 15), to eyes that lack a kind of cone: matrices of
 * severity 1.0 from G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for Simulation of
 * Color Vision Deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009), table 1.
 */
enum ColourVision {
    FULL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    WITHOUT_RED(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    WITHOUT_GREEN(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    WITHOUT_BLUE(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    private final double[] rows;

    ColourVision(double... rows) {
        this.rows = rows;
    }

    double distance(Color one, Color other) {
        double[] a = lab(one);
        double[] b = lab(other);
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    private double[] lab(Color colour) {
        double[] rgb = Contrast.linear(colour);
        double[] seen = new double[3];
        for (int row = 0; row < 3; row++) {
            double sum = 0;
            for (int column = 0; column < 3; column++) sum += rows[3 * row + column] * rgb[column];
            seen[row] = Math.max(0, Math.min(1, sum));
        }
        // sRGB to XYZ under D65, IEC 61966-2-1
        double x = curve((0.4124 * seen[0] + 0.3576 * seen[1] + 0.1805 * seen[2]) / 0.95047);
        double y = curve(0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2]);
        double z = curve((0.0193 * seen[0] + 0.1192 * seen[1] + 0.9505 * seen[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double curve(double share) {
        return share > 216.0 / 24389 ? Math.cbrt(share) : share * 24389 / 27 / 116 + 16.0 / 116;
    }
}
