package org.mantice.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded small lattices for the tests, and every path of one by brute force. */
final class Lattices {
    private Lattices() {}

    /** A lattice of 1 to {@code stages} stages with 1 to {@code states} states, small costs and so many ties. */
    static LayeredGraph random(Random random, int stages, int states, int largestCost, int edgePercent) {
        return random(random, stages, states, largestCost, edgePercent, new ConcessionScale(1), 0);
    }

    static LayeredGraph random(
            Random random,
            int stages,
            int states,
            int largestCost,
            int edgePercent,
            ConcessionScale scale,
            int concedingPercent) {
        int n = random.nextInt(4) == 0 ? 1 + random.nextInt(stages) : stages;
        long[] nodes = costs(random, 1 + random.nextInt(states), largestCost);
        LayeredGraph.Builder graph = LayeredGraph.builder(scale).first(nodes);
        concede(random, graph, nodes.length, scale, concedingPercent);
        for (int stage = 1; stage < n; stage++) {
            int sources = nodes.length;
            nodes = costs(random, 1 + random.nextInt(states), largestCost);
            Transition.Builder moves = Transition.builder(sources, nodes.length);
            for (int source = 0; source < sources; source++)
                for (int target = 0; target < nodes.length; target++)
                    if (random.nextInt(100) < edgePercent)
                        moves.edge(
                                source,
                                target,
                                random.nextInt(largestCost + 1),
                                concession(random, scale, concedingPercent));
            graph.next(moves.build(), nodes);
            concede(random, graph, nodes.length, scale, concedingPercent);
        }
        return graph.build();
    }

    /** All paths of a lattice, sorted. */
    static List<Path> all(LayeredGraph graph) {
        List<Path> paths = new ArrayList<>();
        collect(graph, new int[graph.stages()], 0, paths);
        paths.sort(null);
        return paths;
    }

    /** All paths that concede as little as the best, sorted. */
    static List<Path> leastConceding(LayeredGraph graph) {
        List<Path> paths = all(graph);
        return paths.stream()
                .filter(path -> path.concessions() == paths.get(0).concessions())
                .toList();
    }

    private static void collect(LayeredGraph graph, int[] states, int stage, List<Path> paths) {
        if (stage == states.length) {
            var cost = graph.cost(states);
            if (cost.isPresent())
                paths.add(new Path(
                        states.clone(),
                        cost.getAsLong(),
                        graph.concessions(states).getAsLong()));
            return;
        }
        for (states[stage] = 0; states[stage] < graph.states(stage); states[stage]++)
            collect(graph, states, stage + 1, paths);
    }

    private static void concede(
            Random random, LayeredGraph.Builder graph, int states, ConcessionScale scale, int percent) {
        if (percent > 0)
            graph.conceding(random.longs(states)
                    .map(seed -> concession(new Random(seed), scale, percent))
                    .toArray());
    }

    private static long concession(Random random, ConcessionScale scale, int percent) {
        return random.nextInt(100) < percent ? scale.one(random.nextInt(scale.levels())) : ConcessionScale.NONE;
    }

    private static long[] costs(Random random, int states, int largestCost) {
        return random.longs(states, 0, largestCost + 1L).toArray();
    }
}
