package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.OneRulePack;
import org.mantice.layer.RuleFailureException;
import org.mantice.plugin.Packs;
import org.mantice.plugin.RuleStuckException;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.RuleSet;

/** Rules of a stranger that throw, or never come back. */
@Timeout(60)
class RulesThatFailTest {
    private final BlockingQueue<Runnable> news = new LinkedBlockingQueue<>();

    @TempDir
    private Path folder;

    /** Lets a rule that does not come back end when the test does, so that it takes no more of the machine. */
    private static final String ENDLESS =
            "while (!Boolean.getBoolean(\"test.rule.may.end\")) Thread.onSpinWait(); return 0;";

    @BeforeEach
    void endless() {
        System.clearProperty("test.rule.may.end");
    }

    private Packs packs(String cost) throws IOException {
        Path packs = folder.resolve("packs");
        OneRulePack.write(
                packs.resolve("stranger.jar"),
                folder.resolve("work"),
                RuleSet.FINGERING_SPAN,
                FingerMoment.class,
                cost);
        return Packs.of(Optional.of(packs));
    }

    @Test
    void aRuleThatThrowsIsNamedAndCanBeLeftOut() throws Exception {
        PlannerModel model = new PlannerModel(
                packs("throw new IllegalStateException(\"sulks\");"), new DirectBackground(), SmallTunes.setup());

        model.open(SmallTunes.open(SmallTunes.WALTZ));

        Answer.Failed failed = (Answer.Failed) model.state().answer();
        assertThat(failed.ruleId()).isEqualTo(OneRulePack.RULE);
        assertThat(failed.cause()).isInstanceOf(RuleFailureException.class).hasMessageContaining("sulks");
        assertThat(failed.before()).isEmpty();

        model.planWithout(failed.ruleId());

        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        model.undo();
        assertThat(model.state().answer()).isEqualTo(failed);
    }

    /** The stranger's rule explains nothing, whatever it costs. */
    @Test
    void aRuleThatOnlyFailsWhenAskedWhyFailsOnceAndNotForEver() throws Exception {
        PlannerModel model = new PlannerModel(packs("return 1;"), new DirectBackground(), SmallTunes.setup());
        model.open(SmallTunes.open(SmallTunes.WALTZ));
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);

        model.nextDifference();

        Answer.Failed failed = (Answer.Failed) model.state().answer();
        assertThat(failed.ruleId()).isEqualTo(OneRulePack.RULE);
        assertThat(failed.before()).isNotEmpty();
        assertThat(model.state().insight()).isEmpty();
    }

    /** Hands the news over as they come, until the answer is there. */
    private Answer await(PlannerModel model) throws InterruptedException {
        while (model.state().isWorking()) {
            Runnable next = news.poll(30, TimeUnit.SECONDS);
            assertThat(next).as("news").isNotNull();
            next.run();
        }
        return model.state().answer();
    }

    @Test
    void aRuleThatNeverComesBackIsGivenUpAndItsPackTurnedOff() throws Exception {
        PlannerModel model =
                new PlannerModel(packs(ENDLESS), new ThreadBackground(news::add, "planning"), SmallTunes.setup(), 1);
        model.open(SmallTunes.open(SmallTunes.WALTZ));

        Answer.Failed failed = (Answer.Failed) await(model);

        assertThat(failed.ruleId()).isEqualTo(OneRulePack.RULE);
        assertThat(failed.cause())
                .isInstanceOf(RuleStuckException.class)
                .hasMessage("rule " + OneRulePack.RULE
                        + " has not come back after 1 s; its pack stranger is off until the program starts again");

        model.planAgain();

        assertThat(await(model)).isInstanceOf(Answer.Ready.class);
        assertThat(model.state().offers().get(0).plan().rightHand().costByRule())
                .doesNotContainKey(OneRulePack.RULE);
        System.setProperty("test.rule.may.end", "true");
    }

    @Test
    void aRuleThatIsStuckInWorkNobodyWaitsForIsGivenUpToo() throws Exception {
        PlannerModel model =
                new PlannerModel(packs(ENDLESS), new ThreadBackground(news::add, "planning"), SmallTunes.setup(), 1);
        model.open(SmallTunes.open(SmallTunes.WALTZ));
        Thread.sleep(500);
        model.setWishes(Wishes.NONE.withPlans(2));

        Answer.Failed failed = (Answer.Failed) await(model);

        assertThat(failed.cause()).isInstanceOf(RuleStuckException.class);
        model.planAgain();
        assertThat(await(model)).isInstanceOf(Answer.Ready.class);
        assertThat(model.state().offers()).hasSize(2);
        System.setProperty("test.rule.may.end", "true");
    }

    @Test
    void withoutRulesFromJarsNothingIsWatched() {
        SteppedBackground background = new SteppedBackground();
        PlannerModel model = new PlannerModel(States.packs(), background, SmallTunes.setup());
        model.open(SmallTunes.open(SmallTunes.WALTZ));

        background.timePasses();
        background.timePasses();
        background.timePasses();
        background.runAll();

        assertThat(background.abandoned()).isZero();
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
    }
}
