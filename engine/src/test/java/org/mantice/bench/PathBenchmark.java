package org.mantice.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Path;
import org.mantice.search.ShortestPaths;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The eight best paths of a lattice like a right hand's, beside a plain loop. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PathBenchmark {
    @Param({"300", "3000"})
    public int notes;

    private LayeredGraph graph;
    private PlainPathLoop plain;

    @Setup
    public void make() {
        graph = HandLikeLattice.of(notes);
        plain = new PlainPathLoop(graph);
        if (plain.best() != ShortestPaths.of(graph).best().orElseThrow().cost())
            throw new IllegalStateException("the plain loop has another optimum");
    }

    @Benchmark
    public List<Path> eightBest() {
        return ShortestPaths.of(graph).best(8);
    }

    @Benchmark
    public long plainLoop() {
        return plain.best();
    }
}
