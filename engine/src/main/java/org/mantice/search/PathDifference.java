package org.mantice.search;

/** Counts how a path differs from whatever it is to differ from: a sum over its states and moves. */
public interface PathDifference {
    /** Number of differences that this state brings, 0 or more. */
    int state(int stage, int state);

    /** Number of differences that the move from {@code source} at {@code stage} to {@code target} brings, 0 or more. */
    default int move(int stage, int source, int target) {
        return 0;
    }

    /** One difference for every stage where a path has another state than {@code reference}. */
    static PathDifference from(Path reference) {
        return (stage, state) -> reference.state(stage) == state ? 0 : 1;
    }

    /** The differences of a whole path. */
    default int of(Path path) {
        int sum = 0;
        for (int stage = 0; stage < path.stages(); stage++) {
            sum = Math.addExact(sum, state(stage, path.state(stage)));
            if (stage > 0) sum = Math.addExact(sum, move(stage - 1, path.state(stage - 1), path.state(stage)));
        }
        return sum;
    }
}
