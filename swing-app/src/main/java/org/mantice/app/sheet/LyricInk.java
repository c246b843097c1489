package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.Lyric;

/** Inks the lyrics of a line below the staff: each verse on its base line, hyphens between the syllables of a word. */
final class LyricInk {
    private static final double HIGHEST = 4 + 2.4;
    private static final double GAP = 0.6;
    private static final double VERSE = 2.3;
    private static final double LEAST_HYPHEN_ROOM = 0.9;

    private final LineInk ink;
    private final StaffLine line;

    private record Syllable(Lyric lyric, SheetFonts.Outline outline, double x, int cell) {
        double right() {
            return x + outline.advance();
        }
    }

    LyricInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
    }

    /** Whether there are any on a line. */
    static boolean areOn(StaffLine line) {
        return line.measures().stream()
                .anyMatch(measure -> LyricText.verses(measure.staff().measure()) > 0);
    }

    void write() {
        int verses = line.measures().stream()
                .mapToInt(measure -> LyricText.verses(measure.staff().measure()))
                .max()
                .orElse(0);
        List<List<Syllable>> rows = new ArrayList<>();
        for (int verse = 1; verse <= verses; verse++) rows.add(syllables(verse));
        double base = HIGHEST;
        for (List<Syllable> row : rows)
            for (Syllable syllable : row)
                base = Math.max(
                        base,
                        ink.lowest(syllable.x(), syllable.right(), 4)
                                + GAP
                                - Math.min(0, syllable.outline().bounds().getMinY()));
        for (int i = 0; i < rows.size(); i++) row(rows.get(i), base + i * VERSE);
    }

    private List<Syllable> syllables(int verse) {
        List<Syllable> row = new ArrayList<>();
        for (int cell = line.first(); cell <= line.last(); cell++) {
            PlacedMeasure measure = line.of(cell);
            for (int i = 0; i < measure.staff().events().size(); i++) {
                Optional<Lyric> lyric = LyricText.at(measure.staff().events().get(i), verse);
                if (lyric.isEmpty()) continue;
                SheetFonts.Outline outline = LyricText.outline(lyric.get());
                row.add(new Syllable(lyric.get(), outline, measure.x(i) - outline.advance() / 2, cell));
            }
        }
        return row;
    }

    private void row(List<Syllable> row, double base) {
        SheetFonts.Outline hyphen = SheetFonts.text("-", SheetFonts.Face.PLAIN, Engraving.LYRIC_SIZE);
        for (int i = 0; i < row.size(); i++) {
            Syllable syllable = row.get(i);
            ink.played(line.isPlayed(syllable.cell()));
            ink.outline(syllable.outline(), syllable.x(), base);
            if (syllable.lyric().endsWord()) continue;
            if (i + 1 == row.size()) {
                if (line.last() + 1 < line.sheet().count()) ink.outline(hyphen, syllable.right() + 0.4, base);
                continue;
            }
            double room = row.get(i + 1).x() - syllable.right();
            if (room < LEAST_HYPHEN_ROOM) continue;
            ink.outline(hyphen, syllable.right() + (room - hyphen.advance()) / 2, base);
        }
    }
}
