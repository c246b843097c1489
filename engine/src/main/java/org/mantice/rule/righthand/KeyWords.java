package org.mantice.rule.righthand;

import java.util.stream.Collectors;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.HandPlaces;

/** Keys in words. */
final class KeyWords {
    private KeyWords() {}

    static String of(FingerMoment moment) {
        return moment.keys().stream().map(HandPlaces::name).collect(Collectors.joining("+"));
    }
}
