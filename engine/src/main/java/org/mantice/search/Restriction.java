package org.mantice.search;

import java.util.BitSet;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which states of a lattice may be used, stage by stage: how locks reach the search without a copy of the lattice.
 * Stages that are not mentioned are free. Immutable; every method that adds something returns a new restriction.
 */
public final class Restriction {
    private static final Restriction FREE = new Restriction(new TreeMap<>());

    private final SortedMap<Integer, BitSet> allowed;

    private Restriction(SortedMap<Integer, BitSet> allowed) {
        this.allowed = allowed;
    }

    /** No restriction at all. */
    public static Restriction free() {
        return FREE;
    }

    /** Only {@code states} of {@code stage}, and of these only those allowed so far. An empty set leaves no path. */
    public Restriction allowing(int stage, BitSet states) {
        if (stage < 0) throw new IllegalArgumentException("stage is " + stage + "; allowed: 0 or more");
        BitSet both = (BitSet) states.clone();
        BitSet before = allowed.get(stage);
        if (before != null) both.and(before);
        SortedMap<Integer, BitSet> copy = new TreeMap<>(allowed);
        copy.put(stage, both);
        return new Restriction(copy);
    }

    /** Only {@code state} at {@code stage}. */
    public Restriction requiring(int stage, int state) {
        if (state < 0) throw new IllegalArgumentException("state is " + state + "; allowed: 0 or more");
        BitSet one = new BitSet();
        one.set(state);
        return allowing(stage, one);
    }

    /**
     * Any state of {@code stage} but {@code state}.
     *
     * @param states number of states of that stage
     */
    public Restriction forbidding(int stage, int state, int states) {
        if (state < 0 || state >= states)
            throw new IllegalArgumentException("state is " + state + "; allowed: 0 to " + (states - 1));
        BitSet others = new BitSet();
        others.set(0, states);
        others.clear(state);
        return allowing(stage, others);
    }

    /** What both restrictions allow. */
    public Restriction and(Restriction other) {
        Restriction both = this;
        for (var entry : other.allowed.entrySet()) both = both.allowing(entry.getKey(), entry.getValue());
        return both;
    }

    /** The states allowed at {@code stage}; empty where the stage is free. */
    public Optional<BitSet> allowed(int stage) {
        return Optional.ofNullable(allowed.get(stage)).map(states -> (BitSet) states.clone());
    }

    public boolean isFree() {
        return allowed.isEmpty();
    }

    /** The restrictions as an array by stage, null where free; not to be changed. */
    BitSet[] masks(LayeredGraph graph) {
        BitSet[] masks = new BitSet[graph.stages()];
        for (var entry : allowed.entrySet()) {
            if (entry.getKey() >= masks.length)
                throw new IllegalArgumentException(
                        "restricted stage is " + entry.getKey() + "; allowed: 0 to " + (masks.length - 1));
            if (entry.getValue().length() > graph.states(entry.getKey()))
                throw new IllegalArgumentException("state of stage " + entry.getKey() + " is "
                        + (entry.getValue().length() - 1) + "; allowed: 0 to " + (graph.states(entry.getKey()) - 1));
            masks[entry.getKey()] = entry.getValue();
        }
        return masks;
    }

    @Override
    public String toString() {
        return allowed.isEmpty() ? "free" : allowed.toString();
    }
}
