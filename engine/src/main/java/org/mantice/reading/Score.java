package org.mantice.reading;

import java.util.List;
import java.util.Optional;

/**
 * What a file holds, sorted by part and measure and with exact times, before a melody is chosen.
 *
 * @param title may be empty
 * @param verbatim the file is our own and means what it says: nothing in it is guessed at or mended
 * @param melodyFirst the format writes the melody first, whatever part carries the chord symbols
 */
record Score(String title, Optional<String> dance, List<ScorePart> parts, boolean verbatim, boolean melodyFirst) {}
