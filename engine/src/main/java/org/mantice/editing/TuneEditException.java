package org.mantice.editing;

import java.util.List;
import java.util.stream.Stream;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;
import org.mantice.tune.Tune;

/**
 * An edit does not fit the tune. The place names the tune by its title; the first argument is the number of the edit
 * from 1 among those that were to be made, the second mostly where it is, in words.
 */
public final class TuneEditException extends ManticeException {
    /** Why; {@code {0}}, {@code {1}} and so on stand for the arguments. */
    public enum Reason {
        NO_SUCH_MEASURE("edit {0} is in written measure {1}; allowed: 1 to {2}"),
        BEYOND_MEASURE("edit {0} is {2} whole notes into {1}; allowed: less than {3}"),
        NO_CHORD("edit {0}: there is no chord at {1}; allowed: a place with a chord"),
        CHORD_THERE("edit {0}: the chord {2} stands at {1} already; allowed: a place without a chord"),
        NOT_PROPOSED("edit {0}: the chord {2} at {1} is not proposed; allowed: a proposed chord"),
        NO_PROPOSALS("edit {0}: no chord is proposed; allowed: a tune with proposed chords"),
        NOTHING_TO_PROPOSE(
                "edit {0}: no chord can be proposed; allowed: a tune with notes and a measure without a written chord"),
        NO_NOTE("edit {0}: no note begins at {1}; allowed: a place where one does, since a phrase begins with a note"),
        NO_PHRASE("edit {0}: no phrase mark stands at {1}; allowed: a place with one"),
        NO_TEMPO("edit {0}: no metronome mark stands at {1}; allowed: a place with one"),
        TOO_LONG("edit {0}: with these barlines at {1} the tune has more than {2} measures; allowed: up to that many");

        private final String template;

        Reason(String template) {
            this.template = template;
        }
    }

    private final Reason reason;

    private TuneEditException(Reason reason, List<String> args, Tune tune) {
        super(
                reason.name(),
                args,
                FilePlace.of(tune.title().isBlank() ? "the tune" : tune.title()),
                sentence(reason.template, args));
        this.reason = reason;
    }

    static TuneEditException of(Reason reason, Tune tune, Object... args) {
        return new TuneEditException(
                reason, Stream.of(args).map(String::valueOf).toList(), tune);
    }

    public Reason reason() {
        return reason;
    }
}
