package org.mantice.performance;

import java.util.Set;
import org.mantice.tune.Articulation;
import org.mantice.tune.MusicalTime;

/**
 * How much of its value a note sounds. Common practice, no source: plain, slurred and tenuto notes all of it (the
 * accordion's ordinary touch is legato), staccato and spiccato half, staccatissimo a quarter, detached legato and
 * staccato under a slur or with tenuto three quarters, a strong accent three quarters. A breath takes a sixteenth from
 * the note before it, at most a quarter of the note (estimate).
 */
final class Touch {
    private static final MusicalTime HALF = MusicalTime.of(1, 2);
    private static final MusicalTime QUARTER = MusicalTime.of(1, 4);
    private static final MusicalTime THREE_QUARTERS = MusicalTime.of(3, 4);
    private static final MusicalTime BREATH = MusicalTime.of(1, 16);

    private Touch() {}

    static MusicalTime sounding(MusicalTime duration, Set<Articulation> marks, boolean slurred, boolean breath) {
        MusicalTime sounding = duration.times(share(marks, slurred));
        if (!breath) return sounding;
        return sounding.min(duration.minus(BREATH.min(duration.dividedBy(4))));
    }

    private static MusicalTime share(Set<Articulation> marks, boolean slurred) {
        boolean shortened = marks.contains(Articulation.STACCATO) || marks.contains(Articulation.SPICCATO);
        if (marks.contains(Articulation.STACCATISSIMO)) return QUARTER;
        if (marks.contains(Articulation.DETACHED_LEGATO)) return THREE_QUARTERS;
        if (shortened) return slurred || marks.contains(Articulation.TENUTO) ? THREE_QUARTERS : HALF;
        return marks.contains(Articulation.STRONG_ACCENT) && !slurred ? THREE_QUARTERS : MusicalTime.WHOLE;
    }
}
