package org.mantice.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.SettingsBuilder;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;
import org.mantice.tune.Tune;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** All four layers of a tune of 64 measures played three times, rules and all, from the written tune on. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WholeBenchmark {
    @Param({"1", "4"})
    public int alternatives;

    private Planner planner;
    private PlanRequest request;

    /** What is planned in all benchmarks of whole tunes. */
    static PlanRequest request(int alternatives) {
        Tune tune = DanceTune.of(64, 7);
        return new PlanRequest(
                tune,
                AccordionPresets.get("full-41-key-120-bass"),
                PlayerPresets.get("medium-hand"),
                SettingsBuilder.of(tune).timesThrough(3).build(),
                List.of(),
                alternatives);
    }

    @Setup
    public void make() {
        planner = new Planner(Packs.ofClassPath().providers());
        request = request(alternatives);
    }

    @Benchmark
    public Alternatives plan() {
        return planner.plan(request);
    }
}
