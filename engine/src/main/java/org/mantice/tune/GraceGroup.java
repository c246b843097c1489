package org.mantice.tune;

import java.util.List;

/** Grace notes in the order they are played, each a list of one or more pitches struck together. */
public record GraceGroup(List<List<MelodyNote>> notes) {
    public static final GraceGroup NONE = new GraceGroup(List.of());

    public GraceGroup {
        notes = notes.stream().map(List::copyOf).toList();
    }
}
