package org.mantice.app.model;

import java.util.Optional;
import org.mantice.reading.ReadTune;

/**
 * The tune that is open.
 *
 * @param fileName as it was given; goes into plan files
 * @param part the part of the score asked for as the melody; empty for the stated rule's own choice
 */
public record OpenTune(String fileName, ReadTune read, Optional<String> part) {}
