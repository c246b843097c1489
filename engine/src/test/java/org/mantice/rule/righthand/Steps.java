package org.mantice.rule.righthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandMove;

/** Steps of the right hand for the contracts of rules. */
public final class Steps {
    private Steps() {}

    /** @param keysAndFingers key, finger, key, finger … ascending */
    public static FingerMoment moment(int handPlace, int... keysAndFingers) {
        List<Integer> keys = new ArrayList<>();
        List<Integer> fingers = new ArrayList<>();
        for (int at = 0; at < keysAndFingers.length; at += 2) {
            keys.add(keysAndFingers[at]);
            fingers.add(keysAndFingers[at + 1]);
        }
        return FingerMoment.struck(keys, fingers, handPlace, 300, 95);
    }

    public static FingerPair pair(HandMove move, FingerMoment from, FingerMoment to) {
        return pair(move, from, to, 300, 0, false);
    }

    public static FingerPair pair(
            HandMove move, FingerMoment from, FingerMoment to, long availableMillis, long gapMillis, boolean slurred) {
        return new FingerPair(from, to, move, availableMillis, gapMillis, slurred);
    }

    public static FingerTriple triple(HandMove first, HandMove second, FingerMoment... three) {
        return new FingerTriple(pair(first, three[0], three[1]), pair(second, three[1], three[2]));
    }

    /** Moments of one key each, in order, the fingers over C4. */
    public static List<FingerMoment> line(int... keysAndFingers) {
        List<FingerMoment> line = new ArrayList<>();
        for (int at = 0; at < keysAndFingers.length; at += 2)
            line.add(moment(28, keysAndFingers[at], keysAndFingers[at + 1]));
        return line;
    }

    public static FingerPair pair(int... keysAndFingers) {
        List<FingerMoment> line = line(keysAndFingers);
        return pair(HandMove.STAY, line.get(0), line.get(1));
    }

    public static FingerTriple triple(int... keysAndFingers) {
        return triple(HandMove.STAY, HandMove.STAY, line(keysAndFingers).toArray(FingerMoment[]::new));
    }
}
