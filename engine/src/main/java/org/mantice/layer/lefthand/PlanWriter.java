package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import org.mantice.instrument.BassButton;
import org.mantice.layer.Ledger;
import org.mantice.layer.Tables;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.LeftHandPlan.Jump;
import org.mantice.rule.ButtonMoment;

/** From states to a plan and back. */
final class PlanWriter {
    /** Columns from which a jump is large; common practice, no source. */
    static final int LARGE_FROM_COLUMNS = 3;

    private final LeftHandScore score;

    PlanWriter(LeftHandScore score) {
        this.score = score;
    }

    LeftHandPlan plan(int[] states) {
        List<LeftHandPlan.Event> events = new ArrayList<>();
        for (int i = 0; i < states.length; i++) events.add(event(states, i));
        Ledger ledger = new Ledger(score.tables.rules());
        for (int i = 0; i < states.length; i++) {
            Stage stage = score.stages.get(i);
            for (int rule = 0; rule < stage.costs().length; rule++)
                ledger.add(
                        score.tables.momentRules.get(rule),
                        Tables.cost(stage.costs()[rule][stage.space().ways().get(states[i])]),
                        stage.beat().pass(),
                        stage.beat().place());
            if (i == 0) continue;
            Stage.Moves moves = stage.fromBefore().orElseThrow();
            int move = moves.index(states[i - 1], states[i]);
            for (int rule = 0; rule < score.tables.pairRules.size(); rule++)
                ledger.add(
                        score.tables.pairRules.get(rule),
                        Tables.cost(moves.table().costs()[rule][move]),
                        stage.beat().pass(),
                        stage.beat().place());
        }
        return new LeftHandPlan(events, ledger.costs(), ledger.concessions());
    }

    private LeftHandPlan.Event event(int[] states, int index) {
        Stage stage = score.stages.get(index);
        Beat beat = stage.beat();
        ButtonMoment moment = stage.space().moment(states[index]);
        Candidate candidate = stage.space().candidate(states[index]);
        Candidate whole = chordOf(states, index);
        int columns =
                index == 0 ? 0 : moment.handColumn() - before(states, index).handColumn();
        long available =
                index == 0 ? 0 : stage.fromBefore().orElseThrow().table().availableMillis();
        return new LeftHandPlan.Event(
                index,
                beat.pass(),
                beat.measure(),
                beat.place(),
                beat.onset(),
                beat.onsetMicros(),
                beat.releaseMicros(),
                moment.buttons(),
                moment.fingers(),
                moment.handColumn(),
                candidate.sounding(),
                missing(beat, candidate, whole),
                foreign(candidate, whole),
                candidate.notes(),
                jump(columns, score.moveTime.millis(columns), available),
                score.moveTime.millis(columns),
                available);
    }

    private ButtonMoment before(int[] states, int index) {
        return score.stages.get(index - 1).space().moment(states[index - 1]);
    }

    /** The candidate that plays the chord in the span of a beat; the beat's own where the span has none. */
    private Candidate chordOf(int[] states, int index) {
        int span = score.stages.get(index).beat().span();
        int first = index;
        while (first > 0 && score.stages.get(first - 1).beat().span() == span) first--;
        for (int i = first; i < states.length && score.stages.get(i).beat().span() == span; i++)
            if (score.stages.get(i).beat().wanted() instanceof Wanted.OfChord chord && chord.part() != Wanted.Part.BASS)
                return score.stages.get(i).space().candidate(states[i]);
        return score.stages.get(index).space().candidate(states[index]);
    }

    private static SortedSet<Integer> missing(Beat beat, Candidate own, Candidate whole) {
        return beat.wanted() instanceof Wanted.OfChord ? whole.missing() : own.missing();
    }

    /** The tones are named once for a chord: at the very press that speaks for it, whatever equals it elsewhere. */
    @SuppressWarnings("ReferenceEquality")
    private static SortedSet<Integer> foreign(Candidate own, Candidate whole) {
        return own.bass() == ButtonMoment.Bass.NONE || own == whole ? own.foreign() : Candidate.NO_TONES;
    }

    /** Large from three columns on, and from two where the time does not suffice. */
    static Jump jump(int columns, long needed, long available) {
        int distance = Math.abs(columns);
        if (distance == 0) return Jump.NONE;
        return distance >= LARGE_FROM_COLUMNS || distance == LARGE_FROM_COLUMNS - 1 && needed > available
                ? Jump.LARGE
                : Jump.SMALL;
    }

    /** The chord buttons that were struck last in the span of a beat; empty where none were. */
    private List<BassButton> chordBefore(LeftHandPlan plan, int index) {
        int span = score.stages.get(index).beat().span();
        for (int i = index - 1; i >= 0 && score.stages.get(i).beat().span() == span; i--)
            if (score.stages.get(i).beat().wanted() instanceof Wanted.OfChord chord && chord.isChordAlone())
                return plan.events().get(i).buttons();
        return List.of();
    }

    /**
     * The line of the run that a press belongs to, {@link StateSpace#NO_LINE} where it belongs to none: the first that
     * holds all presses of the run.
     */
    private int lineOf(LeftHandPlan plan, int index) {
        if (!(score.stages.get(index).beat().wanted() instanceof Wanted.OfRun run)) return StateSpace.NO_LINE;
        int span = score.stages.get(index).beat().span();
        int first = index;
        while (first > 0 && isRun(first - 1, span)) first--;
        int end = index + 1;
        while (end < score.stages.size() && isRun(end, span)) end++;
        for (int line = 0; line < run.notes().size(); line++) if (follows(plan, first, end, line)) return line;
        return run.notes().size();
    }

    private boolean isRun(int index, int span) {
        Beat beat = score.stages.get(index).beat();
        return beat.span() == span && beat.wanted() instanceof Wanted.OfRun;
    }

    private boolean follows(LeftHandPlan plan, int first, int end, int line) {
        for (int i = first; i < end; i++) {
            LeftHandPlan.Event event = plan.events().get(i);
            StateSpace space = score.stages.get(i).space();
            if (space.find(event.buttons(), event.fingers(), event.handColumn(), List.of(), line) < 0) return false;
        }
        return true;
    }

    /**
     * The states of a plan.
     *
     * @throws IllegalArgumentException if it is not a plan of this layer
     */
    int[] states(LeftHandPlan plan) {
        if (plan.events().size() != score.stages.size())
            throw new IllegalArgumentException("events is " + plan.events().size() + " long; allowed: "
                    + score.stages.size() + ", one for each beat of the left hand");
        int[] states = new int[score.stages.size()];
        Arrays.setAll(states, i -> {
            LeftHandPlan.Event event = plan.events().get(i);
            Stage stage = score.stages.get(i);
            int state =
                    stage.beat().place().equals(event.place()) && stage.beat().pass() == event.pass()
                            ? stage.space()
                                    .find(
                                            event.buttons(),
                                            event.fingers(),
                                            event.handColumn(),
                                            chordBefore(plan, i),
                                            lineOf(plan, i))
                            : -1;
            if (state < 0)
                throw new IllegalArgumentException("event " + i + " is " + event.buttons() + " with fingers "
                        + event.fingers() + " at column " + event.handColumn() + "; allowed: what the hand can play at "
                        + stage.where());
            return state;
        });
        return states;
    }
}
