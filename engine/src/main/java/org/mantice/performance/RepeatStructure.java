package org.mantice.performance;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.mantice.tune.Barlines;

/** Which backward repeat belongs to which start, and which endings belong together. */
final class RepeatStructure {
    /** A repeated passage; {@code times} in all. */
    record Repeat(int start, int end, int times, boolean afterJump) {}

    /**
     * One ending.
     *
     * @param returns a backward repeat closes it
     * @param returnAt the measure of that repeat, else the last one
     */
    record Ending(int start, int end, List<Integer> numbers, boolean returns, int returnAt) {}

    /**
     * Endings that follow each other.
     *
     * @param base where the passage begins that they end
     * @param total how often that passage is played
     * @param onward the last time through no ending is played: what follows stands for it
     */
    record Group(int base, List<Ending> endings, int total, boolean onward, boolean afterJump) {
        int start() {
            return endings.get(0).start();
        }

        int end() {
            return endings.get(endings.size() - 1).end();
        }

        /** The ending that a measure of the group lies in. */
        Ending endingAt(int measure) {
            for (Ending ending : endings) if (measure <= ending.end()) return ending;
            throw new IllegalArgumentException("measure is " + measure + "; allowed: up to " + end());
        }

        /** The first measure of the ending that is due; the most particular one where several name the round. */
        int measureFor(int round) {
            List<Integer> numbers = numbersOf(endings);
            if (round > numbers.size()) {
                if (onward) return end() + 1;
                return endings.get(endings.size() - 1).start();
            }
            int number = numbers.get(round - 1);
            return endings.stream()
                    .filter(ending -> ending.numbers().contains(number))
                    .min(Comparator.comparingInt(ending -> ending.numbers().size()))
                    .orElseThrow()
                    .start();
        }
    }

    private final Repeat[] closing;
    private final Group[] groupAt;

    private RepeatStructure(int measures) {
        closing = new Repeat[measures];
        groupAt = new Group[measures];
    }

    /** Empty if no repeat closes at the measure. Endings' repeats are not among these. */
    Optional<Repeat> repeatClosing(int measure) {
        return Optional.ofNullable(closing[measure]);
    }

    /** Empty outside endings. */
    Optional<Group> groupAt(int measure) {
        return Optional.ofNullable(groupAt[measure]);
    }

    /** Empty where no first ending begins. */
    Optional<Group> groupStarting(int measure) {
        return groupAt(measure).filter(group -> group.start() == measure);
    }

    static RepeatStructure of(List<Barlines> barlines) {
        RepeatStructure structure = new RepeatStructure(barlines.size());
        List<List<Ending>> groups = groups(extents(barlines));
        Deque<Integer> open = new ArrayDeque<>();
        int implicit = 0;
        int nextGroup = 0;
        for (int i = 0; i < barlines.size(); i++) {
            if (nextGroup < groups.size() && groups.get(nextGroup).get(0).start() == i) {
                structure.place(groups.get(nextGroup++), open.isEmpty() ? implicit : open.element(), barlines);
            }
            Optional<Group> group = structure.groupAt(i);
            if (barlines.get(i).repeatStart()) open.push(i);
            if (barlines.get(i).repeatEnd().isPresent()) {
                boolean within = !open.isEmpty()
                        && group.isPresent()
                        && open.element() >= group.get().endingAt(i).start();
                if (group.isEmpty() || within) {
                    int start = open.isEmpty() ? implicit : open.pop();
                    structure.closing[i] = repeat(start, i, barlines.get(i));
                    if (!within) implicit = i + 1;
                }
            }
            if (group.isPresent() && group.get().end() == i) {
                int base = group.get().base();
                int last = group.get().endingAt(i).start();
                open.removeIf(start -> start >= base && start < last);
                implicit = i + 1;
            }
        }
        return structure;
    }

    private static Repeat repeat(int start, int end, Barlines signs) {
        return new Repeat(start, end, signs.repeatEnd().orElseThrow(), signs.repeatAfterJump());
    }

    private void place(List<Ending> extents, int base, List<Barlines> barlines) {
        List<Ending> endings =
                extents.stream().map(extent -> withReturn(extent, barlines)).toList();
        Ending last = endings.get(endings.size() - 1);
        boolean alone = endings.size() == 1;
        boolean onward = alone && last.returns() && last.end() + 1 < barlines.size();
        int numbers = numbersOf(endings).size();
        int total = !alone ? numbers : !last.returns() ? 1 : onward ? numbers + 1 : Math.max(2, numbers);
        boolean afterJump = endings.stream().filter(Ending::returns).allMatch(ending -> barlines.get(ending.returnAt())
                .repeatAfterJump());
        Group group = new Group(base, endings, total, onward, afterJump);
        for (Ending ending : endings) for (int i = ending.start(); i <= ending.end(); i++) groupAt[i] = group;
    }

    /** Finds the repeat that closes an ending: the last one in it that no forward repeat inside the ending opens. */
    private static Ending withReturn(Ending extent, List<Barlines> barlines) {
        int opened = 0;
        int returnAt = -1;
        for (int i = extent.start(); i <= extent.end(); i++) {
            if (barlines.get(i).repeatStart()) opened++;
            if (barlines.get(i).repeatEnd().isEmpty()) continue;
            if (opened > 0) opened--;
            else returnAt = i;
        }
        boolean returns = returnAt >= 0;
        return new Ending(extent.start(), extent.end(), extent.numbers(), returns, returns ? returnAt : extent.end());
    }

    private static List<Integer> numbersOf(List<Ending> endings) {
        TreeSet<Integer> numbers = new TreeSet<>();
        endings.forEach(ending -> numbers.addAll(ending.numbers()));
        return List.copyOf(numbers);
    }

    private static List<List<Ending>> groups(List<Ending> extents) {
        List<List<Ending>> groups = new ArrayList<>();
        int end = -2;
        for (Ending extent : extents) {
            if (extent.start() != end + 1) groups.add(new ArrayList<>());
            groups.get(groups.size() - 1).add(extent);
            end = extent.end();
        }
        return groups;
    }

    private static List<Ending> extents(List<Barlines> barlines) {
        List<Ending> extents = new ArrayList<>();
        for (int i = 0; i < barlines.size(); i++)
            if (!barlines.get(i).endingStart().isEmpty()) {
                int end = endOf(i, barlines);
                extents.add(new Ending(i, end, barlines.get(i).endingStart(), false, end));
            }
        return extents;
    }

    /**
     * The last measure of the ending that begins at {@code start}: where it says so, else at its repeat, else the same
     * measure. Where the repeat stands a little later, just before the next ending, the ending goes on to it.
     */
    private static int endOf(int start, List<Barlines> barlines) {
        int limit = start;
        while (limit + 1 < barlines.size()
                && barlines.get(limit + 1).endingStart().isEmpty()) limit++;
        int end = -1;
        for (int i = start; i <= limit && end < 0; i++) if (barlines.get(i).endingStop()) end = i;
        for (int i = start; i <= limit && end < 0; i++)
            if (barlines.get(i).repeatEnd().isPresent()) end = i;
        if (end < 0) return start;
        boolean another = limit + 1 < barlines.size();
        if (!another || barlines.get(limit).repeatEnd().isEmpty()) return end;
        for (int i = start; i <= limit; i++) {
            if (i <= end && barlines.get(i).repeatEnd().isPresent()) return end;
            if (i > end && barlines.get(i).repeatStart()) return end;
        }
        return limit;
    }
}
