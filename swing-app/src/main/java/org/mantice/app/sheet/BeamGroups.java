package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * Which notes of a measure share a beam: those of one beat; beats full of eighths together where the meter allows it,
 * all of 2/4 and 3/4, each half of 4/4 (Gould, Behind Bars, 2011, chapter on beaming; Gardner Read, Music Notation, 1969). Meters
 * of eighths that name no groups are grouped in threes with twos at the end where threes do not come out (5/8 as 3+2) or,
 * for 7/8, as 2+2+3. A rest ends a beam, and so does a tuplet's edge.
 */
final class BeamGroups {
    private static final MusicalTime EIGHTH = MusicalTime.of(1, 8);

    /** What a beam needs to know of a note. */
    record Stemmed(MusicalTime offset, MusicalTime length, boolean beamable, int flags, int tuplet) {}

    private BeamGroups() {}

    /**
     * The groups of two or more, each as indexes into the notes, ascending.
     *
     * @param notes with offsets from where the meter's first beat is or would be
     */
    static List<List<Integer>> of(List<Stemmed> notes, Meter meter) {
        List<MusicalTime> beats = beats(meter);
        List<List<Integer>> groups = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            Stemmed note = notes.get(i);
            if (!open.isEmpty() && !joins(notes, open, note, beats)) {
                groups.add(open);
                open = new ArrayList<>();
            }
            if (note.beamable()) open.add(i);
        }
        groups.add(open);
        return joined(groups, notes, meter).stream()
                .filter(group -> group.size() > 1)
                .map(List::copyOf)
                .toList();
    }

    private static boolean joins(List<Stemmed> notes, List<Integer> open, Stemmed note, List<MusicalTime> beats) {
        Stemmed before = notes.get(open.get(open.size() - 1));
        return note.beamable()
                && note.tuplet() == before.tuplet()
                && before.offset().plus(before.length()).equals(note.offset())
                && beatOf(notes.get(open.get(0)).offset(), beats) == beatOf(note.offset(), beats);
    }

    /** Where the beats begin for beaming, from 0, as far as a measure's length; at least one. */
    static List<MusicalTime> beats(Meter meter) {
        List<MusicalTime> starts = new ArrayList<>();
        MusicalTime at = MusicalTime.ZERO;
        for (MusicalTime length : lengths(meter)) {
            starts.add(at);
            at = at.plus(length);
        }
        starts.add(at);
        return starts;
    }

    private static List<MusicalTime> lengths(Meter meter) {
        MusicalTime unit = MusicalTime.of(1, meter.unit());
        List<MusicalTime> lengths = new ArrayList<>();
        if (meter.isFree()) return List.of(unit, unit, unit, unit);
        for (int group : meter.groups()) for (int count : counts(group, meter)) lengths.add(unit.times(count));
        return lengths;
    }

    /** How many units each beat has within one numerator. */
    private static List<Integer> counts(int group, Meter meter) {
        List<Integer> counts = new ArrayList<>();
        if (meter.unit() <= 4) {
            for (int i = 0; i < group; i++) counts.add(1);
            return counts;
        }
        if (group <= 3 || meter.groups().size() > 1) return List.of(group);
        if (group == 7) return List.of(2, 2, 3);
        int left = group;
        while (left > 4 || left == 3) {
            counts.add(3);
            left -= 3;
        }
        for (; left > 0; left -= 2) counts.add(Math.min(2, left));
        return counts;
    }

    /** The number of the beat; each further whole length of the meter counts on. */
    private static long beatOf(MusicalTime offset, List<MusicalTime> starts) {
        MusicalTime whole = starts.get(starts.size() - 1);
        long rounds = offset.countOf(whole);
        MusicalTime within = offset.minus(whole.times(rounds));
        int beat = 0;
        while (beat + 1 < starts.size() && !within.isBefore(starts.get(beat + 1))) beat++;
        return rounds * starts.size() + beat;
    }

    private static List<List<Integer>> joined(List<List<Integer>> groups, List<Stemmed> notes, Meter meter) {
        MusicalTime reach = reach(meter);
        List<List<Integer>> joined = new ArrayList<>();
        for (List<Integer> group : groups) {
            List<Integer> last = joined.isEmpty() ? List.of() : joined.get(joined.size() - 1);
            if (!last.isEmpty() && !group.isEmpty() && fit(notes, last, group, reach)) last.addAll(group);
            else joined.add(group);
        }
        return joined;
    }

    /** The stretch within which full beats of eighths may share a beam; 0 where beats stay apart. */
    private static MusicalTime reach(Meter meter) {
        if (meter.unit() != 4 || meter.groups().size() != 1) return MusicalTime.ZERO;
        return switch (meter.beats()) {
            case 2, 4 -> MusicalTime.of(1, 2);
            case 3, 6 -> MusicalTime.of(3, 4);
            default -> MusicalTime.ZERO;
        };
    }

    private static boolean fit(List<Stemmed> notes, List<Integer> last, List<Integer> next, MusicalTime reach) {
        if (reach.isZero() || !isFullOfEighths(notes, last) || !isFullOfEighths(notes, next)) return false;
        Stemmed first = notes.get(last.get(0));
        Stemmed end = notes.get(last.get(last.size() - 1));
        Stemmed then = notes.get(next.get(0));
        return end.offset().plus(end.length()).equals(then.offset())
                && first.offset().countOf(reach) == then.offset().countOf(reach);
    }

    private static boolean isFullOfEighths(List<Stemmed> notes, List<Integer> group) {
        return group.size() % 2 == 0
                && notes.get(group.get(0)).offset().isMultipleOf(MusicalTime.QUARTER)
                && group.stream()
                        .allMatch(i -> notes.get(i).length().equals(EIGHTH)
                                && notes.get(i).tuplet() == 1);
    }
}
