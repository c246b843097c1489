package org.mantice.reading;

import java.util.List;

/** What a reader may leave out, change or assume; {@code {0}}, {@code {1}} stand for the arguments. */
public enum SkippedWhat {
    OTHER_PART_NOTES(Kind.LEFT_OUT, "notes of part {0}"),
    OTHER_VOICE_NOTES(Kind.LEFT_OUT, "notes of voice {0} on staff {1}"),
    CUE_NOTES(Kind.LEFT_OUT, "cue notes"),
    UNPITCHED_NOTES(Kind.LEFT_OUT, "notes without pitch"),
    UNREADABLE_PITCH(Kind.LEFT_OUT, "note with unreadable pitch {0}"),
    NOTE_WITHOUT_LENGTH(Kind.LEFT_OUT, "note without a length"),
    DOUBLED_NOTE(Kind.LEFT_OUT, "the same pitch twice in a chord"),
    LOST_GRACE(Kind.LEFT_OUT, "grace note that has no note to belong to"),
    NOTE_MARK(Kind.LEFT_OUT, "{0}"),
    FINGERING(Kind.LEFT_OUT, "fingering \"{0}\""),
    ONLY_IN_PASS(Kind.LEFT_OUT, "restriction of {0} to certain times through"),
    TIE(Kind.LEFT_OUT, "tie without its other end"),
    SLUR(Kind.LEFT_OUT, "slur without its other end"),
    HAIRPIN(Kind.LEFT_OUT, "hairpin without its other end"),
    DIRECTION(Kind.LEFT_OUT, "{0}"),
    DYNAMIC(Kind.LEFT_OUT, "dynamic mark {0}"),
    TEMPO(Kind.LEFT_OUT, "tempo mark \"{0}\""),
    REGISTRATION(Kind.LEFT_OUT, "accordion registration {0}"),
    KEY(Kind.LEFT_OUT, "key signature {0}"),
    METER(Kind.LEFT_OUT, "time signature {0}"),
    CHORD_SYMBOL(Kind.LEFT_OUT, "chord symbol {0}"),
    CHORD_BESIDE(Kind.LEFT_OUT, "chord symbol {0} beside another at its place"),
    CHORD_AFTER_END(Kind.LEFT_OUT, "chord symbol {0} after the end"),
    CHORD_DEGREE(Kind.LEFT_OUT, "degree {0} of a chord symbol"),
    REPEAT(Kind.LEFT_OUT, "repeat {0}"),
    ENDING(Kind.LEFT_OUT, "ending {0}"),
    JUMP(Kind.LEFT_OUT, "{0}"),
    SYLLABLE(Kind.LEFT_OUT, "syllables without a note"),
    WORDS_BELOW(Kind.LEFT_OUT, "words printed below the tune"),
    INSTRUCTION(Kind.LEFT_OUT, "instruction \"{0}\""),
    RESERVED_SIGN(Kind.LEFT_OUT, "{0}, a sign that is kept for later versions"),
    PART_OF_ORDER(Kind.LEFT_OUT, "part {0} in the order of parts, which is written nowhere"),
    DRUM_NOTES(Kind.LEFT_OUT, "drum notes of part {0}"),
    NOTES_UNDER_MELODY(Kind.LEFT_OUT, "notes under the melody in its own part"),
    TRACK_DAMAGED(Kind.LEFT_OUT, "track {0} from byte {1} on, which cannot be read"),

