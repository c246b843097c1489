package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mantice.app.sheet.Strip;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.Choice;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;

class PlannerModelTest {
    private static final Setup SETUP = new Setup(
            AccordionPresets.get("full-41-key-120-bass"),
            PlayerPresets.get("medium-hand"),
            Wishes.NONE,
            List.of());

    private final PlannerModel model = new PlannerModel(Packs.ofClassPath(), new DirectBackground(), SETUP);
    private final List<PlannerState> seen = new ArrayList<>();

    private PlannerModel open(String tune) {
        model.addListener(seen::add);
        model.open(States.open(tune));
        return model;
    }

    @Test
    void offersArriveOneByOneAndAreReadyInOrderOfCost() {
        open("the-rusty-gate");

        assertThat(seen).extracting(state -> state.offers().size()).isSorted();
        assertThat(seen).extracting(PlannerState::isWorking).startsWith(true).endsWith(false);
        PlannerState state = model.state();
        assertThat(state.answer()).isInstanceOf(Answer.Ready.class);
        assertThat(state.offers()).extracting(Offer::letter).startsWith("A", "B");
        assertThat(state.offers()).extracting(Offer::cost).isSorted();
        assertThat(state.compared()).containsExactly(0, 1);
        assertThat(state.chosen()).isZero();
        assertThat(state.differences()).isNotEmpty();
        assertThat(state.performance()).isPresent();
    }

    @Test
    void steppingThroughDifferencesSelectsTheirPlacesWithWhatIsKnownOfThem() {
        open("the-rusty-gate").nextDifference();

        PlannerState state = model.state();
        assertThat(state.differenceAt()).hasValue(0);
        assertThat(state.selection().orElseThrow().spot())
                .isEqualTo(state.differences().get(0).spot());
        assertThat(state.insight().orElseThrow().choices()).hasSizeGreaterThan(1);
    }

    @Test
    void anotherFingerIsSetAndHeldByEveryPlan() {
        open("the-rusty-gate");
        Site site = Site.of(
                        model.state().offers().get(0).plan(),
                        model.state().performance().orElseThrow())
                .stream()
                .filter(one -> one.spot().strip() == Strip.FINGERS)
                .skip(20)
                .findFirst()
                .orElseThrow();
        model.select(Optional.of(new Selection(0, site.spot())));
        Choice other = model.state().insight().orElseThrow().choices().stream()
                .filter(choice -> choice.extraCost() > 0)
                .findFirst()
                .orElseThrow();

        model.set(other, true);

        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        assertThat(model.state().setup().locks()).hasSize(1).first().isInstanceOf(Lock.Finger.class);
        for (Offer offer : model.state().offers())
            assertThat(offer.plan().rightHand().decisions())
                    .filteredOn(decision -> decision.kind() == Decision.Kind.FINGER
                            && decision.place().equals(site.spot().place())
                            && decision.part() == 0)
                    .extracting(Decision::value)
                    .containsOnly(other.decision().value());
        assertThat(model.state().undo()).contains("model.did.lock");
        assertThat(model.state().unsaved()).isTrue();
    }
}
