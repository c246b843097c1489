package org.mantice.performance;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassMarks;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.WrittenPlace;

/** An event of a written bass staff as played; {@code pitches} is never empty. */
public record BassMoment(
        int index,
        int measure,
        WrittenPlace place,
        MusicalTime onset,
        MusicalTime duration,
        long onsetMicros,
        long releaseMicros,
        List<Pitch> pitches,
        Optional<BassChordType> chord,
        BassMarks marks) {
    public BassMoment {
        pitches = List.copyOf(pitches);
    }
}
