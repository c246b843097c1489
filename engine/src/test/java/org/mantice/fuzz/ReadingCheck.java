package org.mantice.fuzz;

import java.util.Optional;
import org.mantice.fault.ManticeException;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.TuneException;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;
import org.mantice.writing.KeptInWriting;
import org.mantice.writing.MusicXmlWriter;
import org.mantice.writing.TuneWriteException;

/**
 * What holds for any bytes whatever: they are refused by our own error with its place, or they are a tune that can be
 * performed and comes back from MusicXML as it was. Two limits may speak up later than the reader, each in its own
 * words: a tune that grows too long when it is played out, and a pitch or a length that MusicXML has no way to write.
 */
final class ReadingCheck {
    private static final TuneReader READER = new TuneReader();

    private final String name;

    /** @param name how messages call the file */
    ReadingCheck(String name) {
        this.name = name;
    }

    /**
     * Reads forgiving and strict.
     *
     * @return the tune of the forgiving reading, empty where that refused it
     * @throws AssertionError if what is said above does not hold
     */
    Optional<Tune> check(byte[] bytes) {
        Optional<Tune> forgiven = read(bytes, ReadOptions.DEFAULT);
        Optional<Tune> strict = read(bytes, ReadOptions.DEFAULT.strictly());
        if (strict.isPresent() && !strict.equals(forgiven))
            throw new AssertionError("strict reading accepts it, but as another tune than forgiving reading");
        forgiven.ifPresent(this::use);
        return forgiven;
    }

    private Optional<Tune> read(byte[] bytes, ReadOptions options) {
        try {
            Tune tune = READER.read(name, bytes, options).tune();
            if (!tune.hasNotes()) throw new AssertionError("a tune without notes was read");
            return Optional.of(tune);
        } catch (TuneReadException e) {
            checkMessage(e, name);
            return Optional.empty();
        }
    }

    private void use(Tune tune) {
        try {
            perform(tune);
        } catch (TuneException e) {
            checkMessage(e, "");
            if (!e.code().equals("TUNE_TOO_LONG") && !e.code().equals("TUNE_UNEVEN")) throw new AssertionError(e);
        }
        try {
            checkWritten(tune, MusicXmlWriter.write(tune));
        } catch (TuneWriteException e) {
            checkMessage(e, "");
        }
    }

    private static void perform(Tune tune) {
        Performance played = Performer.perform(tune);
        if (played.treble().isEmpty() || played.endMicros() <= 0)
            throw new AssertionError("a tune with notes was performed without any");
    }

    private static void checkWritten(Tune tune, byte[] written) {
        Tune again;
        try {
            again = READER.read("written.musicxml", written, ReadOptions.DEFAULT)
                    .tune();
        } catch (TuneReadException e) {
            throw new AssertionError("what was written cannot be read", e);
        }
        Tune kept = KeptInWriting.of(tune);
        if (again.equals(kept)) return;
        for (int i = 0; i < kept.measures().size(); i++)
            if (i >= again.measures().size() || !again.measure(i).equals(kept.measure(i)))
                throw new AssertionError("measure " + (i + 1) + " comes back from MusicXML as "
                        + (i < again.measures().size() ? again.measure(i) : "nothing") + "\n it was "
                        + kept.measure(i));
        throw new AssertionError("comes back from MusicXML with another head or more measures");
    }

    private static void checkMessage(ManticeException e, String place) {
        String message = String.valueOf(e.getMessage());
        boolean oneLine = message.chars().noneMatch(c -> c == '\n' || c == '\r');
        if (!oneLine || !message.startsWith(place) || !message.startsWith(e.place() + ": "))
            throw new AssertionError("a message without its place, or of more than one line", e);
        if (!message.contains("allowed") && !e.code().startsWith("TUNE_"))
            throw new AssertionError("a message that does not say what is allowed", e);
    }
}
