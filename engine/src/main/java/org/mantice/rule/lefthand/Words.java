package org.mantice.rule.lefthand;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.mantice.tune.NoteName;

/** Names for facts. */
final class Words {
    private static final List<String> TONES = List.of("C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B");

    private Words() {}

    /** Pitch classes by their commonest names. */
    static String tones(Collection<Integer> pitchClasses) {
        return pitchClasses.stream().map(TONES::get).collect(Collectors.joining(", "));
    }

    static String column(int column) {
        return NoteName.ofFifths(column).toString();
    }

    /** The columns strictly between two, in the order in which the hand passes them; empty for neighbours. */
    static String passedOver(int from, int to) {
        int step = Integer.signum(to - from);
        return IntStream.range(1, Math.max(1, Math.abs(to - from)))
                .mapToObj(i -> column(from + i * step))
                .collect(Collectors.joining(", "));
    }
}
