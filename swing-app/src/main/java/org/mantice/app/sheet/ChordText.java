package org.mantice.app.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;

/** Chord symbols as printed: with flat and sharp signs, the kind as the source writes it where it does. */
public final class ChordText {
    private ChordText() {}

    /** As {@code "F♯m7/C♯"}. */
    public static String of(ChordSymbol symbol) {
        if (symbol.isSilent()) return symbol.kind().suffix();
        String kind = symbol.text().isEmpty() ? symbol.kind().suffix() : symbol.text();
        StringBuilder text = new StringBuilder(name(symbol.root())).append(withSigns(kind));
        if (symbol.text().isEmpty() || symbol.text().equals(symbol.kind().suffix()))
            for (ChordDegree degree : symbol.degrees()) text.append(degree(degree));
        symbol.bass().ifPresent(bass -> text.append('/').append(name(bass)));
        return text.toString();
    }

    /** With the chord of later passes behind it in brackets, and in brackets itself where it may be left out. */
    public static String of(PlacedChord chord) {
        String text = of(chord.symbol())
                + chord.alternate().map(other -> "(" + of(other) + ")").orElse("");
        return chord.optional() ? "(" + text + ")" : text;
    }

    /**
     * One that may be left out in brackets; the chord for later passes smaller behind it, in brackets too. A proposed one
     * is italic and in square brackets: nobody has written it.
     */
    static SheetFonts.Outline outline(PlacedChord chord) {
        String symbol = of(chord.symbol());
        if (chord.proposed())
            return SheetFonts.text("[" + symbol + "]", SheetFonts.Face.BOLD_ITALIC, Engraving.CHORD_SIZE);
        SheetFonts.Outline first = SheetFonts.text(
                chord.optional() ? "(" + symbol + ")" : symbol, SheetFonts.Face.BOLD, Engraving.CHORD_SIZE);
        return chord.alternate()
                .map(other ->
                        SheetFonts.text("(" + of(other) + ")", SheetFonts.Face.PLAIN, Engraving.ALTERNATE_CHORD_SIZE))
                .map(second -> beside(first, second))
                .orElse(first);
    }

    private static SheetFonts.Outline beside(SheetFonts.Outline first, SheetFonts.Outline second) {
        double shift = first.advance() + Engraving.ALTERNATE_CHORD_GAP;
        Path2D both = new Path2D.Double(first.shape());
        both.append(AffineTransform.getTranslateInstance(shift, 0).createTransformedShape(second.shape()), false);
        return new SheetFonts.Outline(both, shift + second.advance(), both.getBounds2D());
    }

    private static String name(NoteName name) {
        return name.step().name() + Accidentals.inText(name);
    }

    private static String withSigns(String kind) {
        return kind.replaceAll("b(?=\\d)", "\u266d").replace('#', '\u266f');
    }

    private static String degree(ChordDegree degree) {
        String sign = degree.alter() < 0 ? "\u266d".repeat(-degree.alter()) : "\u266f".repeat(degree.alter());
        return switch (degree.change()) {
            case ADD -> "(add" + sign + degree.value() + ")";
            case ALTER -> "(" + sign + degree.value() + ")";
            case SUBTRACT -> "(no" + degree.value() + ")";
        };
    }
}
