package org.mantice.tune;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is written at a melody event.
 *
 * @param slurStarts slurs that begin here, 0 or more
 * @param slurStops slurs that end here, 0 or more
 * @param breathAfter a breath mark or caesura follows the event
 */
public record EventMarks(
        int slurStarts,
        int slurStops,
        Set<Articulation> articulations,
        boolean breathAfter,
        boolean fermata,
        List<Lyric> lyrics,
        Optional<BellowsEffect> bellowsEffect) {
    public static final EventMarks NONE = new EventMarks(0, 0, Set.of(), false, false, List.of(), Optional.empty());

    public EventMarks {
        articulations = ordered(articulations);
        lyrics = List.copyOf(lyrics);
    }

    private static Set<Articulation> ordered(Collection<Articulation> marks) {
        EnumSet<Articulation> copy = EnumSet.noneOf(Articulation.class);
        copy.addAll(marks);
        return Collections.unmodifiableSet(copy);
    }
}
