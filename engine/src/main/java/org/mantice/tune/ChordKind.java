package org.mantice.tune;

import java.util.List;
import java.util.Optional;

/** The 33 chord kinds of MusicXML 4.0 (type kind-value) with the tones each names. */
public enum ChordKind {
    MAJOR("major", "", 0, 4, 7),
    MINOR("minor", "m", 0, 3, 7),
    AUGMENTED("augmented", "aug", 0, 4, 8),
    DIMINISHED("diminished", "dim", 0, 3, 6),
    DOMINANT("dominant", "7", 0, 4, 7, 10),
    MAJOR_SEVENTH("major-seventh", "maj7", 0, 4, 7, 11),
    MINOR_SEVENTH("minor-seventh", "m7", 0, 3, 7, 10),
    DIMINISHED_SEVENTH("diminished-seventh", "dim7", 0, 3, 6, 9),
    AUGMENTED_SEVENTH("augmented-seventh", "7#5", 0, 4, 8, 10),
    HALF_DIMINISHED("half-diminished", "m7b5", 0, 3, 6, 10),
    MAJOR_MINOR("major-minor", "m(maj7)", 0, 3, 7, 11),
    MAJOR_SIXTH("major-sixth", "6", 0, 4, 7, 9),
    MINOR_SIXTH("minor-sixth", "m6", 0, 3, 7, 9),
    DOMINANT_NINTH("dominant-ninth", "9", 0, 4, 7, 10, 14),
    MAJOR_NINTH("major-ninth", "maj9", 0, 4, 7, 11, 14),
    MINOR_NINTH("minor-ninth", "m9", 0, 3, 7, 10, 14),
    DOMINANT_11TH("dominant-11th", "11", 0, 4, 7, 10, 14, 17),
    MAJOR_11TH("major-11th", "maj11", 0, 4, 7, 11, 14, 17),
    MINOR_11TH("minor-11th", "m11", 0, 3, 7, 10, 14, 17),
    DOMINANT_13TH("dominant-13th", "13", 0, 4, 7, 10, 14, 17, 21),
    MAJOR_13TH("major-13th", "maj13", 0, 4, 7, 11, 14, 17, 21),
    MINOR_13TH("minor-13th", "m13", 0, 3, 7, 10, 14, 17, 21),
    SUSPENDED_SECOND("suspended-second", "sus2", 0, 2, 7),
    SUSPENDED_FOURTH("suspended-fourth", "sus4", 0, 5, 7),
    NEAPOLITAN("Neapolitan", "N6"),
    ITALIAN("Italian", "It+6"),
    FRENCH("French", "Fr+6"),
    GERMAN("German", "Ger+6"),
    PEDAL("pedal", "ped"),
    POWER("power", "5", 0, 7),
    TRISTAN("Tristan", "Tristan"),
    OTHER("other", "?"),
    NONE("none", "N.C.");

    private final String musicXml;
    private final String suffix;
    private final List<Integer> intervals;

    ChordKind(String musicXml, String suffix, Integer... intervals) {
        this.musicXml = musicXml;
        this.suffix = suffix;
        this.intervals = List.of(intervals);
    }

    /** The value as MusicXML spells it. */
    public String musicXml() {
        return musicXml;
    }

    /** What follows the root in a chord symbol. */
    public String suffix() {
        return suffix;
    }

    /** Semitones above the root, ascending; empty where the standard fixes no set. */
    public List<Integer> intervals() {
        return intervals;
    }

    public static Optional<ChordKind> ofMusicXml(String value) {
        for (ChordKind kind : values()) if (kind.musicXml.equals(value)) return Optional.of(kind);
        return Optional.empty();
    }
}
