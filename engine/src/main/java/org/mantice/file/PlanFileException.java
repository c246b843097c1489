package org.mantice.file;

import java.util.List;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;

/** A plan file that cannot be read. */
public final class PlanFileException extends ManticeException {
    PlanFileException(String code, FilePlace place, String sentence, Throwable cause) {
        super(code, List.of(sentence), place, sentence, cause);
    }
}
