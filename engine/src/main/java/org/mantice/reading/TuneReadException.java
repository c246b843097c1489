package org.mantice.reading;

import java.util.Arrays;
import java.util.List;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;

/** A file cannot be read as a tune; the message says where, why and what is allowed. */
public final class TuneReadException extends ManticeException {
    /** Why; {@code {0}}, {@code {1}} stand for the arguments. */
    public enum Reason {
        NOT_FOUND("no such file"),
        UNREADABLE("cannot be read: {0}"),
        EMPTY("the file is empty; allowed: MusicXML (.musicxml, .xml, .mxl), ABC (.abc) or MIDI (.mid)"),
        TOO_LARGE("the file has {0} bytes; allowed: at most {1}"),
        BINARY(
                "the file is neither text nor an archive of MusicXML; allowed: MusicXML (.musicxml, .xml, .mxl), ABC (.abc) or MIDI (.mid)"),
        OTHER_FORMAT("the file looks like {0}; allowed: MusicXML (.musicxml, .xml, .mxl), ABC (.abc) or MIDI (.mid)"),
        BAD_ENCODING("the text is not valid {0}; allowed: UTF-8, UTF-16 or the encoding that its first line declares"),
        TRUNCATED("the file ends in the middle of the score; allowed: a complete MusicXML file"),
        NOT_WELL_FORMED("the XML is damaged ({0}); allowed: well-formed XML"),
        ENTITY("the text uses an entity of its own; allowed: &amp; &lt; &gt; &quot; &apos; and numbers"),
        TOO_DEEP("elements are nested more than {0} deep; allowed: at most {0}"),
        BLOCK_TOO_LARGE("one block holds more than {0} elements; allowed: at most {0}"),
        NOT_MUSICXML("the outermost element is <{0}>; allowed: <score-partwise> or <score-timewise>"),
        ARCHIVE_DAMAGED("the archive is damaged ({0}); allowed: a complete .mxl archive without a password"),
        ARCHIVE_TOO_LARGE("the archive unpacks to more than {0} bytes; allowed: at most {0}"),
        ARCHIVE_TOO_MANY_ENTRIES("the archive has more than {0} entries; allowed: at most {0}"),
        ARCHIVE_WITHOUT_MUSIC(
                "the archive holds no MusicXML file; it holds: {0}; allowed: an archive with a score in it"),
        NO_MEASURES("the score has no measures; allowed: one or more"),
        NO_NOTES("the score has no pitched note; allowed: one or more"),
        NO_SUCH_PART("there is no part \"{0}\"; allowed: {1}"),
        NO_NOTES_IN_PART("part {0} has no pitched note; parts that have: {1}"),
        NOTES_WITHOUT_LENGTH("no pitched note of the melody has a length; allowed: one or more"),
        TOO_MANY_PARTS("the score has more than {0} parts; allowed: at most {0}"),
        TOO_MANY_MEASURES("the score has more than {0} measures; allowed: at most {0}"),
        TOO_MANY_NOTES("the score has more than {0} notes; allowed: at most {0}"),
        TOO_MANY_REPEATS("a passage is to be played {0} times; allowed: at most {1}"),
        NO_TUNES("the file has no tune; allowed: tunes that begin with X: and hold a key"),
        NO_SUCH_TUNE("there is no tune \"{0}\"; allowed: {1}"),
        NOT_STRICT("{0}; allowed in strict reading: ABC 2.1 as it is written down"),
        MIDI_TRUNCATED("the MIDI file ends before its first track; allowed: a complete file"),
        MIDI_FORMAT("the MIDI file has format {0}; allowed: 0 and 1"),
        MIDI_FRAMES("the MIDI file does not count time in parts of a quarter note; allowed: 1 to 32767 parts"),
        MIDI_TOO_MANY_EVENTS("the MIDI file has more than {0} notes and signs; allowed: at most {0}"),
        TIME_TOO_FINE("note lengths here cannot be counted exactly; allowed: divisions up to a million a quarter note");

        private final String template;

        Reason(String template) {
            this.template = template;
        }
    }

    private final Reason reason;

    private TuneReadException(Reason reason, FilePlace place, List<String> args) {
        super(reason.name(), args, place, sentence(reason.template, args));
        this.reason = reason;
    }

    static TuneReadException of(Reason reason, FilePlace place, Object... args) {
        return new TuneReadException(reason, place, texts(args));
    }

    static TuneReadException causedBy(Throwable cause, Reason reason, FilePlace place, Object... args) {
        TuneReadException made = of(reason, place, args);
        made.initCause(cause);
        return made;
    }

    public Reason reason() {
        return reason;
    }

    private static List<String> texts(Object... args) {
        return Arrays.stream(args)
                .map(arg -> Finding.of(SkippedWhat.NOTE_MARK, String.valueOf(arg))
                        .args()
                        .get(0))
                .toList();
    }
}
