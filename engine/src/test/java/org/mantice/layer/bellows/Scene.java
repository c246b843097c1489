package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.rule.bellows.BellowsRules;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** All that a bellows layer needs, with a left hand that presses a bass on the first beat and chords on the others. */
record Scene(
        Performance performance,
        VariationPlan variation,
        LeftHandPlan leftHand,
        Accordion accordion,
        Player player,
        RuleBook book) {
    static final LeftHandPlan SILENT = new LeftHandPlan(List.of(), new TreeMap<>(), List.of());

    static Scene of(Tune tune, int beatsPerMinute, int times) {
        return of(Performer.perform(
                tune,
                SettingsBuilder.of(tune)
                        .beatsPerMinute(beatsPerMinute)
                        .timesThrough(times)
                        .build()));
    }

    static Scene of(Performance performance) {
        Scene scene = new Scene(
                performance,
                register(performance, AccordionPresets.get("full-41-key-120-bass"), "violin"),
                SILENT,
                AccordionPresets.get("full-41-key-120-bass"),
                PlayerPresets.get("medium-hand"),
                RuleBook.of(List.of(new BellowsRules())));
        return scene.with(oomPah(performance));
    }

    Scene with(LeftHandPlan plan) {
        return new Scene(performance, variation, plan, accordion, player, book);
    }

    Scene with(RuleBook rules) {
        return new Scene(performance, variation, leftHand, accordion, player, rules);
    }

    Scene with(Player someone) {
        return new Scene(performance, variation, leftHand, accordion, someone, book);
    }

    Scene on(String preset, String switchId) {
        Accordion other = AccordionPresets.get(preset);
        return new Scene(performance, register(performance, other, switchId), leftHand, other, player, book);
    }

    BellowsLayer layer() {
        return BellowsLayer.of(performance, variation, leftHand, accordion, player, book);
    }

    BellowsLayer layerFrom(int startMillilitres) {
        return BellowsLayer.startingAt(startMillilitres, performance, variation, leftHand, accordion, player, book);
    }

    Ground ground() {
        return new Ground(performance, variation, leftHand, accordion, player);
    }

    static VariationPlan register(Performance performance, Accordion accordion, String switchId) {
        String id = accordion.treble().switches().stream()
                .map(RegisterSwitch::id)
                .filter(switchId::equals)
                .findFirst()
                .orElseThrow();
        List<VariationPlan.PassDecision> passes = performance.passes().stream()
                .map(pass -> new VariationPlan.PassDecision(pass.number(), id, 0))
                .toList();
        return new VariationPlan(passes, new TreeMap<>(), List.of());
    }

    /** Bass on the first beat, chord on the others, each for half of the beat. */
    static LeftHandPlan oomPah(Performance performance) {
        List<LeftHandPlan.Event> events = new ArrayList<>();
        MeasureLine line = new MeasureLine(performance);
        for (int measure = 0; measure < line.count(); measure++) {
            if (line.written(measure).pickup()) continue;
            PlayedMeasure played = line.played(measure);
            for (MusicalTime offset : line.beats(measure, MusicalTime.ZERO)) {
                MusicalTime beat = line.written(measure).meter().beat();
                long onset = line.microsAt(measure, offset);
                long release = line.microsAt(measure, offset.plus(beat.dividedBy(2)));
                BassRow row = offset.isZero() ? BassRow.BASS : BassRow.MAJOR;
                events.add(event(events.size(), played, offset, onset, release, row, LeftHandPlan.Jump.NONE));
            }
        }
        return new LeftHandPlan(events, new TreeMap<>(), List.of());
    }

    static LeftHandPlan.Event event(
            int index,
            PlayedMeasure played,
            MusicalTime offset,
            long onset,
            long release,
            BassRow row,
            LeftHandPlan.Jump jump) {
        return new LeftHandPlan.Event(
                index,
                played.pass(),
                played.index(),
                new WrittenPlace(played.written(), offset),
                played.start().plus(offset),
                onset,
                release,
                List.of(new BassButton(row, 0)),
                List.of(3),
                0,
                new TreeSet<>(),
                new TreeSet<>(),
                new TreeSet<>(),
                List.of(),
                jump,
                0,
                0);
    }
}
