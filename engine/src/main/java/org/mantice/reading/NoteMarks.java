package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.tune.Articulation;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.Lyric;
import org.mantice.tune.Mark;

/**
 * What is written at one note.
 *
 * @param slurStarts numbers of the slurs that begin
 * @param slurStops numbers of the slurs that end
 * @param dynamics loudness marks at the note itself
 * @param underlined a text under the note is underlined
 * @param sameEvent the note only lengthens the event before, in a file of our own
 */
record NoteMarks(
        List<String> slurStarts,
        List<String> slurStops,
        Set<Articulation> articulations,
        boolean breathAfter,
        boolean fermata,
        List<Lyric> lyrics,
        Optional<BellowsEffect> effect,
        List<Mark> dynamics,
        boolean underlined,
        boolean sameEvent) {
    static final NoteMarks NONE = new NoteMarks(
            List.of(), List.of(), Set.of(), false, false, List.of(), Optional.empty(), List.of(), false, false);
}
