package org.mantice.app.sheet;

import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;

/** Chord symbols as printed: with flat and sharp signs, the kind as the source writes it where it does. */
final class ChordText {
    private ChordText() {}

    static String of(ChordSymbol symbol) {
        if (symbol.isSilent()) return symbol.kind().suffix();
        String kind = symbol.text().isEmpty() ? symbol.kind().suffix() : symbol.text();
        StringBuilder text = new StringBuilder(name(symbol.root())).append(withSigns(kind));
        if (symbol.text().isEmpty() || symbol.text().equals(symbol.kind().suffix()))
            for (ChordDegree degree : symbol.degrees()) text.append(degree(degree));
        symbol.bass().ifPresent(bass -> text.append('/').append(name(bass)));
        return text.toString();
    }

    static SheetFonts.Outline outline(ChordSymbol symbol) {
        return SheetFonts.text(of(symbol), SheetFonts.Face.BOLD, Engraving.CHORD_SIZE);
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
