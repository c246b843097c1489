package org.mantice.performance;

import java.util.List;
import org.mantice.FilePlace;
import org.mantice.ManticeException;

/**
 * A tune cannot be played as written. Codes: {@code TUNE_TOO_LONG} (the limit in measures), {@code
 * TUNE_WITHOUT_NOTES}. The place names the tune by its title.
 */
public final class TuneException extends ManticeException {
    TuneException(String code, List<String> args, FilePlace place, String sentence) {
        super(code, args, place, sentence, null);
    }
}
