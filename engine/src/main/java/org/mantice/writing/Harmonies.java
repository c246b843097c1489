package org.mantice.writing;

import java.util.Locale;
import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;

/** Writes chord symbols. */
final class Harmonies {
    private final XmlOut out;

    Harmonies(XmlOut out) {
        this.out = out;
    }

    /**
     * An alternate follows as a harmony of type "alternate" (MusicXML 4.0, type harmony-type).
     *
     * @param offset in divisions from where the file stands
     */
    void write(PlacedChord chord, long offset) {
        write(chord.symbol(), "", level(chord), offset);
        chord.alternate().ifPresent(other -> write(other, "alternate", "", offset));
    }

    private static String level(PlacedChord chord) {
        if (chord.optional()) return chord.proposed() ? "optional proposed" : "optional";
        return chord.proposed() ? "proposed" : "";
    }

    private void write(ChordSymbol symbol, String type, String level, long offset) {
        out.open("harmony", "type", type);
        writeRoot(symbol);
        out.leaf("kind", symbol.kind().musicXml(), "text", symbol.text());
        symbol.bass().ifPresent(bass -> writeName("bass", bass));
        for (ChordDegree degree : symbol.degrees())
            out.open("degree")
                    .leaf("degree-value", degree.value())
                    .leaf("degree-alter", degree.alter())
                    .leaf("degree-type", degree.change().name().toLowerCase(Locale.ROOT))
                    .close();
        if (offset != 0) out.leaf("offset", String.valueOf(offset), "sound", "yes");
        if (!level.isEmpty()) out.leaf("level", level, "parentheses", "yes");
        out.close();
    }

    /** "No chord" needs a root too, which is then not printed (MusicXML 4.0, element kind). */
    private void writeRoot(ChordSymbol symbol) {
        if (symbol.kind() != ChordKind.NONE) writeName("root", symbol.root());
        else out.open("root").leafWithEmpty("root-step", "C", "text").close();
    }

    private void writeName(String element, NoteName name) {
        out.open(element).leaf(element + "-step", name.step().name());
        if (name.alter() != 0) out.leaf(element + "-alter", name.alter());
        out.close();
    }
}
