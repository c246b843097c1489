package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;

/**
 * What stands between a measure's left barline and its first note: clef, key, meter, start of a repeat.
 *
 * @param signs with their x from the left barline and line or space, counted in steps from the bottom line
 * @param repeatX of the left edge of the start of a repeat; meaningless without one
 * @param width to where the room for the first note begins
 */
record Opening(List<Sign> signs, boolean repeatStart, double repeatX, double width) {
    /** Width of the start of a repeat: thick, thin, dots. */
    static final double REPEAT = Engraving.THICK_BAR
            + Engraving.BAR_GAP
            + Engraving.THIN_BAR
            + Engraving.REPEAT_DOT_GAP
            + Engraving.REPEAT_DOT;

    private static final double GAP = 0.8;
    private static final int[] SHARPS = {8, 5, 9, 6, 3, 7, 4};
    private static final int[] FLATS = {4, 7, 3, 6, 2, 5, 1};

    /** A sign of the staff. */
    record Sign(Glyph glyph, double x, int place) {}

    Opening {
        signs = List.copyOf(signs);
    }

    /**
     * @param lineStart the measure begins a line, so clef and key are repeated
     * @param key the key comes anew
     * @param meter the meter comes anew
     * @param before the key in force until here
     */
    static Opening of(Measure measure, boolean lineStart, boolean key, boolean meter, Key before, boolean repeat) {
        Builder builder = new Builder();
        if (repeat && !lineStart) builder.repeat();
        if (lineStart) builder.clef();
        if (lineStart || key) builder.key(measure.key(), key ? before : measure.key());
        if (meter) builder.meter(measure.meter());
        if (repeat && lineStart) builder.repeat();
        return builder.build();
    }

    /** What warns at the end of a line of the key and meter on the next; nothing of either that stays. */
    static Opening warning(Measure next, boolean key, boolean meter, Key before) {
        Builder builder = new Builder();
        if (key) builder.key(next.key(), before);
        if (meter) builder.meter(next.meter());
        return builder.build();
    }

    /** Sets signs from left to right. */
    private static final class Builder {
        private final List<Sign> signs = new ArrayList<>();
        private double x;
        private boolean repeat;
        private double repeatX;

        void clef() {
            x += GAP;
            signs.add(new Sign(Glyph.G_CLEF, x, 2));
            x += SheetFonts.glyph(Glyph.G_CLEF).bounds().getWidth();
        }

        /** Naturals only where no sign of the new key tells that the old one ends. */
        void key(Key key, Key before) {
            if (key.fifths() == 0) row(Glyph.ACCIDENTAL_NATURAL, before.fifths());
            else row(key.fifths() > 0 ? Glyph.ACCIDENTAL_SHARP : Glyph.ACCIDENTAL_FLAT, key.fifths());
        }

        private void row(Glyph glyph, int fifths) {
            if (fifths == 0) return;
            x += GAP;
            int[] places = fifths > 0 ? SHARPS : FLATS;
            double pitch = SheetFonts.glyph(glyph).bounds().getWidth() + (glyph == Glyph.ACCIDENTAL_NATURAL ? 0.2 : 0);
            for (int i = 0; i < Math.abs(fifths); i++) {
                signs.add(new Sign(glyph, x, places[i]));
                x += pitch;
            }
        }

        void meter(Meter meter) {
            if (meter.isFree()) return;
            x += GAP;
            String above = String.join(
                    "+", meter.groups().stream().map(String::valueOf).toList());
            String below = Integer.toString(meter.unit());
            double width = Math.max(width(above), width(below));
            figures(above, x + (width - width(above)) / 2, 6);
            figures(below, x + (width - width(below)) / 2, 2);
            x += width;
        }

        private static double width(String figures) {
            return figures.chars()
                    .mapToDouble(c -> SheetFonts.glyph(figure(c)).advance())
                    .sum();
        }

        private void figures(String figures, double from, int place) {
            double at = from;
            for (char c : figures.toCharArray()) {
                signs.add(new Sign(figure(c), at, place));
                at += SheetFonts.glyph(figure(c)).advance();
            }
        }

        private static Glyph figure(int c) {
            return c == '+' ? Glyph.TIME_SIG_PLUS : Glyph.meterFigure(c - '0');
        }

        void repeat() {
            if (x > 0) x += GAP;
            repeat = true;
            repeatX = x;
            x += REPEAT;
        }

        Opening build() {
            return new Opening(signs, repeat, repeatX, x);
        }
    }
}
