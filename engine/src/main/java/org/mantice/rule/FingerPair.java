package org.mantice.rule;

import java.util.List;

/**
 * Two moments after each other.
 *
 * @param move how the hand comes to the place of the second
 * @param availableMillis from onset to onset, in steps of ten
 * @param gapMillis silence between them, in steps of ten; 0 if legato
 * @param slurred a written slur joins them
 */
public record FingerPair(
        FingerMoment from, FingerMoment to, HandMove move, long availableMillis, long gapMillis, boolean slurred)
        implements RightHandStep {
    /**
     * One line of the music from a key that is let go to a key that is struck.
     *
     * @param fromFinger 1 to 5
     * @param toFinger 1 to 5
     */
    public record Voice(int fromKey, int fromFinger, int toKey, int toFinger) {
        /** Semitones up, negative for down. */
        public int interval() {
            return toKey - fromKey;
        }

        /** Semitones from the lower finger's key to the higher finger's: negative where the thumb is crossed. */
        public int span() {
            return fromFinger < toFinger ? toKey - fromKey : fromKey - toKey;
        }

        /** The two fingers differ, one is the thumb, and it lies beyond the other. */
        public boolean crossesThumb() {
            return fromFinger != toFinger && (fromFinger == 1 || toFinger == 1) && span() < 0;
        }

        public int lowerFinger() {
            return Math.min(fromFinger, toFinger);
        }

        public int higherFinger() {
            return Math.max(fromFinger, toFinger);
        }

        /** The same finger on another key. */
        public boolean hops() {
            return fromFinger == toFinger && fromKey != toKey;
        }
    }

    /** The lowest and the highest line between the moments, held keys left out; one line where the two agree. */
    public List<Voice> voices() {
        if (from.keys().size() == 1 && to.keys().size() == 1) return List.of(voice(0, 0));
        int fromLow = first(from, true);
        int fromHigh = last(from, true);
        int toLow = first(to, false);
        int toHigh = last(to, false);
        return fromLow == fromHigh && toLow == toHigh
                ? List.of(voice(fromLow, toLow))
                : List.of(voice(fromLow, toLow), voice(fromHigh, toHigh));
    }

    /** The highest line, held keys left out. */
    public Voice melody() {
        return voice(last(from, true), last(to, false));
    }

    private Voice voice(int fromNote, int toNote) {
        return new Voice(
                from.keys().get(fromNote),
                from.fingers().get(fromNote),
                to.keys().get(toNote),
                to.fingers().get(toNote));
    }

    private int first(FingerMoment moment, boolean before) {
        for (int note = 0; note < moment.keys().size(); note++) if (moves(moment, note, before)) return note;
        return 0;
    }

    private int last(FingerMoment moment, boolean before) {
        for (int note = moment.keys().size() - 1; note >= 0; note--) if (moves(moment, note, before)) return note;
        return moment.keys().size() - 1;
    }

    private boolean moves(FingerMoment moment, int note, boolean before) {
        if (!before) return !moment.held().get(note);
        int after = to.keys().indexOf(moment.keys().get(note));
        return after < 0 || !to.held().get(after);
    }
}
