package org.mantice.reading.abc;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.fault.TextPlace;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Step;

/** One thing written in a tune, at its place. */
public sealed interface AbcElement {
    TextPlace place();

    /**
     * An information field, on a line of its own or in brackets.
     *
     * @param letter before the colon
     * @param text stripped; escapes not yet read
     */
    record Field(TextPlace place, char letter, String text) implements AbcElement {}

    /** An instruction: a line with two percent signs, or an I: field. */
    record Directive(TextPlace place, String name, String text) implements AbcElement {}

    /**
     * A note, alone, in a chord or as a grace note.
     *
     * @param accidental semitones of a written accidental
     * @param microtone the accidental as written where it is no whole number of semitones
     * @param octave of the letter: 4 for C, 5 for c
     * @param length in units
     */
    record Note(
            TextPlace place,
            Step step,
            OptionalInt accidental,
            Optional<String> microtone,
            int octave,
            MusicalTime length)
            implements AbcElement {}

    /**
     * Notes struck together.
     *
     * @param members notes, and the decorations, ties, slurs and texts among them
     * @param length multiplies those of the notes
     */
    record Chord(TextPlace place, List<AbcElement> members, MusicalTime length) implements AbcElement {
        public Chord {
            members = List.copyOf(members);
        }
    }

    /** Grace notes: notes and chords. */
    record Grace(TextPlace place, List<AbcElement> members) implements AbcElement {
        public Grace {
            members = List.copyOf(members);
        }
    }

    /** A rest, seen or unseen, of a length in units. */
    record Rest(TextPlace place, MusicalTime length) implements AbcElement {}

    /** Rests of whole measures. */
    record MeasureRest(TextPlace place, int measures) implements AbcElement {}

    /** Space that a text may hang on. */
    record Spacer(TextPlace place) implements AbcElement {}

    /**
     * Signs that make one of two neighbours longer.
     *
     * @param dots how many; above 0 if the first note is the longer one, below 0 if the second
     */
    record Broken(TextPlace place, int dots) implements AbcElement {}

    /**
     * The start of a tuplet: {@code notes} in the time of {@code time}, for the next {@code count}.
     *
     * @param time empty where the meter decides
     * @param count empty for as many as {@code notes}
     */
    record Tuplet(TextPlace place, int notes, OptionalInt time, OptionalInt count) implements AbcElement {}

    /** A tie from the note before. */
    record Tie(TextPlace place) implements AbcElement {}

    /** The start of a slur at the next note, or the end at the last. */
    record Slur(TextPlace place, boolean start) implements AbcElement {}

    /** A decoration of the next note, by its name without marks. */
    record Decoration(TextPlace place, String name) implements AbcElement {}

    /** Text in quotation marks, escapes read, with the sign of placement that it may begin with. */
    record Quoted(TextPlace place, String text) implements AbcElement {}

    /** A bar line as written. */
    record Bar(TextPlace place, String text) implements AbcElement {}

    /** The numbers of a variant ending as written, or its text. */
    record Ending(TextPlace place, String text) implements AbcElement {}

    /** From here the measure is written once more, for another voice. */
    record Overlay(TextPlace place) implements AbcElement {}

    /** The end of a line of music that the next one does not continue. */
    record LineEnd(TextPlace place) implements AbcElement {}

    /** Something that is not as the standard has it, and how it was read. */
    record Flaw(TextPlace place, Kind kind, String text) implements AbcElement {
        /** What is wrong. */
        public enum Kind {
            /** Signs that mean nothing here; passed over. */
            UNKNOWN,
            /** Signs that the standard keeps for later; passed over, as it asks. */
            RESERVED,
            /** A bracket or quotation mark without its end; what could be read counts. */
            UNCLOSED,
            /** A spelling of older versions. */
            OLD_STYLE,
            /** A length that makes no sense, read as 1. */
            LENGTH,
            /** The number of an ending that does not touch its bar line. */
            LOOSE_ENDING,
            /** An empty line inside a tune. */
            EMPTY_LINE,
            /** A field of the head that is missing or not in its place. */
            HEAD,
            /** A field or a definition that cannot be read; passed over. */
            FIELD
        }
    }
}
