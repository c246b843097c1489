package org.mantice.layer.lefthand;

import java.util.List;
import java.util.Optional;
import org.mantice.instrument.BassRow;
import org.mantice.tune.BassChordType;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;

/** What is to sound at one beat of the left hand, before buttons are chosen. Equal wishes share their states. */
sealed interface Wanted {
    /** Which part of a chord. */
    enum Part {
        BASS,
        CHORD,
        /** Bass and chord together. */
        BOTH
    }

    /** What the bass should be to its chord. */
    enum BassWish {
        ROOT,
        /** The bass has played the root of this chord and should move. */
        CHANGE,
        FIFTH,
        THIRD
    }

    record OfChord(ChordSymbol chord, Part part, BassWish bass) implements Wanted {
        boolean isChordAlone() {
            return part == Part.CHORD;
        }

        boolean changeDue() {
            return bass == BassWish.CHANGE;
        }
    }

    /**
     * A step of a bass run, by lines that lead to the same bass; one of them is played to its end.
     *
     * @param notes the step's note in each line, one or more lines in the same order for all steps of the run
     */
    record OfRun(List<RunNote> notes) implements Wanted {
        public OfRun {
            notes = List.copyOf(notes);
        }
    }

    /** @param pitchClass 0 to 11 */
    record RunNote(int pitchClass, boolean inKey) {}

    /** Notes of a written bass staff, struck together; {@code parts} is never empty. */
    record OfStaff(List<StaffPart> parts) implements Wanted {
        public OfStaff {
            parts = List.copyOf(parts);
        }
    }

    /**
     * One sign of a written bass staff.
     *
     * @param notes from the lowest, one or more
     * @param chord the letter; empty for bass notes
     * @param row of bass notes; empty where the staff does not tell
     */
    record StaffPart(List<NoteName> notes, Optional<BassChordType> chord, Optional<BassRow> row) {
        public StaffPart {
            notes = List.copyOf(notes);
        }
    }
}
