package org.mantice.bench;

import java.util.concurrent.TimeUnit;
import org.mantice.PlanRequest;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.layer.bellows.BellowsLayer;
import org.mantice.layer.lefthand.LeftHandLayer;
import org.mantice.layer.righthand.RightHandLayer;
import org.mantice.layer.variation.VariationLayer;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.RuleSet;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The best plan of one layer after a change of the weight of one of its rules, from the kept numbers. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WeightBenchmark {
    @Param
    public RuleSet set;

    private Layer<? extends LayerPlan> layer;
    private String rule;
    private int weight;

    @Setup
    public void make() {
        PlanRequest request = WholeBenchmark.request(1);
        RuleBook book = RuleBook.of(Packs.ofClassPath().providers());
        Performance performance = Performer.perform(request.tune(), request.settings());
        VariationLayer variation = new VariationLayer(performance, request.accordion(), book);
        VariationPlan registers = best(variation);
        LeftHandLayer left = LeftHandLayer.of(performance, registers, request.accordion(), request.player(), book);
        LeftHandPlan buttons = best(left);
        layer = switch (set) {
            case REPEAT_VARIATION -> variation;
            case JUMP_COST -> left;
            case BELLOWS_POLICY ->
                BellowsLayer.of(performance, registers, buttons, request.accordion(), request.player(), book);
            case FINGERING_SPAN ->
                new RightHandLayer(performance, registers, request.accordion(), request.player(), book);
        };
        rule = book.rules(set).get(0).info().id();
    }

    private static <P extends LayerPlan> P best(Layer<P> layer) {
        return ((Outcome.Found<P>) layer.best(Question.best(Taste.PLAIN))).best();
    }

    /** Another weight each time, so that nothing can be remembered. */
    @Benchmark
    public Outcome<?> search() {
        weight = 500 + (weight + 7) % 1_000;
        return layer.best(Question.best(Taste.PLAIN.with(rule, weight)));
    }
}
