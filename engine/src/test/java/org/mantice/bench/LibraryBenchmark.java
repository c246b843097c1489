package org.mantice.bench;

import java.util.concurrent.TimeUnit;
import org.jgrapht.alg.shortestpath.EppsteinShortestPathIterator;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The lattice of {@link PathBenchmark} in a general-purpose graph library; ten times the notes take too much memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LibraryBenchmark {
    @Param("300")
    public int notes;

    private SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> library;

    @Setup
    public void make() {
        library = HandLikeLattice.asGraph(HandLikeLattice.of(notes));
    }

    @Benchmark
    public double graphLibrary() {
        var paths = new EppsteinShortestPathIterator<>(library, HandLikeLattice.SOURCE, HandLikeLattice.SINK);
        double sum = 0;
        for (int path = 0; path < 8; path++) sum += paths.next().getWeight();
        return sum;
    }
}
