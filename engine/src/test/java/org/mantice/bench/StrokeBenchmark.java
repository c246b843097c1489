package org.mantice.bench;

import java.util.concurrent.TimeUnit;
import org.mantice.search.StrokeAnswer;
import org.mantice.search.StrokeQuery;
import org.mantice.search.StrokeSearch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The eight best stroke plans over 300 places, ordinary and very short strokes, beside a plain loop. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class StrokeBenchmark {
    /** Measures of eight places that fill the bellows. */
    @Param({"2", "0.5"})
    public double measures;

    private BellowsLikeLattice lattice;
    private PlainStrokeLoop plain;

    @Setup
    public void make() {
        lattice = new BellowsLikeLattice(300, measures, false);
        plain = new PlainStrokeLoop(lattice, StrokeSearch.of(lattice).levelGroups());
    }

    @Benchmark
    public StrokeAnswer eightBest() {
        return StrokeSearch.of(lattice).answer(StrokeQuery.best(8));
    }

    @Benchmark
    public long plainLoop() {
        return plain.best();
    }
}
