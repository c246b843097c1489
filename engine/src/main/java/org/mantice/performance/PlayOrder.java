package org.mantice.performance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.mantice.performance.RepeatStructure.Ending;
import org.mantice.performance.RepeatStructure.Group;
import org.mantice.performance.RepeatStructure.Repeat;
import org.mantice.tune.Barlines;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;

/**
 * The written measures in the order in which they are played.
 *
 * <p>Read as a musician reads: a backward repeat goes to the nearest forward repeat still open, else to the end of the
 * repeat before it or the beginning; an ending is chosen by its numbers; a repeat is finished before a jump, a Fine or a
 * To Coda at the same barline is obeyed; after D.C. and D.S. repeats are taken again unless the repeat says otherwise;
 * each jump is taken once. Signs that make no sense (a coda that is nowhere, a repeat that never closes) are passed over.
 * Time and memory grow with the number of measures played, which is limited.
 */
public final class PlayOrder {
    /** An unrolled tune of more measures is refused; at 2 seconds a measure this is eleven hours. */
    public static final int MOST_MEASURES = 20_000;

    private final RepeatStructure structure;
    private final List<Barlines> barlines;
    private final int[] repeatRounds;
    private final int[] groupRounds;
    private final boolean[] jumpTaken;
    private int lastJump = -1;
    private boolean towardsCoda;

    private PlayOrder(List<Barlines> barlines) {
        this.barlines = barlines;
        this.structure = RepeatStructure.of(barlines);
        this.repeatRounds = new int[barlines.size()];
        this.groupRounds = new int[barlines.size()];
        this.jumpTaken = new boolean[barlines.size()];
        startCountingAnew();
    }

    /**
     * The order for one time through, as indexes of written measures.
     *
     * @throws TuneException if it has more than {@link #MOST_MEASURES} measures
     */
    public static List<Integer> of(Tune tune) {
        return of(tune, 1);
    }

    /** The order for one time through, refused if {@code timesThrough} times as many measures are too many. */
    static List<Integer> of(Tune tune, int timesThrough) {
        List<Barlines> barlines =
                tune.measures().stream().map(Measure::barlines).toList();
        List<Integer> order = new PlayOrder(barlines).play(MOST_MEASURES / timesThrough);
        if (order.isEmpty())
            throw new TuneException(
                    "TUNE_TOO_LONG",
                    List.of(String.valueOf(MOST_MEASURES)),
                    tune,
                    "with its repeats it has more than " + MOST_MEASURES + " measures; allowed: up to that many");
        return order;
    }

    /** Empty if there are more than {@code most} measures. */
    private List<Integer> play(int most) {
        List<Integer> order = new ArrayList<>();
        int at = 0;
        while (at < barlines.size()) {
            at = entered(at);
            if (at >= barlines.size()) break;
            if (order.size() == most) return List.of();
            order.add(at);
            at = after(at);
        }
        return List.copyOf(order);
    }

    /** Where play really goes when it reaches a measure: past endings that are not due. */
    private int entered(int measure) {
        int at = measure;
        while (at < barlines.size()) {
            Optional<Group> starting = structure.groupStarting(at);
            if (starting.isEmpty()) return at;
            Group group = starting.get();
            int target = group.measureFor(isLastTime(group) ? group.total() : groupRounds[at]);
            if (target <= group.end()) return target;
            groupRounds[at] = 1;
            at = target;
        }
        return at;
    }

    private boolean isLastTime(Group group) {
        return groupRounds[group.start()] >= group.total() || lastJump >= 0 && !group.afterJump();
    }

    private int after(int at) {
        Optional<Repeat> repeat = structure.repeatClosing(at);
        if (repeat.isPresent()) {
            boolean mayRepeat = lastJump < 0 || repeat.get().afterJump();
            if (mayRepeat && repeatRounds[at] < repeat.get().times()) {
                repeatRounds[at]++;
                return repeat.get().start();
            }
            repeatRounds[at] = 1;
        }
        Optional<Group> group = structure.groupAt(at);
        return group.isPresent() ? afterInEnding(at, group.get()) : afterSigns(at, at + 1);
    }

    private int afterInEnding(int at, Group group) {
        Ending ending = group.endingAt(at);
        if (at == ending.returnAt() && !isLastTime(group)) {
            boolean last = ending.end() == group.end();
            if (ending.returns() || !last && !jumps(at)) {
                groupRounds[group.start()]++;
                return group.base();
            }
            if (!last) {
                int due = Math.min(group.total(), groupRounds[group.start()] + 1);
                int target = jumpFrom(at);
                groupRounds[group.start()] = due;
                return target;
            }
        }
        int next = afterSigns(at, at == ending.end() ? group.end() + 1 : at + 1);
        if (next == group.end() + 1) groupRounds[group.start()] = 1;
        return next;
    }

    /** @param next where play goes on if no sign at the right barline is due */
    private int afterSigns(int at, int next) {
        Barlines signs = barlines.get(at);
        if (lastJump >= 0 && signs.fine()) return barlines.size();
        if (towardsCoda && signs.toCoda() && codaFrom(at) >= 0) {
            int coda = codaFrom(at);
            towardsCoda = false;
            startCountingAnew();
            return coda;
        }
        return jumps(at) ? jumpFrom(at) : next;
    }

    private boolean jumps(int at) {
        return barlines.get(at).jump().isPresent() && !jumpTaken[at];
    }

    private int jumpFrom(int at) {
        jumpTaken[at] = true;
        lastJump = at;
        towardsCoda = true;
        startCountingAnew();
        return barlines.get(at).jump().orElseThrow() == Barlines.Jump.DA_CAPO ? 0 : segnoFor(at);
    }

    private int segnoFor(int at) {
        for (int i = at; i >= 0; i--) if (barlines.get(i).segno()) return i;
        for (int i = at; i < barlines.size(); i++) if (barlines.get(i).segno()) return i;
        return 0;
    }

    /** The coda is written after the jump; a sign before it only repeats where to leave. */
    private int codaFrom(int at) {
        for (int i = lastJump + 1; i < barlines.size(); i++) if (barlines.get(i).coda()) return i;
        for (int i = at + 1; i < barlines.size(); i++) if (barlines.get(i).coda()) return i;
        return -1;
    }

    private void startCountingAnew() {
        Arrays.fill(repeatRounds, 1);
        Arrays.fill(groupRounds, 1);
    }
}