    ARCHIVE(Kind.CHANGED, "archive: {0}"),
    ENCODING(Kind.CHANGED, "encoding: the text is not the {0} it claims to be, read as {1}"),
    PITCH_ROUNDED(Kind.CHANGED, "microtone {0} rounded to a semitone"),
    LENGTH(Kind.CHANGED, "note length {0} read as {1}"),
    LENGTH_CUT(Kind.CHANGED, "overlap in one voice; the earlier note is cut"),
    SAME_PLACE(Kind.CHANGED, "two notes of one voice at one place read as a chord"),
    SLUR_AS_TIE(Kind.CHANGED, "slur between two equal neighbours read as a tie"),
    CHORD_LENGTH(Kind.CHANGED, "notes of a chord with different lengths; the first one's is taken"),
    OVERFULL(Kind.CHANGED, "measure longer than its meter, kept as written"),
    UNDERFULL(Kind.CHANGED, "measure shorter than its meter, kept as written"),
    MEASURE_REPEATED(Kind.CHANGED, "measure repeat sign written out"),
    MEASURE_SPLIT(Kind.CHANGED, "measure split at a repeat in its middle"),
    CHANGE_IN_MEASURE(Kind.CHANGED, "{0} in mid-measure takes effect at the next measure"),
    SIGN_MOVED(Kind.CHANGED, "{0} in mid-measure moved to the barline"),
    FINGERS_SHARED_OUT(Kind.CHANGED, "fingers written at one note shared out over its chord"),
    CHORD_KIND(Kind.CHANGED, "chord kind \"{0}\" with text \"{1}\" read as {2}"),
    CHORD_BASS(Kind.CHANGED, "chord bass {0} read as {1}"),
    CHORD_IN_WORDS(Kind.CHANGED, "words \"{0}\" read as a chord symbol"),
    CHORDS_SPREAD(Kind.CHANGED, "chord symbols at one place spread over the note"),
    HAIRPIN_CLOSED(Kind.CHANGED, "hairpin without an end, closed at the next one or at the end"),
    REPEAT_CHANGED(Kind.CHANGED, "repeat {0}"),
    ENDING_CHANGED(Kind.CHANGED, "ending {0}"),
    TEMPO_READ(Kind.CHANGED, "tempo mark \"{0}\" read as {1}"),
    KEY_SHOWN(Kind.CHANGED, "key signature {0} shown as {1}; every note sounds as written"),
    PARTS_WRITTEN_OUT(Kind.CHANGED, "parts written out in the order {0}"),
    CHORD_LENGTH_OF_TOP(Kind.CHANGED, "notes of a chord with different lengths; the highest one's is taken"),
    NOTES_ON_GRID(Kind.CHANGED, "notes moved onto the grid, by up to {0} % of a quarter note"),

    NO_DIVISIONS(Kind.ASSUMED, "one division a quarter note"),
    NO_METER(Kind.ASSUMED, "meter {0}, from the length of most measures"),
    CHORDS_OF_PART(Kind.ASSUMED, "the chord symbols of part {0} belong to the melody"),
    SIGNS_OF_PART(Kind.ASSUMED, "{0} of part {1} belong to the melody"),
    TOP_STAFF_EMPTY(Kind.ASSUMED, "staff {0} holds the melody, because no staff above has notes"),
    FIRST_OF_BOOK(Kind.ASSUMED, "the first of {0} tunes in the file is meant"),
    BEAT_DIVIDED(Kind.ASSUMED, "beats of {0} are divided into {1}"),
    PACE_FOLLOWED(Kind.ASSUMED, "beats last {0} % to {1} % of what the file counts"),
    PICKUP_ASSUMED(Kind.ASSUMED, "the first measure is a pickup, because {0} of it is silent"),
    METER_OF_STANDARD(Kind.ASSUMED, "meter {0}, because the file names none"),
    KEY_FOUND_MAJOR(Kind.ASSUMED, "key of {0} major, from the notes"),
    KEY_FOUND_MINOR(Kind.ASSUMED, "key of {0} minor, from the notes"),
    CHORDS_RECOGNISED(Kind.ASSUMED, "chord symbols, recognised from the notes of {0}"),

    STRAY_SIGN(Kind.FORGIVEN, "{0} means nothing here"),
    UNCLOSED(Kind.FORGIVEN, "{0} without its end"),
    OLD_SPELLING(Kind.FORGIVEN, "{0}, a spelling of older versions"),
    BAD_LENGTH(Kind.FORGIVEN, "note length {0} read as 1"),
    LOOSE_ENDING(Kind.FORGIVEN, "number {0} of an ending apart from its bar line"),
    EMPTY_LINE(Kind.FORGIVEN, "empty line inside the tune"),
    HEAD_FIELD(Kind.FORGIVEN, "{0} missing in the head of the tune"),
    BAD_FIELD(Kind.FORGIVEN, "{0} cannot be read"),
    BROKEN_RHYTHM(Kind.FORGIVEN, "{0} without a note on both sides"),
    SHORT_TUPLET(Kind.FORGIVEN, "tuplet of {0} that the measure ends too early");

    /** What became of it. */
    public enum Kind {
        LEFT_OUT("left out"),
        CHANGED("changed"),
        ASSUMED("assumed"),
        FORGIVEN("forgiven");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    private final Kind kind;
    private final String template;

    SkippedWhat(Kind kind, String template) {
        this.kind = kind;
        this.template = template;
    }

    public Kind kind() {
        return kind;
    }

    /** The plain English of it. */
    public String sentence(List<String> args) {
        String text = template;
        for (int i = 0; i < args.size(); i++) text = text.replace("{" + i + "}", args.get(i));
        return text;
    }
}
