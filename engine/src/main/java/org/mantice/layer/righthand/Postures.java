package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.mantice.rule.FingerSpans;
import org.mantice.rule.HandPlaces;

/**
 * Which fingers can play the keys of a moment, from which hand places.
 *
 * <p>Fingers ascend with the keys. In a chord, pairs of fingers stay within the practical span of the hand; where no
 * choice of fingers does, all are offered, and a rule may say what gives way. From a place each finger reaches a stated
 * way off its resting key: half a white key for a neighbouring black one, more for thumb and little finger.
 */
final class Postures {
    /** Farthest keys below and above the resting key by finger, in half white keys (estimates). */
    private static final int[] REACH_DOWN = {0, 4, 2, 3, 3, 2};

    private static final int[] REACH_UP = {0, 1, 2, 2, 3, 5};

    private Postures() {}

    /** In order of fingers, least strained places first, then by place. Empty for more than five keys. */
    static List<Posture> of(List<Integer> keys, int handSpanTenths) {
        List<List<Integer>> choices = new ArrayList<>();
        ascending(keys.size(), 1, new ArrayList<>(), choices);
        List<List<Integer>> practical = choices.stream()
                .filter(fingers -> practical(keys, fingers, handSpanTenths))
                .toList();
        List<Posture> postures = new ArrayList<>();
        for (List<Integer> fingers : practical.isEmpty() ? choices : practical) addPlaces(keys, fingers, postures);
        return List.copyOf(postures);
    }

    private static void ascending(int count, int from, List<Integer> chosen, List<List<Integer>> choices) {
        if (chosen.size() == count) {
            choices.add(List.copyOf(chosen));
            return;
        }
        for (int finger = from; finger <= 5; finger++) {
            chosen.add(finger);
            ascending(count, finger + 1, chosen, choices);
            chosen.remove(chosen.size() - 1);
        }
    }

    private static boolean practical(List<Integer> keys, List<Integer> fingers, int handSpanTenths) {
        for (int low = 0; low < keys.size(); low++)
            for (int high = low + 1; high < keys.size(); high++)
                if (!FingerSpans.practical(
                        fingers.get(low), fingers.get(high), keys.get(high) - keys.get(low), handSpanTenths))
                    return false;
        return true;
    }

    private static void addPlaces(List<Integer> keys, List<Integer> fingers, List<Posture> postures) {
        int lowest = HandPlaces.halfKeys(keys.get(0)) / 2 - 8;
        int highest = HandPlaces.halfKeys(keys.get(keys.size() - 1)) / 2 + 3;
        List<Integer> within = new ArrayList<>();
        List<Integer> all = new ArrayList<>();
        for (int place = lowest; place <= highest; place++) {
            all.add(place);
            if (reaches(keys, fingers, place)) within.add(place);
        }
        List<Integer> places = within.isEmpty() ? all : within;
        int least = places.stream()
                .mapToInt(place -> strain(keys, fingers, place))
                .min()
                .orElseThrow();
        List<Integer> ordered = places.stream()
                .filter(place -> strain(keys, fingers, place) == least || !within.isEmpty())
                .sorted(Comparator.comparing((Integer place) -> strain(keys, fingers, place))
                        .thenComparing(place -> farthest(keys, fingers, place))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        for (int place : ordered) {
            // A black key lies between two places in which a lone finger rests; a chord is landed on in one.
            boolean rests = keys.size() == 1 ? strain(keys, fingers, place) == least : place == ordered.get(0);
            postures.add(new Posture(fingers, place, rests || opened(keys, fingers, place)));
        }
    }

    /** A lone thumb one key below its rest, or a lone little finger one key above. */
    private static boolean opened(List<Integer> keys, List<Integer> fingers, int place) {
        if (keys.size() > 1) return false;
        int off = HandPlaces.halfKeysOff(keys.get(0), fingers.get(0), place);
        return fingers.get(0) == 1 && (off == -2 || off == -3) || fingers.get(0) == 5 && (off == 2 || off == 3);
    }

    private static boolean reaches(List<Integer> keys, List<Integer> fingers, int place) {
        for (int note = 0; note < keys.size(); note++) {
            int finger = fingers.get(note);
            int off = HandPlaces.halfKeysOff(keys.get(note), finger, place);
            if (off < -REACH_DOWN[finger] || off > REACH_UP[finger]) return false;
        }
        return true;
    }

    private static int strain(List<Integer> keys, List<Integer> fingers, int place) {
        int sum = 0;
        for (int note = 0; note < keys.size(); note++)
            sum += Math.abs(HandPlaces.halfKeysOff(keys.get(note), fingers.get(note), place));
        return sum;
    }

    private static int farthest(List<Integer> keys, List<Integer> fingers, int place) {
        int most = 0;
        for (int note = 0; note < keys.size(); note++)
            most = Math.max(most, Math.abs(HandPlaces.halfKeysOff(keys.get(note), fingers.get(note), place)));
        return most;
    }
}
