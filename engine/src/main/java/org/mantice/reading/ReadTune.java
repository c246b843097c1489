package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.Tune;

/**
 * A tune and what became of its file.
 *
 * @param skipped all that was left out, changed or assumed, in the order of {@link SkippedWhat}; layout (pages, fonts,
 *     stems, beams) is no music and is not listed
 * @param parts the parts of the file in its order
 * @param melody where the melody was taken from
 * @param fingerprint SHA-256 of the file's bytes, 64 hexadecimal digits
 * @param entry which tune of its file it is, as {@link TuneEntry#handle()}; empty where the file has no other
 */
public record ReadTune(
        Tune tune,
        List<Skipped> skipped,
        List<PartInfo> parts,
        MelodyChoice melody,
        String fingerprint,
        Optional<String> entry) {
    public ReadTune {
        skipped = List.copyOf(skipped);
        parts = List.copyOf(parts);
    }

    /** The only tune of its file. */
    public ReadTune(Tune tune, List<Skipped> skipped, List<PartInfo> parts, MelodyChoice melody, String fingerprint) {
        this(tune, skipped, parts, melody, fingerprint, Optional.empty());
    }
}
