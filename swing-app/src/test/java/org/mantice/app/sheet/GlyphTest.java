package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.mantice.instrument.RegisterSign;
import org.mantice.reading.Corpus;

/** Signs against SMuFL's own table and Bravura's own metadata. */
class GlyphTest {
    /** Bravura 1.392, metadata, glyphBBoxes; the font's y points up. */
    @ParameterizedTest
    @CsvSource({
        "NOTEHEAD_BLACK, 0, -0.5, 1.18, 0.5",
        "NOTEHEAD_WHOLE, 0, -0.5, 1.688, 0.5",
        "G_CLEF, 0, -2.632, 2.684, 4.392",
        "ACCIDENTAL_SHARP, 0, -1.392, 0.996, 1.4",
        "REST_QUARTER, 0.004, -1.5, 1.08, 1.492",
        "FLAG_8TH_UP, 0, -3.24, 1.056, 0.035",
    })
    void outlinesAreInStaffSpacesAsBravuraMeasuresThem(
            Glyph glyph, double west, double south, double east, double north) {
        Rectangle2D bounds = SheetFonts.glyph(glyph).bounds();

        Offset<Double> exactness = Offset.offset(0.01);
        assertThat(bounds.getMinX()).isCloseTo(west, exactness);
        assertThat(bounds.getMaxX()).isCloseTo(east, exactness);
        assertThat(-bounds.getMaxY()).isCloseTo(south, exactness);
        assertThat(-bounds.getMinY()).isCloseTo(north, exactness);
    }

    @ParameterizedTest
    @EnumSource(Glyph.class)
    void fontHasEverySign(Glyph glyph) {
        assertThat(SheetFonts.glyph(glyph).bounds().isEmpty()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(RegisterSign.class)
    void fontHasEveryRegister(RegisterSign sign) {
        assertThat(SheetFonts.register(sign).bounds().getWidth()).isCloseTo(3.128, Offset.offset(0.05));
    }

    @Test
    void codePointsAreThoseOfTheStandardsTable() throws IOException {
        Path table = Corpus.folder("smufl-metadata").resolve("glyphnames.json");
        JsonNode names = new ObjectMapper().readTree(table.toFile());

        for (Glyph glyph : Glyph.values())
            assertThat(names.path(glyph.smuflName()).path("codepoint").asText())
                    .as(glyph.smuflName())
                    .isEqualTo(String.format("U+%04X", glyph.codePoint()));
    }

    /** Engraving's order of signs: each "below" follows its "above", flags alternate, figures ascend. */
    @Test
    void signsAreFoundByTheirPlaceInTheList() {
        for (Glyph glyph : Glyph.values())
            if (glyph.name().startsWith("ARTIC_") && glyph.name().endsWith("_ABOVE"))
                assertThat(Glyph.values()[glyph.ordinal() + 1].name())
                        .isEqualTo(glyph.name().replace("_ABOVE", "_BELOW"));
        assertThat(NoteGlyphs.flag(3, false)).isEqualTo(Glyph.FLAG_32ND_DOWN);
        assertThat(NoteGlyphs.rest(new NoteValue(NoteValue.BREVE, 0))).isEqualTo(Glyph.REST_DOUBLE_WHOLE);
        assertThat(NoteGlyphs.rest(new NoteValue(NoteValue.SHORTEST, 0))).isEqualTo(Glyph.REST_128TH);
        assertThat(NoteGlyphs.metronome(new NoteValue(NoteValue.QUARTER, 1))).isEqualTo(Glyph.MET_NOTE_QUARTER_UP);
        assertThat(NoteGlyphs.metronome(new NoteValue(NoteValue.BREVE, 0))).isEqualTo(Glyph.MET_NOTE_DOUBLE_WHOLE);
        assertThat(Glyph.meterFigure(9)).isEqualTo(Glyph.TIME_SIG_9);
        assertThat(Glyph.tupletFigure(3)).isEqualTo(Glyph.TUPLET_3);
    }
}
