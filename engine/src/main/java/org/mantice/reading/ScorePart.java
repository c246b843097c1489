package org.mantice.reading;

import java.util.List;

/** A part with all its staves and voices. */
record ScorePart(String id, String name, List<ScoreMeasure> measures) {
    PartInfo info() {
        int notes = measures.stream()
                .mapToInt(measure -> (int) measure.notes().stream()
                        .filter(note -> note.isMelodic() && !note.isGrace())
                        .count())
                .sum();
        int chords =
                measures.stream().mapToInt(measure -> measure.chords().size()).sum();
        return new PartInfo(id, name, notes, chords);
    }
}
