package org.mantice.layer;

import java.lang.ref.Reference;
import java.lang.ref.SoftReference;
import java.util.Optional;
import java.util.function.Function;
import org.mantice.player.Taste;
import org.mantice.search.LayeredGraph;

/**
 * A layer's lattice under a taste. The last one is kept, since questions about one taste come in rows, but given up
 * where memory runs short: it is large and soon made again. Thread-safe.
 */
public final class GraphByTaste {
    private record Made(Taste taste, LayeredGraph graph) {}

    private final Function<Taste, LayeredGraph> maker;
    private volatile Reference<Optional<Made>> last = new SoftReference<>(Optional.empty());

    public GraphByTaste(Function<Taste, LayeredGraph> maker) {
        this.maker = maker;
    }

    public LayeredGraph of(Taste taste) {
        Optional<Made> known =
                Optional.ofNullable(last.get()).flatMap(kept -> kept).filter(made -> made.taste.equals(taste));
        if (known.isPresent()) return known.get().graph;
        LayeredGraph graph = maker.apply(taste);
        last = new SoftReference<>(Optional.of(new Made(taste, graph)));
        return graph;
    }
}
