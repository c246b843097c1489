package org.mantice.layer.lefthand;

import java.util.List;
import java.util.Optional;
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

    /** @param changeDue the bass has played the root of this chord and should move */
    record OfChord(ChordSymbol chord, Part part, boolean changeDue) implements Wanted {
        boolean isChordAlone() {
            return part == Part.CHORD;
        }
    }

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
     */
    record StaffPart(List<NoteName> notes, Optional<BassChordType> chord) {
        public StaffPart {
            notes = List.copyOf(notes);
        }
    }
}
