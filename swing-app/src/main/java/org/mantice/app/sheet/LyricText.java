package org.mantice.app.sheet;

import java.util.Optional;
import org.mantice.tune.Lyric;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;

/** Syllables as printed. */
final class LyricText {
    /** Between two syllables of a word: the hyphen and air. */
    static final double HYPHEN_ROOM = 1.6;

    private LyricText() {}

    static SheetFonts.Outline outline(Lyric lyric) {
        return SheetFonts.text(lyric.text(), SheetFonts.Face.PLAIN, Engraving.LYRIC_SIZE);
    }

    /** The highest number of a verse; 0 without lyrics. */
    static int verses(Measure measure) {
        int verses = 0;
        for (MelodyEvent event : measure.melody())
            for (Lyric lyric : event.marks().lyrics()) verses = Math.max(verses, lyric.verse());
        return verses;
    }

    /** The syllable under the first sign of an event. */
    static Optional<Lyric> at(StaffEvent event, int verse) {
        if (!event.first() || event.source().isEmpty()) return Optional.empty();
        return event.source().get().marks().lyrics().stream()
                .filter(lyric -> lyric.verse() == verse && !lyric.text().isBlank())
                .findFirst();
    }
}
