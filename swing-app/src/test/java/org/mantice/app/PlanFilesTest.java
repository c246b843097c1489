package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.tune;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.app.Calls.Answer;
import org.mantice.app.files.PlanFiles;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.Wishes;
import org.mantice.app.work.Opened;
import org.mantice.app.work.TuneOpening;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.pattern.Accompaniment;
import org.mantice.performance.ChordsPlayed;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.tune.Loudness;

/** A plan made by way of the window is, byte for byte, the one that the command line prints for the same options. */
class PlanFilesTest {
    private static final Packs PACKS = Packs.ofClassPath();
    private static final Accordion ACCORDION = AccordionPresets.get("standard-34-key-72-bass");
    private static final Player PLAYER = PlayerPresets.get("small-hand");

    private static String json(Path file, Optional<String> part, Wishes wishes, Taste taste, List<Lock> locks) {
        OpenTune tune = ((Opened.Tune) TuneOpening.open(file, part)).tune();
        Planning planning = new Planner(PACKS.providers())
                .prepare(new PlanRequest(
                        tune.read().tune(),
                        ACCORDION,
                        PLAYER,
                        wishes.settings(tune.read().tune()),
                        List.of(),
                        wishes.plans()));
        Alternatives.Found found =
                (Alternatives.Found) planning.alternatives(taste, locks, wishes.plans(), plan -> {}, () -> false);
        Player player = new Player(
                PLAYER.id(),
                PLAYER.name(),
                PLAYER.handSpanTenths(),
                PLAYER.bassMethod(),
                PLAYER.jumps(),
                PLAYER.mayTurnInHeldNote(),
                taste);
        return new PlanFiles(tune.fileName(), tune.read(), tune.part(), PACKS)
                .of(planning, found.best(), player, locks)
                .json();
    }

    private static String printed(Path file, Object... options) {
        Object[] all = new Object[options.length + 7];
        Object[] first = {"plan", file, "--json", "--accordion", ACCORDION.id(), "--player", PLAYER.id()};
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(options, 0, all, first.length, options.length);
        Answer answer = call(all);
        assertThat(answer.code()).as(answer.err()).isZero();
        return answer.out();
    }

    @Test
    void planOfATuneAsItIsEqualsTheCommandLines() {
        Path file = tune("the-rusty-gate").toAbsolutePath();

        String ours = json(file, Optional.empty(), Wishes.NONE.withPlans(3), Taste.PLAIN, List.of());

        assertThat(ours).isEqualTo(printed(file));
    }

    @Test
    void planUnderWishesWeightsAndLocksThatCameLaterEqualsTheCommandLines() {
        Path file = tune("lanterns-at-the-weir");
        Wishes wishes = new Wishes(
                OptionalInt.of(132),
                OptionalInt.of(2),
                -2,
                Optional.of(Loudness.MF),
                ChordsPlayed.USUAL,
                2,
                Accompaniment.NONE);
        Taste taste = Taste.PLAIN.with("variation.growing", 500).with("bellows.evenness", 2_000);
        List<Lock> locks = List.of(new Lock.Octave(OptionalInt.of(2), 0));

        String ours = json(file, Optional.of("1"), wishes, taste, locks);

        assertThat(ours)
                .isEqualTo(printed(
                        file,
                        "--tempo",
                        132,
                        "--times",
                        2,
                        "--transpose",
                        -2,
                        "--loudness",
                        "mf",
                        "--alternatives",
                        2,
                        "--part",
                        1,
                        "--weight",
                        "variation.growing=500",
                        "--weight",
                        "bellows.evenness=2000",
                        "--lock",
                        "pass2:octave=0"));
    }
}
