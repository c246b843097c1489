package org.mantice.app.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.editing.EditedTune;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Decision;
import org.mantice.plan.Figures;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.Skipped;
import org.mantice.reading.TuneReader;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** States of the planner for tests: an example tune, really planned, without the model that would do it. */
public final class States {
    /** The shipped tunes; all can be played on the largest preset. */
    public static final List<String> TUNES = List.of(
            "five-steps-to-the-ferry",
            "fog-over-grebe-holm",
            "lanterns-at-the-weir",
            "seven-geese-in-the-schoolyard",
            "the-millers-wet-boots",
            "the-ropewalk-march",
            "the-rusty-gate",
            "what-the-harbour-bell-said");

    private static final Packs PACKS = Packs.ofClassPath();
    private static final Map<String, States> PLANNED = new LinkedHashMap<>();

    private record Key(int measure, WrittenPlace place, Decision.Kind kind, int part, int occurrence)
            implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            return Comparator.comparingInt(Key::measure)
                    .thenComparing(Key::place)
                    .thenComparing(Key::kind)
                    .thenComparingInt(Key::part)
                    .thenComparingInt(Key::occurrence)
                    .compare(this, other);
        }
    }

    private final OpenTune tune;
    private final Setup setup;
    private final Planning planning;
    private final List<Offer> offers;

    private States(String name, Accordion accordion, Player player, List<Lock> locks) {
        this.tune = open(name);
        this.setup = new Setup(accordion, player, Wishes.NONE, locks);
        this.planning = new Planner(PACKS.providers())
                .prepare(new PlanRequest(
                        tune.read().tune(),
                        accordion,
                        player,
                        setup.wishes().settings(tune.read().tune()),
                        locks,
                        Wishes.USUAL_PLANS));
        Alternatives answer = planning.alternatives(player.taste(), locks, Wishes.USUAL_PLANS, plan -> {}, () -> false);
        this.offers = offers(((Alternatives.Found) answer).plans());
    }

    /** Four plans of an example, on the largest preset by a medium hand; planned once for all tests. */
    public static synchronized States of(String name) {
        return PLANNED.computeIfAbsent(
                name,
                tune -> new States(
                        tune,
                        AccordionPresets.get("full-41-key-120-bass"),
                        PlayerPresets.get("medium-hand"),
                        List.of()));
    }

    public static States of(String name, Accordion accordion, Player player, List<Lock> locks) {
        return new States(name, accordion, player, locks);
    }

    /** An example tune as it is when opened. @param name without folder and suffix */
    public static OpenTune open(String name) {
        String file = "examples/tunes/" + name + ".musicxml";
        try (InputStream in = States.class.getResourceAsStream("/" + file)) {
            ReadTune read = new TuneReader().read(file, in.readAllBytes(), ReadOptions.DEFAULT);
            return new OpenTune(file, read, Optional.empty());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Packs packs() {
        return PACKS;
    }

    public Planning planning() {
        return planning;
    }

    public List<Offer> offers() {
        return offers;
    }

    /** Planned, nothing selected. @param compared indexes of offers, ascending */
    public PlannerState comparing(Integer... compared) {
        return answered(new Answer.Ready(offers, Wishes.USUAL_PLANS), List.of(compared));
    }

    /** Planned, all offers compared. */
    public PlannerState comparingAll() {
        return comparing(IntStream.range(0, offers.size()).boxed().toArray(Integer[]::new));
    }

    public PlannerState answered(Answer answer, List<Integer> compared) {
        return new PlannerState(
                Optional.of(tune),
                Optional.of(EditedTune.unedited(tune.read().tune())),
                setup,
                answer,
                Optional.of(planning.performance()),
                compared,
                answer.offers().isEmpty() ? -1 : 0,
                differences(compared),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                new Reading.AsWritten(),
                EnumSet.allOf(Strip.class),
                Optional.empty(),
                Optional.empty(),
                false,
                List.of());
    }

    /** No tune open. */
    public static PlannerState nothing() {
        Setup setup = Planners.SETUP;
        return new PlannerState(
                Optional.empty(),
                Optional.empty(),
                setup,
                new Answer.Nothing(),
                Optional.empty(),
                List.of(),
                -1,
                List.of(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                new Reading.AsWritten(),
                EnumSet.allOf(Strip.class),
                Optional.empty(),
                Optional.empty(),
                false,
                List.of());
    }

    /** The same but for what is given. */
    public static PlannerState with(
            PlannerState state, Reading reading, OptionalInt differenceAt, Optional<Selection> selection) {
        return new PlannerState(
                state.tune(),
                state.edited(),
                state.setup(),
                state.answer(),
                state.performance(),
                state.compared(),
                state.chosen(),
                state.differences(),
                differenceAt,
                selection,
                state.insight(),
                reading,
                state.strips(),
                state.undo(),
                state.redo(),
                state.unsaved(),
                state.fallen());
    }

    /** The same under other wishes, nothing planned anew. */
    public static PlannerState wishing(PlannerState state, Wishes wishes) {
        Setup setup = new Setup(state.setup().accordion(), state.setup().player(), wishes, List.of());
        return changed(state, state.tune(), setup, state.answer());
    }

    public static PlannerState answering(PlannerState state, Answer answer) {
        return changed(state, state.tune(), state.setup(), answer);
    }

    /** The same tune from a file of which the tune does not hold all. */
    public static PlannerState leavingOut(PlannerState state, List<Skipped> skipped) {
        OpenTune open = state.tune().orElseThrow();
        ReadTune read = open.read();
        OpenTune other = new OpenTune(
                open.fileName(),
                new ReadTune(read.tune(), skipped, read.parts(), read.melody(), read.fingerprint()),
                open.part());
        return changed(state, Optional.of(other), state.setup(), state.answer());
    }

    private static PlannerState changed(PlannerState state, Optional<OpenTune> tune, Setup setup, Answer answer) {
        return new PlannerState(
                tune,
                state.edited(),
                setup,
                answer,
                state.performance(),
                state.compared(),
                state.chosen(),
                state.differences(),
                state.differenceAt(),
                state.selection(),
                state.insight(),
                state.reading(),
                state.strips(),
                state.undo(),
                state.redo(),
                state.unsaved(),
                state.fallen());
    }

    private List<Offer> offers(List<Plan> plans) {
        List<Offer> found = new ArrayList<>();
        for (Plan plan : plans)
            found.add(new Offer(
                    String.valueOf((char) ('A' + found.size())),
                    plan,
                    Figures.of(plan, planning.performance()),
                    plan.cost(setup.player().taste())));
        return List.copyOf(found);
    }

    private List<Difference> differences(List<Integer> compared) {
        Map<Key, List<Optional<String>>> values = new TreeMap<>();
        for (int i = 0; i < compared.size(); i++) {
            int column = i;
            decisions(offers.get(compared.get(i)).plan()).forEach((key, value) -> values.computeIfAbsent(
                            key, k -> new ArrayList<>(java.util.Collections.nCopies(compared.size(), Optional.empty())))
                    .set(column, Optional.of(value)));
        }
        List<Difference> differences = new ArrayList<>();
        values.forEach((key, row) -> {
            if (Set.copyOf(row).size() > 1)
                differences.add(new Difference(
                        key.kind(),
                        new Spot(strip(key.kind()), key.measure(), passOf(key.measure()), key.place(), key.part()),
                        row));
        });
        return differences;
    }

    private int passOf(int measure) {
        return planning.performance().measures().get(measure).pass();
    }

    private static Strip strip(Decision.Kind kind) {
        return switch (kind) {
            case REGISTER, OCTAVE -> Strip.REGISTERS;
            case BUTTONS -> Strip.BUTTONS;
            case TURN -> Strip.BELLOWS;
            case FINGER, HAND_PLACE -> Strip.FINGERS;
        };
    }

    private Map<Key, String> decisions(Plan plan) {
        Map<Key, String> all = new TreeMap<>();
        Performance performance = planning.performance();
        for (Pass pass : performance.passes()) {
            WrittenPlace start = new WrittenPlace(0, MusicalTime.ZERO);
            put(
                    all,
                    pass.firstMeasure(),
                    start,
                    Decision.Kind.REGISTER,
                    0,
                    plan.variation().pass(pass.number()).switchId());
            put(
                    all,
                    pass.firstMeasure(),
                    start,
                    Decision.Kind.OCTAVE,
                    0,
                    String.valueOf(plan.variation().pass(pass.number()).octave()));
        }
        for (LeftHandPlan.Event event : plan.leftHand().events())
            put(all, event.measure(), event.place(), Decision.Kind.BUTTONS, 0, LeftHandPlan.name(event.buttons()));
        for (BellowsPlan.Stroke stroke : plan.bellows().strokes())
            put(
                    all,
                    stroke.measure(),
                    stroke.place(),
                    Decision.Kind.TURN,
                    0,
                    stroke.direction().name().toLowerCase(java.util.Locale.ROOT));
        for (RightHandPlan.Event event : plan.rightHand().events()) {
            int measure = performance.treble().get(event.moment()).measure();
            for (int note = 0; note < event.fingers().size(); note++)
                put(
                        all,
                        measure,
                        event.place(),
                        Decision.Kind.FINGER,
                        note,
                        String.valueOf(event.fingers().get(note)));
            put(all, measure, event.place(), Decision.Kind.HAND_PLACE, 0, String.valueOf(event.handPlace()));
        }
        return all;
    }

    private static void put(
            Map<Key, String> all, int measure, WrittenPlace place, Decision.Kind kind, int part, String value) {
        int occurrence = 1;
        while (all.containsKey(new Key(measure, place, kind, part, occurrence))) occurrence++;
        all.put(new Key(measure, place, kind, part, occurrence), value);
    }
}
