package org.mantice.search;

/**
 * A state where a best way on can be left, with the cheapest way to leave it: a node of a leftist heap that is never
 * changed, so that the heaps of two states whose best ways on meet share all nodes from there.
 *
 * <p>Order: by detour; of equal detours, by the order of the state sequences they lead to. Two sequences that leave the
 * same way compare by the first state where they differ, so leaving towards a smaller state comes first, and among
 * those the earlier stage; leaving towards a greater state comes last, and among those the later stage first.
 */
final class Sidetrack {
    /** Stage of the state that is left; -1 for the choice of the first state. */
    final int stage;

    final int source;
    final long detour;
    final int target;
    /** Whether {@link #target} is greater than the best next state. */
    final boolean upward;

    final Sidetrack left;
    final Sidetrack right;

    private final int rank;

    Sidetrack(int stage, int source, long detour, int target, boolean upward) {
        this(stage, source, detour, target, upward, null, null);
    }

    private Sidetrack(int stage, int source, long detour, int target, boolean upward, Sidetrack left, Sidetrack right) {
        this.stage = stage;
        this.source = source;
        this.detour = detour;
        this.target = target;
        this.upward = upward;
        this.left = left;
        this.right = right;
        this.rank = right == null ? 1 : right.rank + 1;
    }

    /** The heap of all nodes of both; either may be null. O(log n) new nodes. */
    static Sidetrack merge(Sidetrack a, Sidetrack b) {
        if (a == null) return b;
        if (b == null) return a;
        Sidetrack top = a.before(b) ? a : b;
        Sidetrack other = top == a ? b : a;
        Sidetrack merged = merge(top.right, other);
        boolean keepsLeft = top.left != null && top.left.rank >= merged.rank;
        return keepsLeft ? top.with(top.left, merged) : top.with(merged, top.left);
    }

    private boolean before(Sidetrack other) {
        if (detour != other.detour) return detour < other.detour;
        if (upward != other.upward) return !upward;
        return upward ? stage > other.stage : stage < other.stage;
    }

    private Sidetrack with(Sidetrack newLeft, Sidetrack newRight) {
        return new Sidetrack(stage, source, detour, target, upward, newLeft, newRight);
    }
}
