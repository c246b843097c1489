package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.mantice.app.Calls.Answer;

class ExamplePlanTest {
    private static final Path PLAN = Calls.examples().resolve("plans/lanterns-at-the-weir.plan.json");

    @Test
    void chosenPlanOfTheExamplesIsPricedByTheRulesOfToday() {
        Answer answer = call("check", PLAN);

        assertThat(answer.code())
                .as("%s; plan it anew as examples/README.md says", answer.err())
                .isZero();
        assertThat(answer.out()).contains("priced anew: the same");
    }

    @Test
    void chosenPlanExplainsAPlaceAndWhatElseWasPossible() {
        Answer answer = call("explain", PLAN, "5");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("possible here (bellows-policy)", "possible here (fingering-span)");
    }
}
