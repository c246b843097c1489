package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.mantice.tune.Key;

/**
 * The lines on which a bass may run to the next: by steps of the key or by semitones, from below or from above. Common
 * practice, no source. A line does not begin on the bass that it leaves; those that go on from it by a third or less are
 * taken where there are any, else those that leap.
 */
final class BassRuns {
    /** Fifths from C of the notes without sharps or flats, F to B. */
    private static final int LOWEST_NATURAL = -1;

    private static final int HIGHEST_NATURAL = 5;
    private static final int THIRD = 4;

    private BassRuns() {}

    /**
     * Lines with so many notes, all of which the instrument has; may be empty. In a fixed order.
     *
     * @param from pitch class of the bass that is left
     * @param to pitch class of the bass that is reached
     * @param steps 1 or more
     */
    static List<List<Wanted.RunNote>> lines(int from, int to, int steps, Key key, IntPredicate hasBass) {
        Set<Integer> scale = scale(key);
        List<List<Wanted.RunNote>> near = new ArrayList<>();
        List<List<Wanted.RunNote>> far = new ArrayList<>();
        for (boolean chromatic : new boolean[] {false, true})
            for (int direction : new int[] {-1, 1}) {
                List<Wanted.RunNote> line = line(to, steps, direction, chromatic, scale);
                int first = line.get(0).pitchClass();
                int away = Math.min(Math.floorMod(first - from, 12), Math.floorMod(from - first, 12));
                boolean possible = away > 0 && line.stream().allMatch(note -> hasBass.test(note.pitchClass()));
                if (possible && !near.contains(line) && !far.contains(line)) (away <= THIRD ? near : far).add(line);
            }
        return List.copyOf(near.isEmpty() ? far : near);
    }

    /** @param direction where the line comes from: -1 from below, 1 from above */
    private static List<Wanted.RunNote> line(int to, int steps, int direction, boolean chromatic, Set<Integer> scale) {
        List<Wanted.RunNote> line = new ArrayList<>();
        int at = to;
        while (line.size() < steps) {
            at = Math.floorMod(at + direction, 12);
            boolean inKey = scale.contains(at);
            if (chromatic || inKey) line.add(0, new Wanted.RunNote(at, inKey));
        }
        return List.copyOf(line);
    }

    /** The seven notes of the signature. */
    private static Set<Integer> scale(Key key) {
        Set<Integer> scale = new TreeSet<>();
        for (int fifths = LOWEST_NATURAL; fifths <= HIGHEST_NATURAL; fifths++)
            scale.add(Math.floorMod(7 * (fifths + key.fifths()), 12));
        return scale;
    }
}
