package org.mantice.search;

import java.util.Arrays;

/**
 * Labels of a best-first search in plain arrays, and a binary heap of those not yet taken. A label is a stroke with its
 * end level, reached from a parent label. Order: least concessions that the plan will have at least, least cost
 * likewise, then the sequence of decisions: start, place of the next stroke's end, shift, direction.
 */
final class LabelQueue {
    /** Move of a label that stands for a start: no stroke yet. */
    static final int NO_MOVE = -1;

    private int size;
    private int[] parent = new int[1024];
    private int[] move = new int[1024];
    /** Index of the shift before the stroke, or of the start. */
    private int[] choice = new int[1024];

    private int[] level = new int[1024];
    private int[] missing = new int[1024];
    private int[] depth = new int[1024];
    private long[] cost = new long[1024];
    private long[] gives = new long[1024];
    private long[] totalCost = new long[1024];
    private long[] totalGives = new long[1024];

    private int[] heap = new int[1024];
    private int waiting;

    int size() {
        return size;
    }

    boolean isEmpty() {
        return waiting == 0;
    }

    int parent(int label) {
        return parent[label];
    }

    int move(int label) {
        return move[label];
    }

    int choice(int label) {
        return choice[label];
    }

    int level(int label) {
        return level[label];
    }

    int missing(int label) {
        return missing[label];
    }

    long cost(int label) {
        return cost[label];
    }

    long gives(int label) {
        return gives[label];
    }

    long totalCost(int label) {
        return totalCost[label];
    }

    long totalGives(int label) {
        return totalGives[label];
    }

    /** Adds a label whose plan will cost at least {@code total} and concede at least {@code totalGiven}. */
    void add(
            int from,
            int byMove,
            int byChoice,
            int atLevel,
            int stillMissing,
            long spent,
            long given,
            long total,
            long totalGiven) {
        if (size == parent.length) grow();
        parent[size] = from;
        move[size] = byMove;
        choice[size] = byChoice;
        level[size] = atLevel;
        missing[size] = stillMissing;
        depth[size] = from < 0 ? 0 : depth[from] + 1;
        cost[size] = spent;
        gives[size] = given;
        totalCost[size] = total;
        totalGives[size] = totalGiven;
        push(size++);
    }

    /** The first label in order, not taken out. */
    int peek() {
        return heap[0];
    }

    /** Takes the first label in order out of the heap. */
    int take() {
        int top = heap[0];
        int last = heap[--waiting];
        int hole = 0;
        for (int child = 1; child < waiting; child = 2 * hole + 1) {
            if (child + 1 < waiting && before(heap[child + 1], heap[child])) child++;
            if (!before(heap[child], last)) break;
            heap[hole] = heap[child];
            hole = child;
        }
        heap[hole] = last;
        return top;
    }

    private void push(int label) {
        int hole = waiting++;
        while (hole > 0 && before(label, heap[(hole - 1) / 2])) {
            heap[hole] = heap[(hole - 1) / 2];
            hole = (hole - 1) / 2;
        }
        heap[hole] = label;
    }

    private boolean before(int a, int b) {
        if (totalGives[a] != totalGives[b]) return totalGives[a] < totalGives[b];
        if (totalCost[a] != totalCost[b]) return totalCost[a] < totalCost[b];
        return bySequence(a, b) < 0;
    }

    /** Neither label is an ancestor of the other while both wait. */
    private int bySequence(int a, int b) {
        int one = a;
        int two = b;
        while (depth[one] > depth[two]) one = parent[one];
        while (depth[two] > depth[one]) two = parent[two];
        while (parent[one] != parent[two]) {
            one = parent[one];
            two = parent[two];
        }
        // Strokes from one place are numbered by their ends.
        int order = Integer.compare(move[one] >> 1, move[two] >> 1);
        if (order == 0) order = Integer.compare(choice[one], choice[two]);
        return order != 0 ? order : Integer.compare(move[one], move[two]);
    }

    private void grow() {
        int more = size + (size >> 1);
        parent = Arrays.copyOf(parent, more);
        move = Arrays.copyOf(move, more);
        choice = Arrays.copyOf(choice, more);
        level = Arrays.copyOf(level, more);
        missing = Arrays.copyOf(missing, more);
        depth = Arrays.copyOf(depth, more);
        cost = Arrays.copyOf(cost, more);
        gives = Arrays.copyOf(gives, more);
        totalCost = Arrays.copyOf(totalCost, more);
        totalGives = Arrays.copyOf(totalGives, more);
        heap = Arrays.copyOf(heap, more);
    }
}
