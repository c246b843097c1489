package org.mantice.layer.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.Bellows;
import org.mantice.instrument.ReedFlow;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.plan.BellowsPlan;
import org.mantice.player.Taste;
import org.mantice.tune.Loudness;
import org.mantice.tune.Tunes;

class AirTableTest {
    private static final String TUNE = "C4 h, E4 q | G4 h. | A4 h, F4 q | D4 h.";

    private static Scene scene(int tempo) {
        return Scene.of(Tunes.melody("3/4", TUNE), tempo, 1);
    }

    /** What one 8' reed at mf takes in so many seconds, by hand from the profile. */
    @Test
    void oneReedAtMezzoForteTakesTheCapacityInTheTimeTheProfileSays() {
        Scene scene = Scene.of(Tunes.melody("4/4", "!mf C4~ w | ~C4~ w | ~C4 w"), 60, 1)
                .with(Scene.SILENT)
                .on("full-41-key-120-bass", "clarinet");
        Bellows bellows = scene.accordion().bellows();
        long seconds = (scene.performance().treble().get(0).releaseMicros()
                        - scene.performance().treble().get(0).onsetMicros())
                / 1_000_000;

        long exact = seconds * bellows.comfortableMillilitres() / bellows.capacityReedSeconds();

        assertThat(seconds).isBetween(11L, 12L);
        assertThat((long) scene.ground().air.total()).isBetween(exact, exact + bellows.comfortableMillilitres() / 70);
    }

    @Test
    void twiceTheDurationsTakeTwiceTheAirSoNothingLeaks() {
        Ground fast = scene(120).ground();
        Ground slow = scene(60).ground();

        assertThat(slow.last()).isEqualTo(fast.last());
        for (int place = 0; place < fast.last(); place++) {
            assertThat(slow.air.unitsBetween(place, place + 1)).isEqualTo(2 * fast.air.unitsBetween(place, place + 1));
            assertThat(slow.air.between(place, place + 1))
                    .isBetween(2 * fast.air.between(place, place + 1) - 1, 2 * fast.air.between(place, place + 1));
        }
    }

    @Test
    void sumsOfStretchesAreExact() {
        AirTable air = scene(77).ground().air;
        int last = scene(77).ground().last();
        for (int from = 0; from < last; from++)
            for (int to = from + 1; to <= last; to++)
                assertThat(air.between(0, from) + air.between(from, to)).isEqualTo(air.between(0, to));
    }

    @Test
    void everyStretchIsRoundedUpByLessThanAMillilitre() {
        Scene scene = scene(77);
        Bellows bellows = scene.accordion().bellows();
        AirTable air = scene.ground().air;
        for (int place = 0; place < scene.ground().last(); place++) {
            double exact = (double) air.unitsBetween(place, place + 1)
                    / 1e14
                    * bellows.comfortableMillilitres()
                    / bellows.capacityReedSeconds();
            assertThat((double) air.between(place, place + 1)).isBetween(exact - 1e-6, exact + 1);
        }
    }

    /** O42: flow grows with the square root of pressure; the preset's forte has twice the pressure of mezzo-forte. */
    @Test
    void forteTakesTheRootOfTwoTimesTheAirOfMezzoForte() {
        long mezzo = totalUnits("!mf " + TUNE);
        long forte = totalUnits("!f " + TUNE);

        assertThat((double) forte / mezzo).isBetween(1.412, 1.416);
        assertThat(ReedFlow.litresPerSecond(1_000, 10) / ReedFlow.litresPerSecond(500, 10))
                .isBetween(1.413, 1.415);
    }

    private static long totalUnits(String melody) {
        Ground ground = Scene.of(Tunes.melody("3/4", melody), 100, 1).ground();
        return ground.air.unitsBetween(0, ground.last());
    }

    @Test
    void loudnessBetweenTwoMarksLiesOnAStraightLine() {
        var factors = scene(100).accordion().bellows().appetites().loudness();
        long mezzo = AirTable.loudnessFactor(factors, 400);
        long forte = AirTable.loudnessFactor(factors, 500);

        assertThat(mezzo).isEqualTo(100L * factors.get(Loudness.MF));
        assertThat(2 * AirTable.loudnessFactor(factors, 450)).isEqualTo(mezzo + forte);
        assertThat(AirTable.loudnessFactor(factors, 700)).isEqualTo(100L * factors.get(Loudness.FFF));
    }

    /** O45, derived: more reeds on each key take more air in the ratio of their appetites, and no stroke fits longer. */
    @Test
    void masterTakesMoreAirThanClarinetAndAStrokeReachesNoFurther() {
        Scene clarinet = scene(60).with(Scene.SILENT).on("full-41-key-120-bass", "clarinet");
        Scene master = scene(60).with(Scene.SILENT).on("full-41-key-120-bass", "master");
        Bellows.Appetites appetites = clarinet.accordion().bellows().appetites();
        long one = AirTable.appetite(appetites, register(clarinet));
        long all = AirTable.appetite(appetites, register(master));
        Ground light = clarinet.ground();
        Ground heavy = master.ground();

        assertThat(heavy.air.unitsBetween(0, heavy.last()) * one)
                .isEqualTo(light.air.unitsBetween(0, light.last()) * all);
        StrokePrices lightPrices = new StrokePrices(light, clarinet.book());
        StrokePrices heavyPrices = new StrokePrices(heavy, master.book());
        for (int place = 0; place < light.last(); place++)
            assertThat(heavyPrices.endOf(place)).isLessThanOrEqualTo(lightPrices.endOf(place));
    }

    private static org.mantice.instrument.RegisterSwitch register(Scene scene) {
        String id = scene.variation().pass(1).switchId();
        return scene.accordion().treble().switches().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void moreReedsNeverNeedFewerTurns() {
        long before = 0;
        for (String register : List.of("clarinet", "violin", "master")) {
            Scene scene =
                    Scene.of(Tunes.melody("3/4", TUNE + " | " + TUNE), 30, 2).on("full-41-key-120-bass", register);
            Outcome<BellowsPlan> outcome =
                    scene.layerFrom(0).best(new Question(fewestTurns(), List.of(), 1, () -> false));
            long turns = ((Outcome.Found<BellowsPlan>) outcome).best().turns();
            assertThat(turns).isGreaterThanOrEqualTo(before);
            before = turns;
        }
    }

    private static Taste fewestTurns() {
        Taste taste = Taste.PLAIN;
        for (String rule : List.of("place", "opening", "stroke", "evenness", "stolen-time", "pickup"))
            taste = taste.with("bellows." + rule, 0);
        return taste;
    }
}
