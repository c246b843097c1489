package org.mantice.reading;

import org.mantice.tune.BassChordType;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** A direction, sorted by what it means. */
sealed interface ScoreSign {
    MusicalTime onset();

    /** Something that the tune holds as a mark. */
    record Plain(Mark mark) implements ScoreSign {
        @Override
        public MusicalTime onset() {
            return mark.offset();
        }
    }

    /** Something about the order of play. */
    record Order(MusicalTime onset, What what) implements ScoreSign {
        enum What {
            SEGNO("segno"),
            /** A sign that may stand where the coda begins or where one leaves for it. */
            CODA_SIGN("coda"),
            CODA_START("coda"),
            TO_CODA("To Coda"),
            FINE("Fine"),
            DA_CAPO("D.C."),
            DAL_SEGNO("D.S.");

            private final String label;

            What(String label) {
                this.label = label;
            }

            String label() {
                return label;
            }
        }
    }

    /** A letter that names a chord button, on a lower staff. */
    record Letter(MusicalTime onset, BassChordType type) implements ScoreSign {}

    /** A bellows effect in words. */
    record Effect(MusicalTime onset, BellowsEffect effect) implements ScoreSign {}

    /** The end of a bellows effect in words. */
    record EffectEnd(MusicalTime onset) implements ScoreSign {}

    /** "N.C." in words. */
    record NoChord(MusicalTime onset) implements ScoreSign {}

    /** Something that the tune does not hold. */
    record Unused(MusicalTime onset, Finding finding) implements ScoreSign {}
}
