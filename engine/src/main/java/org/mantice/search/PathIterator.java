package org.mantice.search;

import java.util.Arrays;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;

/**
 * Paths in order. A path is another path, given out before, left at one state (its last sidetrack) for the best way on
 * from there; the queue holds the next candidates of every path given out.
 */
final class PathIterator implements Iterator<Path> {
    private final ShortestPaths paths;
    private final PriorityQueue<Candidate> queue = new PriorityQueue<>();
    /** Given out last; its own sidetracks are still to be queued. */
    private Candidate last;

    private boolean started;

    PathIterator(ShortestPaths paths) {
        this.paths = paths;
    }

    @Override
    public boolean hasNext() {
        if (!started) return paths.feasible();
        expandLast();
        return !queue.isEmpty();
    }

    @Override
    public Path next() {
        if (!hasNext()) throw new NoSuchElementException("no further path");
        if (!started) {
            started = true;
            last = new Candidate(paths.firstPath());
        } else {
            last = queue.remove();
        }
        return last.path();
    }

    private void expandLast() {
        if (last == null) return;
        Path path = last.path();
        if (last.sidetrack == null) {
            offer(path, paths.firstHeap(), true);
        } else {
            Sidetrack taken = last.sidetrack;
            if (last.top) {
                offer(last.parent, taken.left, true);
                offer(last.parent, taken.right, true);
            }
            offer(last.parent, paths.nextSidetrack(taken.stage, taken.source, taken.detour, taken.target), false);
            offer(path, paths.heapFrom(taken.stage + 1, taken.target), true);
        }
        last = null;
    }

    private void offer(Path parent, Sidetrack sidetrack, boolean top) {
        if (sidetrack != null) queue.add(new Candidate(parent, sidetrack, top));
    }

    private final class Candidate implements Comparable<Candidate> {
        final Path parent;
        final Sidetrack sidetrack;
        /** Whether the sidetrack is the one its heap node stands for, so that the node's children come next. */
        final boolean top;

        final long cost;
        private Path path;

        /** The best path. */
        Candidate(Path best) {
            this.parent = best;
            this.sidetrack = null;
            this.top = false;
            this.cost = best.cost();
            this.path = best;
        }

        Candidate(Path parent, Sidetrack sidetrack, boolean top) {
            this.parent = parent;
            this.sidetrack = sidetrack;
            this.top = top;
            this.cost = parent.cost() + sidetrack.detour;
        }

        Path path() {
            if (path == null) {
                int[] states = Arrays.copyOf(parent.states, parent.states.length);
                states[sidetrack.stage + 1] = sidetrack.target;
                paths.followBest(states, sidetrack.stage + 1);
                path = new Path(states, cost, parent.concessions());
            }
            return path;
        }

        @Override
        public int compareTo(Candidate other) {
            return cost != other.cost ? Long.compare(cost, other.cost) : path().compareTo(other.path());
        }
    }
}
