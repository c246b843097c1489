package org.mantice.reading;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.Step;

/** Finds the chord kind of a symbol; where the file names none that exists, from the text that it prints. */
final class ChordKindText {
    private static final Map<String, ChordKind> BY_TEXT = Map.ofEntries(
            Map.entry("", ChordKind.MAJOR),
            Map.entry("M", ChordKind.MAJOR),
            Map.entry("maj", ChordKind.MAJOR),
            Map.entry("major", ChordKind.MAJOR),
            Map.entry("m", ChordKind.MINOR),
            Map.entry("mi", ChordKind.MINOR),
            Map.entry("min", ChordKind.MINOR),
            Map.entry("minor", ChordKind.MINOR),
            Map.entry("-", ChordKind.MINOR),
            Map.entry("+", ChordKind.AUGMENTED),
            Map.entry("aug", ChordKind.AUGMENTED),
            Map.entry("augmented", ChordKind.AUGMENTED),
            Map.entry("#5", ChordKind.AUGMENTED),
            Map.entry("dim", ChordKind.DIMINISHED),
            Map.entry("diminished", ChordKind.DIMINISHED),
            Map.entry("o", ChordKind.DIMINISHED),
            Map.entry("7", ChordKind.DOMINANT),
            Map.entry("dom7", ChordKind.DOMINANT),
            Map.entry("maj7", ChordKind.MAJOR_SEVENTH),
            Map.entry("M7", ChordKind.MAJOR_SEVENTH),
            Map.entry("j7", ChordKind.MAJOR_SEVENTH),
            Map.entry("ma7", ChordKind.MAJOR_SEVENTH),
            Map.entry("m7", ChordKind.MINOR_SEVENTH),
            Map.entry("mi7", ChordKind.MINOR_SEVENTH),
            Map.entry("min7", ChordKind.MINOR_SEVENTH),
            Map.entry("-7", ChordKind.MINOR_SEVENTH),
            Map.entry("dim7", ChordKind.DIMINISHED_SEVENTH),
            Map.entry("o7", ChordKind.DIMINISHED_SEVENTH),
            Map.entry("+7", ChordKind.AUGMENTED_SEVENTH),
            Map.entry("7+", ChordKind.AUGMENTED_SEVENTH),
            Map.entry("aug7", ChordKind.AUGMENTED_SEVENTH),
            Map.entry("7#5", ChordKind.AUGMENTED_SEVENTH),
            Map.entry("m7b5", ChordKind.HALF_DIMINISHED),
            Map.entry("mi7b5", ChordKind.HALF_DIMINISHED),
            Map.entry("min7b5", ChordKind.HALF_DIMINISHED),
            Map.entry("-7b5", ChordKind.HALF_DIMINISHED),
            Map.entry("\u00f8", ChordKind.HALF_DIMINISHED),
            Map.entry("\u00f87", ChordKind.HALF_DIMINISHED),
            Map.entry("mM7", ChordKind.MAJOR_MINOR),
            Map.entry("mmaj7", ChordKind.MAJOR_MINOR),
            Map.entry("minmaj7", ChordKind.MAJOR_MINOR),
            Map.entry("6", ChordKind.MAJOR_SIXTH),
            Map.entry("maj6", ChordKind.MAJOR_SIXTH),
            Map.entry("m6", ChordKind.MINOR_SIXTH),
            Map.entry("min6", ChordKind.MINOR_SIXTH),
            Map.entry("-6", ChordKind.MINOR_SIXTH),
            Map.entry("9", ChordKind.DOMINANT_NINTH),
            Map.entry("maj9", ChordKind.MAJOR_NINTH),
            Map.entry("m9", ChordKind.MINOR_NINTH),
            Map.entry("11", ChordKind.DOMINANT_11TH),
            Map.entry("maj11", ChordKind.MAJOR_11TH),
            Map.entry("m11", ChordKind.MINOR_11TH),
            Map.entry("13", ChordKind.DOMINANT_13TH),
            Map.entry("maj13", ChordKind.MAJOR_13TH),
            Map.entry("m13", ChordKind.MINOR_13TH),
            Map.entry("sus2", ChordKind.SUSPENDED_SECOND),
            Map.entry("sus", ChordKind.SUSPENDED_FOURTH),
            Map.entry("sus4", ChordKind.SUSPENDED_FOURTH),
            Map.entry("5", ChordKind.POWER),
            Map.entry("N.C.", ChordKind.NONE),
            Map.entry("NC", ChordKind.NONE));

    private static final Pattern SYMBOL = Pattern.compile("([A-G])([b#\u266d\u266f]?)(.*)");

    private ChordKindText() {}

    /** A chord symbol as it is printed: a capital letter, an accidental, one of the known kinds. */
    static Optional<ChordSymbol> symbol(String text) {
        Matcher matcher = SYMBOL.matcher(text.strip());
        if (!matcher.matches()) return Optional.empty();
        int alter = matcher.group(2).isEmpty() ? 0 : "b\u266d".contains(matcher.group(2)) ? -1 : 1;
        NoteName root = new NoteName(Step.valueOf(matcher.group(1)), alter);
        return ofText(matcher.group(3)).filter(kind -> kind != ChordKind.NONE).map(kind -> ChordSymbol.of(root, kind));
    }

    /**
     * @param written the element's value; one of the standard's 33 is taken as it is
     * @param text what is printed after the root
     */
    static ChordKind kind(String written, String text, List<Finding> findings) {
        Optional<ChordKind> known = ChordKind.ofMusicXml(written);
        if (known.isPresent() && (known.get() != ChordKind.OTHER || text.isEmpty())) return known.get();
        String seen = text.isEmpty() ? written : text;
        ChordKind read = ofText(seen).orElse(ChordKind.OTHER);
        if (read != ChordKind.OTHER || known.isEmpty())
            findings.add(Finding.of(SkippedWhat.CHORD_KIND, written, text, read.musicXml()));
        return read;
    }

    static Optional<ChordKind> ofText(String text) {
        String plain = text.replaceAll("[\\s()\\[\\]]", "")
                .replace('\u266d', 'b')
                .replace('\u266f', '#')
                .replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace("\u00b0", "o")
                .replaceAll("[\u0394\u25b3\u2206]7?", "maj7");
        ChordKind exact = BY_TEXT.get(plain);
        if (exact != null) return Optional.of(exact);
        // "MIN7" or "Dim": case tells M from m only in single letters.
        return plain.length() < 3 ? Optional.empty() : Optional.ofNullable(BY_TEXT.get(plain.toLowerCase(Locale.ROOT)));
    }
}
