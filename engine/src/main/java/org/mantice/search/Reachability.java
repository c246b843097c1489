package org.mantice.search;

import java.util.BitSet;
import java.util.OptionalInt;

/** Which states moves can reach from the first stage on, costs aside. */
final class Reachability {
    private Reachability() {}

    /** The first stage none of whose allowed states can be reached; empty if every stage has one. */
    static OptionalInt firstBlockedStage(LayeredGraph graph, Restriction restriction) {
        BitSet[] masks = restriction.masks(graph);
        BitSet reached = new BitSet();
        reached.set(0, graph.states(0));
        for (int stage = 0; stage < graph.stages(); stage++) {
            if (stage > 0) reached = step(graph.transition[stage - 1], reached);
            if (masks[stage] != null) reached.and(masks[stage]);
            if (reached.isEmpty()) return OptionalInt.of(stage);
        }
        return OptionalInt.empty();
    }

    private static BitSet step(Transition moves, BitSet from) {
        BitSet to = new BitSet(moves.targets());
        for (int source = from.nextSetBit(0); source >= 0; source = from.nextSetBit(source + 1))
            for (int edge = moves.start[source]; edge < moves.start[source + 1]; edge++) to.set(moves.target[edge]);
        return to;
    }
}
