package org.mantice.reading;

import org.mantice.tune.BassChordType;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** A direction, sorted by what it means. */
sealed interface ScoreSign {
    MusicalTime onset();

    /** The same at another place. */
    ScoreSign at(MusicalTime other);

    /** Something that the tune holds as a mark. */
    record Plain(Mark mark) implements ScoreSign {
        @Override
        public MusicalTime onset() {
            return mark.offset();
        }

        @Override
        public ScoreSign at(MusicalTime other) {
            return new Plain(Marks.at(mark, other));
        }
    }

    /** Something about the order of play. */
    record Order(MusicalTime onset, What what) implements ScoreSign {
        @Override
        public ScoreSign at(MusicalTime other) {
            return new Order(other, what);
        }

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
    record Letter(MusicalTime onset, BassChordType type) implements ScoreSign {
        @Override
        public ScoreSign at(MusicalTime other) {
            return new Letter(other, type);
        }
    }

    /** A bellows effect in words. */
    record Effect(MusicalTime onset, BellowsEffect effect) implements ScoreSign {
        @Override
        public ScoreSign at(MusicalTime other) {
            return new Effect(other, effect);
        }
    }

    /** The end of a bellows effect in words. */
    record EffectEnd(MusicalTime onset) implements ScoreSign {
        @Override
        public ScoreSign at(MusicalTime other) {
            return new EffectEnd(other);
        }
    }

    /** "N.C." in words. */
    record NoChord(MusicalTime onset) implements ScoreSign {
        @Override
        public ScoreSign at(MusicalTime other) {
            return new NoChord(other);
        }
    }

    /** Something that the tune does not hold. */
    record Unused(MusicalTime onset, Finding finding) implements ScoreSign {
        @Override
        public ScoreSign at(MusicalTime other) {
            return new Unused(other, finding);
        }
    }
}
