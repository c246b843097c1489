package org.mantice.search;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * The best paths of a lattice, in order, none twice: by cost, ties by the first stage where they differ, the smaller
 * state first.
 *
 * <p>Where nodes or edges carry concessions, only paths with the least concessions (lexicographically, worst level
 * first) are paths here; among these the order is by cost. The answer to "how many ban had to give way" is
 * {@link #concessions()}.
 *
 * <p>Construction is one backward pass: O(edges) time, O(states) memory. Every further path costs O(stages + out-degree
 * of a state + log) time, besides the states whose best way on is met for the first time, whose edges are looked at
 * once more. Method: D. Eppstein, "Finding the k shortest paths", SIAM J. Comput. 28(2), 1998 (sidetracks in persistent
 * heaps), with a tie order of our own and heaps made on demand.
 *
 * <p>Immutable after construction; iterators are independent of each other. Not for concurrent use by several threads.
 */
public final class ShortestPaths implements Iterable<Path> {
    private final LayeredGraph graph;
    private final Restriction restriction;
    private final CostToGo toGo;
    private final int firstState;
    /** Heaps of sidetracks along the best way on, by state; made on demand. */
    private Sidetrack[][] heap;

    private boolean[][] heapMade;

    private ShortestPaths(LayeredGraph graph, Restriction restriction, BooleanSupplier cancelled) {
        this.graph = graph;
        this.restriction = restriction;
        this.toGo = new CostToGo(graph, restriction, cancelled);
        this.firstState = bestFirstState();
    }

    /** The paths of the whole lattice. */
    public static ShortestPaths of(LayeredGraph graph) {
        return of(graph, Restriction.free(), Cancellation.NEVER);
    }

    /** The paths within a restriction. */
    public static ShortestPaths of(LayeredGraph graph, Restriction restriction) {
        return of(graph, restriction, Cancellation.NEVER);
    }

    /**
     * The paths within a restriction.
     *
     * @param cancelled asked once per stage; the search stops when it says true
     * @throws java.util.concurrent.CancellationException if stopped
     * @throws IllegalArgumentException if the restriction names a stage or state that the graph does not have
     */
    public static ShortestPaths of(LayeredGraph graph, Restriction restriction, BooleanSupplier cancelled) {
        return new ShortestPaths(graph, restriction, cancelled);
    }

    public LayeredGraph graph() {
        return graph;
    }

    public Restriction restriction() {
        return restriction;
    }

    /** Whether there is any path. */
    public boolean feasible() {
        return firstState >= 0;
    }

    /** The best path; empty if there is none. */
    public Optional<Path> best() {
        return feasible() ? Optional.of(firstPath()) : Optional.empty();
    }

    /**
     * The {@code k} best paths, fewer if there are fewer.
     *
     * @param k how many, 0 or more
     */
    public List<Path> best(int k) {
        if (k < 0) throw new IllegalArgumentException("k is " + k + "; allowed: 0 or more");
        List<Path> paths = new ArrayList<>();
        for (Iterator<Path> all = iterator(); paths.size() < k && all.hasNext(); ) paths.add(all.next());
        return paths;
    }

    /** All paths in order, each made when it is asked for. */
    @Override
    public Iterator<Path> iterator() {
        return new PathIterator(this);
    }

    /** The least concessions of any path, packed; empty if there is no path. */
    public OptionalLong concessions() {
        if (!feasible()) return OptionalLong.empty();
        return OptionalLong.of(concessionsFrom(firstState));
    }

    /** The best path that uses {@code state} at {@code stage}, as if it were required; one backward pass. */
    public Optional<Path> bestThrough(int stage, int state) {
        graph.checkState(stage, state);
        return of(graph, restriction.requiring(stage, state)).best();
    }

    /** The first stage that no sequence of moves from the first stage reaches; empty if there is a path. */
    public OptionalInt firstBlockedStage() {
        return feasible() ? OptionalInt.empty() : Reachability.firstBlockedStage(graph, restriction);
    }

    CostToGo toGo() {
        return toGo;
    }

    Path firstPath() {
        int[] states = new int[graph.stages()];
        states[0] = firstState;
        followBest(states, 0);
        return new Path(states, toGo.cost[0][firstState], concessionsFrom(firstState));
    }

    /** Fills {@code states} after {@code stage} with the best way on. */
    void followBest(int[] states, int stage) {
        for (int at = stage; at + 1 < states.length; at++) states[at + 1] = toGo.next[at][states[at]];
    }

    /** The sidetracks off the choice of the first state and the best way on from it; null if there is none. */
    Sidetrack firstHeap() {
        Sidetrack own = nextSidetrack(-1, 0, 0, -1);
        return Sidetrack.merge(own, heapFrom(0, firstState));
    }

    /** The sidetracks off the best way on from a state that reaches the end; null if there is none. */
    Sidetrack heapFrom(int stage, int state) {
        int stages = graph.stages();
        if (heap == null) {
            heap = new Sidetrack[stages][];
            heapMade = new boolean[stages][];
        }
        int at = stage;
        int[] way = new int[stages];
        way[at] = state;
        while (at + 1 < stages && !isHeapMade(at, way[at])) {
            way[at + 1] = toGo.next[at][way[at]];
            at++;
        }
        Sidetrack below = isHeapMade(at, way[at]) ? heap[at][way[at]] : null;
        while (--at >= stage) {
            below = Sidetrack.merge(nextSidetrack(at, way[at], 0, -1), below);
            if (heap[at] == null) {
                heap[at] = new Sidetrack[graph.states(at)];
                heapMade[at] = new boolean[graph.states(at)];
            }
            heap[at][way[at]] = below;
            heapMade[at][way[at]] = true;
        }
        return below;
    }

    private boolean isHeapMade(int stage, int state) {
        return heapMade[stage] != null && heapMade[stage][state];
    }

    /**
     * The cheapest way to leave the best way on at a state that comes after the given one in the order of (detour,
     * target); null if there is none. A target of -1 asks for the first.
     */
    Sidetrack nextSidetrack(int stage, int source, long afterDetour, int afterTarget) {
        if (stage < 0) return nextFirstState(afterDetour, afterTarget);
        Transition moves = graph.transition[stage];
        int best = toGo.next[stage][source];
        long least = CostToGo.UNREACHABLE;
        int target = -1;
        for (int edge = moves.start[source]; edge < moves.start[source + 1]; edge++) {
            int to = moves.target[edge];
            if (to == best) continue;
            long detour = toGo.detour(stage, source, edge);
            if (detour < least && isAfter(detour, to, afterDetour, afterTarget)) {
                least = detour;
                target = to;
            }
        }
        return target < 0 ? null : new Sidetrack(stage, source, least, target, target > best);
    }

    private Sidetrack nextFirstState(long afterDetour, int afterTarget) {
        long least = CostToGo.UNREACHABLE;
        int target = -1;
        for (int state = 0; state < graph.states(0); state++) {
            if (state == firstState || !toGo.reachesEnd(0, state)) continue;
            if (concessionsFrom(state) != concessionsFrom(firstState)) continue;
            long detour = toGo.cost[0][state] - toGo.cost[0][firstState];
            if (detour < least && isAfter(detour, state, afterDetour, afterTarget)) {
                least = detour;
                target = state;
            }
        }
        return target < 0 ? null : new Sidetrack(-1, 0, least, target, target > firstState);
    }

    private static boolean isAfter(long detour, int target, long afterDetour, int afterTarget) {
        return detour > afterDetour || detour == afterDetour && target > afterTarget;
    }

    private long concessionsFrom(int state) {
        return toGo.concessions == null ? ConcessionScale.NONE : toGo.concessions[0][state];
    }

    private int bestFirstState() {
        int best = -1;
        for (int state = 0; state < graph.states(0); state++) {
            if (!toGo.reachesEnd(0, state)) continue;
            if (best < 0
                    || concessionsFrom(state) < concessionsFrom(best)
                    || concessionsFrom(state) == concessionsFrom(best) && toGo.cost[0][state] < toGo.cost[0][best])
                best = state;
        }
        return best;
    }
}
