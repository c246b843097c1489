package org.mantice.app.sheet;

/** The sign for each note value. */
final class NoteGlyphs {
    private NoteGlyphs() {}

    static Glyph head(NoteValue value) {
        return switch (value.halvings()) {
            case NoteValue.BREVE -> Glyph.NOTEHEAD_DOUBLE_WHOLE;
            case NoteValue.WHOLE -> Glyph.NOTEHEAD_WHOLE;
            case NoteValue.HALF -> Glyph.NOTEHEAD_HALF;
            default -> Glyph.NOTEHEAD_BLACK;
        };
    }

    static Glyph rest(NoteValue value) {
        return Glyph.values()[Glyph.REST_WHOLE.ordinal() + value.halvings()];
    }

    /** @param flags 1 to 5 */
    static Glyph flag(int flags, boolean up) {
        return Glyph.values()[Glyph.FLAG_8TH_UP.ordinal() + 2 * (flags - 1) + (up ? 0 : 1)];
    }

    /** As in a metronome mark; 128ths have none there and show the next longer one. */
    static Glyph metronome(NoteValue value) {
        int halvings = Math.min(value.halvings(), 6);
        return Glyph.values()[Glyph.MET_NOTE_WHOLE.ordinal() + halvings];
    }
}
