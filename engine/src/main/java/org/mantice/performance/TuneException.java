package org.mantice.performance;

import java.util.List;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;
import org.mantice.tune.Tune;

/**
 * A tune cannot be played as written. Codes: {@code TUNE_TOO_LONG} (the limit in measures), {@code
 * TUNE_WITHOUT_NOTES}, {@code TUNE_UNEVEN} (lengths without an exact sum). The place names the tune by its title.
 */
public final class TuneException extends ManticeException {
    TuneException(String code, List<String> args, Tune tune, String sentence) {
        super(code, args, FilePlace.of(tune.title().isBlank() ? "the tune" : tune.title()), sentence);
    }
}
