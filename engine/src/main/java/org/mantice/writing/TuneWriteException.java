package org.mantice.writing;

import java.util.List;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;

/**
 * A tune holds what MusicXML cannot say. Codes: {@code PITCH_OUT_OF_RANGE} (the pitch), {@code TIME_TOO_FINE} (the limit
 * of divisions a quarter note). The place names the tune by its title, and the measure.
 */
public final class TuneWriteException extends ManticeException {
    private TuneWriteException(String code, List<String> args, FilePlace place, String sentence) {
        super(code, args, place, sentence);
    }

    static TuneWriteException pitch(FilePlace place, String pitch) {
        return new TuneWriteException(
                "PITCH_OUT_OF_RANGE",
                List.of(pitch),
                place,
                "MusicXML has no octave for " + pitch + "; allowed: octaves 0 to 9");
    }

    static TuneWriteException tooFine(FilePlace place) {
        return new TuneWriteException(
                "TIME_TOO_FINE",
                List.of(String.valueOf(Divisions.MOST)),
                place,
                "it mixes note lengths that have no common division; allowed: " + Divisions.MOST
                        + " divisions a quarter note");
    }

    static FilePlace place(Tune tune, Measure measure) {
        return FilePlace.of(tune.title().isBlank() ? "the tune" : tune.title()).atMeasure(measure.number());
    }
}
