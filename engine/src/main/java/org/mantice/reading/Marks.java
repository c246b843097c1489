package org.mantice.reading;

import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** Moves marks. */
final class Marks {
    private Marks() {}

    /** The same mark at another place. */
    static Mark at(Mark mark, MusicalTime offset) {
        if (mark instanceof Mark.Dynamic it) return new Mark.Dynamic(offset, it.level());
        if (mark instanceof Mark.HairpinStart it) return new Mark.HairpinStart(offset, it.crescendo());
        if (mark instanceof Mark.HairpinEnd) return new Mark.HairpinEnd(offset);
        if (mark instanceof Mark.TempoChange it) return new Mark.TempoChange(offset, it.tempo());
        if (mark instanceof Mark.Rehearsal it) return new Mark.Rehearsal(offset, it.text());
        if (mark instanceof Mark.Words it) return new Mark.Words(offset, it.text());
        if (mark instanceof Mark.PhraseStart) return new Mark.PhraseStart(offset);
        if (mark instanceof Mark.Registration it)
            return new Mark.Registration(offset, it.high(), it.middle(), it.low());
        throw new IllegalArgumentException("mark is " + mark + "; allowed: a kind of mark that can be moved");
    }

    /** The mark, not after the end of its measure. */
    static Mark within(Mark mark, MusicalTime length) {
        return length.isBefore(mark.offset()) ? at(mark, length) : mark;
    }
}
