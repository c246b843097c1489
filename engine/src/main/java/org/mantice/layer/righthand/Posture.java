package org.mantice.layer.righthand;

import java.util.List;

/**
 * Fingers on the keys of a moment, and the place of the hand.
 *
 * @param place the white key under the thumb at rest, C0 = 0
 * @param landing whether a hand that moves may land so: fingers where they rest in that place, as nearly as the keys
 *     allow, or the hand opened by one key beyond a thumb or little finger alone
 */
record Posture(List<Integer> fingers, int place, boolean landing) {
    Posture {
        fingers = List.copyOf(fingers);
    }
}
