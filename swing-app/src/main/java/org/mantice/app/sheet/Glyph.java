package org.mantice.app.sheet;

/**
 * Signs of the staff by their names in SMuFL 1.4 (W3C Music Notation Community Group, tables of recommended
 * characters).
 */
enum Glyph {
    G_CLEF("gClef", 0xE050),
    ACCIDENTAL_FLAT("accidentalFlat", 0xE260),
    ACCIDENTAL_NATURAL("accidentalNatural", 0xE261),
    ACCIDENTAL_SHARP("accidentalSharp", 0xE262),
    ACCIDENTAL_DOUBLE_SHARP("accidentalDoubleSharp", 0xE263),
    ACCIDENTAL_DOUBLE_FLAT("accidentalDoubleFlat", 0xE264),
    TIME_SIG_0("timeSig0", 0xE080),
    TIME_SIG_1("timeSig1", 0xE081),
    TIME_SIG_2("timeSig2", 0xE082),
    TIME_SIG_3("timeSig3", 0xE083),
    TIME_SIG_4("timeSig4", 0xE084),
    TIME_SIG_5("timeSig5", 0xE085),
    TIME_SIG_6("timeSig6", 0xE086),
    TIME_SIG_7("timeSig7", 0xE087),
    TIME_SIG_8("timeSig8", 0xE088),
    TIME_SIG_9("timeSig9", 0xE089),
    TIME_SIG_PLUS("timeSigPlus", 0xE08C),
    NOTEHEAD_DOUBLE_WHOLE("noteheadDoubleWhole", 0xE0A0),
    NOTEHEAD_WHOLE("noteheadWhole", 0xE0A2),
    NOTEHEAD_HALF("noteheadHalf", 0xE0A3),
    NOTEHEAD_BLACK("noteheadBlack", 0xE0A4),
    AUGMENTATION_DOT("augmentationDot", 0xE1E7),
    FLAG_8TH_UP("flag8thUp", 0xE240),
    FLAG_8TH_DOWN("flag8thDown", 0xE241),
    FLAG_16TH_UP("flag16thUp", 0xE242),
    FLAG_16TH_DOWN("flag16thDown", 0xE243),
    FLAG_32ND_UP("flag32ndUp", 0xE244),
    FLAG_32ND_DOWN("flag32ndDown", 0xE245),
    FLAG_64TH_UP("flag64thUp", 0xE246),
    FLAG_64TH_DOWN("flag64thDown", 0xE247),
    FLAG_128TH_UP("flag128thUp", 0xE248),
    FLAG_128TH_DOWN("flag128thDown", 0xE249),
    REST_DOUBLE_WHOLE("restDoubleWhole", 0xE4E2),
    REST_WHOLE("restWhole", 0xE4E3),
    REST_HALF("restHalf", 0xE4E4),
    REST_QUARTER("restQuarter", 0xE4E5),
    REST_8TH("rest8th", 0xE4E6),
    REST_16TH("rest16th", 0xE4E7),
    REST_32ND("rest32nd", 0xE4E8),
    REST_64TH("rest64th", 0xE4E9),
    REST_128TH("rest128th", 0xE4EA),
    REPEAT_DOT("repeatDot", 0xE044),
    SEGNO("segno", 0xE047),
    CODA("coda", 0xE048),
    FERMATA_ABOVE("fermataAbove", 0xE4C0),
    BREATH_MARK_COMMA("breathMarkComma", 0xE4CE),
    DYNAMIC_PIANO("dynamicPiano", 0xE520),
    DYNAMIC_FORTE("dynamicForte", 0xE522),
    DYNAMIC_PPP("dynamicPPP", 0xE52A),
    DYNAMIC_PP("dynamicPP", 0xE52B),
    DYNAMIC_MP("dynamicMP", 0xE52C),
    DYNAMIC_MF("dynamicMF", 0xE52D),
    DYNAMIC_FF("dynamicFF", 0xE52F),
    DYNAMIC_FFF("dynamicFFF", 0xE530),
    TUPLET_0("tuplet0", 0xE880),
    TUPLET_1("tuplet1", 0xE881),
    TUPLET_2("tuplet2", 0xE882),
    TUPLET_3("tuplet3", 0xE883),
    TUPLET_4("tuplet4", 0xE884),
    TUPLET_5("tuplet5", 0xE885),
    TUPLET_6("tuplet6", 0xE886),
    TUPLET_7("tuplet7", 0xE887),
    TUPLET_8("tuplet8", 0xE888),
    TUPLET_9("tuplet9", 0xE889),
    MET_NOTE_DOUBLE_WHOLE("metNoteDoubleWhole", 0xECA0),
    MET_NOTE_WHOLE("metNoteWhole", 0xECA2),
    MET_NOTE_HALF_UP("metNoteHalfUp", 0xECA3),
    MET_NOTE_QUARTER_UP("metNoteQuarterUp", 0xECA5),
    MET_NOTE_8TH_UP("metNote8thUp", 0xECA7),
    MET_NOTE_16TH_UP("metNote16thUp", 0xECA9),
    MET_NOTE_32ND_UP("metNote32ndUp", 0xECAB),
    MET_NOTE_64TH_UP("metNote64thUp", 0xECAD),
    MET_AUGMENTATION_DOT("metAugmentationDot", 0xECB7),
    ARTIC_ACCENT_ABOVE("articAccentAbove", 0xE4A0),
    ARTIC_ACCENT_BELOW("articAccentBelow", 0xE4A1),
    ARTIC_STACCATO_ABOVE("articStaccatoAbove", 0xE4A2),
    ARTIC_STACCATO_BELOW("articStaccatoBelow", 0xE4A3),
    ARTIC_TENUTO_ABOVE("articTenutoAbove", 0xE4A4),
    ARTIC_TENUTO_BELOW("articTenutoBelow", 0xE4A5),
    ARTIC_STACCATISSIMO_ABOVE("articStaccatissimoAbove", 0xE4A6),
    ARTIC_STACCATISSIMO_BELOW("articStaccatissimoBelow", 0xE4A7),
    ARTIC_STACCATISSIMO_WEDGE_ABOVE("articStaccatissimoWedgeAbove", 0xE4A8),
    ARTIC_STACCATISSIMO_WEDGE_BELOW("articStaccatissimoWedgeBelow", 0xE4A9),
    ARTIC_MARCATO_ABOVE("articMarcatoAbove", 0xE4AC),
    ARTIC_MARCATO_BELOW("articMarcatoBelow", 0xE4AD),
    ARTIC_TENUTO_STACCATO_ABOVE("articTenutoStaccatoAbove", 0xE4B2),
    ARTIC_TENUTO_STACCATO_BELOW("articTenutoStaccatoBelow", 0xE4B3),
    ARTIC_SOFT_ACCENT_ABOVE("articSoftAccentAbove", 0xED40),
    ARTIC_SOFT_ACCENT_BELOW("articSoftAccentBelow", 0xED41),
    ARTIC_STRESS_ABOVE("articStressAbove", 0xE4B6),
    ARTIC_STRESS_BELOW("articStressBelow", 0xE4B7),
    ARTIC_UNSTRESS_ABOVE("articUnstressAbove", 0xE4B8),
    ARTIC_UNSTRESS_BELOW("articUnstressBelow", 0xE4B9);

    private final String smuflName;
    private final int codePoint;

    Glyph(String smuflName, int codePoint) {
        this.smuflName = smuflName;
        this.codePoint = codePoint;
    }

    /** As in the standard's file of glyph names. */
    String smuflName() {
        return smuflName;
    }

    int codePoint() {
        return codePoint;
    }

    /** A figure of a time signature, 0 to 9. */
    static Glyph meterFigure(int figure) {
        return values()[TIME_SIG_0.ordinal() + figure];
    }

    /** A figure over a tuplet, 0 to 9. */
    static Glyph tupletFigure(int figure) {
        return values()[TUPLET_0.ordinal() + figure];
    }
}
