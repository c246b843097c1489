package org.mantice.app.model;

import java.util.Optional;
import org.mantice.reading.ReadTune;

/**
 * The tune that is open.
 *
 * @param fileName as it was given; goes into plan files
 * @param part the part of the score asked for as the melody; empty for the stated rule's own choice
 */
public record OpenTune(String fileName, ReadTune read, Optional<String> part) {
    /** Its title, or the name of its file without the folder where nobody gave it one. */
    public String name() {
        String title = read.tune().title();
        if (!title.isBlank()) return title;
        return fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
    }
}
