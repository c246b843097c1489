package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.Stroke;
import org.mantice.tune.MusicalTime;

/**
 * A stroke of a pattern at its place in a measure.
 *
 * @param bass meaningless for a chord
 * @param sounds per mille of the time until the next stroke
 */
record Slot(MusicalTime offset, Wanted.Part part, Stroke.Bass bass, int sounds) {
    static Slot of(BassPattern.Placed placed) {
        Stroke stroke = placed.stroke();
        Wanted.Part part =
                switch (stroke.part()) {
                    case BASS -> Wanted.Part.BASS;
                    case CHORD -> Wanted.Part.CHORD;
                    case BOTH -> Wanted.Part.BOTH;
                };
        return new Slot(placed.offset(), part, stroke.bass().orElse(Stroke.Bass.ROOT), stroke.soundsPerMille());
    }

    Slot at(MusicalTime other) {
        return new Slot(other, part, bass, sounds);
    }

    boolean isChord() {
        return part == Wanted.Part.CHORD;
    }

    /** Whether the bass of this stroke takes turns. */
    boolean turns() {
        return part == Wanted.Part.BASS && bass == Stroke.Bass.TURN;
    }

    /** What a hand that plays only a part of the pattern keeps of the stroke: the whole, some or nothing. */
    List<Slot> playedBy(Hand hand) {
        List<Slot> kept = new ArrayList<>();
        switch (hand) {
            case FULL -> kept.add(this);
            case BASS_ONLY -> {
                if (!isChord()) kept.add(new Slot(offset, Wanted.Part.BASS, bass, sounds));
            }
            case CHORDS_ONLY -> {
                if (part != Wanted.Part.BASS) kept.add(new Slot(offset, Wanted.Part.CHORD, bass, sounds));
            }
            case SILENT -> {}
        }
        return kept;
    }
}
