package org.mantice.reading;

import java.util.List;
import org.mantice.tune.Tune;

/**
 * A tune and what became of its file.
 *
 * @param skipped all that was left out, changed or assumed, in the order of {@link SkippedWhat}; layout (pages, fonts,
 *     stems, beams) is no music and is not listed
 * @param parts the parts of the file in its order
 * @param melody where the melody was taken from
 * @param fingerprint SHA-256 of the file's bytes, 64 hexadecimal digits
 */
public record ReadTune(
        Tune tune, List<Skipped> skipped, List<PartInfo> parts, MelodyChoice melody, String fingerprint) {
    public ReadTune {
        skipped = List.copyOf(skipped);
        parts = List.copyOf(parts);
    }
}
