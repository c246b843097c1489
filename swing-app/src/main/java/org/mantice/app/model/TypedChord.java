package org.mantice.app.model;

import org.mantice.editing.TuneEdit.SetChord;
import org.mantice.reading.ChordText;
import org.mantice.reading.ChordText.Letters;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.WrittenPlace;

/**
 * A chord symbol as it is typed: with a small letter first or a large one. B is the semitone below C, as everywhere on
 * the sheet; an H, which can mean nothing else, is that note too.
 */
final class TypedChord {
    private TypedChord() {}

    /** @throws IllegalArgumentException if the text is no chord symbol */
    static SetChord edit(WrittenPlace place, String text, int fifths) {
        String written = spelt(text);
        if (fifths == 0) return new SetChord(place, written);
        ChordText.Written read = new ChordText(Letters.INTERNATIONAL)
                .read(written)
                .orElseThrow(() -> new IllegalArgumentException("text is \"" + text + "\"; allowed: a chord symbol"));
        if (read.symbol().isSilent()) return new SetChord(place, written);
        String moved = moved(read.symbol(), fifths)
                + read.alternate()
                        .map(other -> "(" + moved(other, fifths) + ")")
                        .orElse("");
        return new SetChord(place, read.optional() ? "(" + moved + ")" : moved);
    }

    /** With a large letter for the root, and the international one for H. */
    static String spelt(String text) {
        String plain = text.strip();
        if (plain.isEmpty()) return plain;
        String large = plain.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + plain.substring(1);
        return large.replaceFirst("^H", "B")
                .replaceFirst("/\\s*[Hh]$", "/B")
                .replaceFirst("/\\s*[Hh](?=[b#\u266d\u266f])", "/B");
    }

    private static String moved(ChordSymbol symbol, int fifths) {
        String bass = symbol.bass().map(note -> "/" + moved(note, fifths)).orElse("");
        return moved(symbol.root(), fifths) + symbol.text() + bass;
    }

    /** Without a double accidental. */
    private static NoteName moved(NoteName name, int fifths) {
        int place = name.fifths() + fifths;
        while (place > 12) place -= 12;
        while (place < -8) place += 12;
        return NoteName.ofFifths(place);
    }
}
