package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.mantice.reading.ScoreBarline.Location;

/**
 * Gathers numbered endings and mends what files get wrong: missing numbers follow on, an ending without an end stops
 * at its repeat or before the next one, one whose repeat comes later reaches to it. Endings that nothing repeats to are
 * left out.
 */
final class Endings {
    /** @param stop last measure of the ending, at or after its start */
    record Ending(int start, int stop, List<Integer> numbers) {}

    private record Open(int start, String numbers, String text) {}

    private final List<ScoreMeasure> measures;
    private final ReadReport report;
    private final List<Open> starts = new ArrayList<>();
    private final List<Integer> stops = new ArrayList<>();

    Endings(List<ScoreMeasure> measures, ReadReport report) {
        this.measures = measures;
        this.report = report;
    }

    void add(int measure, ScoreBarline barline) {
        ScoreBarline.ScoreEnding ending = barline.ending().orElseThrow();
        if (ending.start()) {
            int start = barline.location() == Location.RIGHT ? measure + 1 : measure;
            boolean again = starts.stream().anyMatch(open -> open.start == start);
            if (!again && start < measures.size()) starts.add(new Open(start, ending.numbers(), ending.text()));
        } else {
            int stop = barline.location() == Location.LEFT ? measure - 1 : measure;
            if (!stops.contains(stop)) stops.add(stop);
        }
    }

    /** Where endings begin, with their numbers, as the file has them. */
    Map<Integer, List<Integer>> written() {
        Map<Integer, List<Integer>> written = new TreeMap<>();
        for (Open open : starts) parse(open.numbers).ifPresent(numbers -> written.put(open.start, numbers));
        return written;
    }

    /** Last measures of endings, as the file has them. */
    List<Integer> stops() {
        return stops;
    }

    /**
     * Ends of endings 1 that an ending 2 follows at once with neither repeat nor jump in either: the repeat was lost,
     * because brackets have no other use.
     */
    List<Integer> lostRepeats(IntPredicate repeats, IntPredicate jumps) {
        List<Integer> lost = new ArrayList<>();
        for (int i = 0; i + 1 < starts.size(); i++) {
            Open first = starts.get(i);
            Open second = starts.get(i + 1);
            boolean pair = first.numbers.equals("1") && second.numbers.equals("2") && stops.contains(second.start - 1);
            int end = Math.max(
                    second.start,
                    stops.stream()
                            .filter(stop -> stop >= second.start)
                            .findFirst()
                            .orElse(0));
            boolean led = IntStream.rangeClosed(first.start, Math.min(end, measures.size() - 1))
                    .anyMatch(repeats.or(jumps));
            if (pair && !led) lost.add(second.start - 1);
        }
        return lost;
    }

    List<Ending> settle(IntPredicate repeats, IntPredicate jumps) {
        List<Ending> endings = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int next = i + 1 < starts.size() ? starts.get(i + 1).start : measures.size();
            int stop = stopOf(starts.get(i), next, repeats);
            endings.add(new Ending(starts.get(i).start, stop, numbers(starts.get(i), endings, repeats)));
        }
        for (int stop : stops)
            if (endings.stream().noneMatch(ending -> ending.start <= stop && stop <= ending.stop))
                reportAt(Math.max(0, stop), SkippedWhat.ENDING, "without a start");
        return withoutPurposeless(endings, repeats.or(jumps));
    }

    private int stopOf(Open open, int next, IntPredicate repeats) {
        OptionalInt written = stops.stream()
                .mapToInt(Integer::intValue)
                .filter(stop -> stop >= open.start && stop < next)
                .min();
        OptionalInt repeat = IntStream.range(open.start, next).filter(repeats).findFirst();
        if (written.isPresent()) {
            boolean late = next < measures.size()
                    && repeat.isPresent()
                    && repeat.getAsInt() == next - 1
                    && written.getAsInt() < next - 1;
            if (late)
                reportAt(open.start, SkippedWhat.ENDING_CHANGED, "\"" + open.numbers + "\" reaches to its repeat");
            return late ? next - 1 : written.getAsInt();
        }
        reportAt(open.start, SkippedWhat.ENDING_CHANGED, "\"" + open.numbers + "\" had no end");
        return repeat.orElse(next < measures.size() ? next - 1 : open.start);
    }

    private List<Integer> numbers(Open open, List<Ending> before, IntPredicate repeats) {
        Optional<List<Integer>> written = parse(open.numbers);
        if (written.isPresent()) return written.get();
        Optional<List<Integer>> printed = parse(open.text);
        int next = 1;
        if (!before.isEmpty()) {
            Ending last = before.get(before.size() - 1);
            boolean goesOn = last.stop == open.start - 1 && repeats.test(last.stop);
            if (goesOn) next = last.numbers.get(last.numbers.size() - 1) + 1;
        }
        List<Integer> read = printed.orElse(List.of(Math.min(next, ReadLimits.REPEATS)));
        reportAt(open.start, SkippedWhat.ENDING_CHANGED, "\"" + open.numbers + "\" read as " + read.get(0));
        return read;
    }

    private static Optional<List<Integer>> parse(String text) {
        List<Integer> numbers = new ArrayList<>();
        for (String word : text.replace('.', ' ').strip().split("[,;\\s]+")) {
            OptionalInt number = Numbers.integer(word);
            if (number.isEmpty() || number.getAsInt() < 1 || number.getAsInt() > ReadLimits.REPEATS)
                return Optional.empty();
            numbers.add(number.getAsInt());
        }
        return Optional.of(numbers.stream().sorted().distinct().toList());
    }

    /** Keeps each row of adjoining endings in which something repeats or jumps. */
    private List<Ending> withoutPurposeless(List<Ending> endings, IntPredicate leads) {
        List<Ending> kept = new ArrayList<>();
        int from = 0;
        while (from < endings.size()) {
            int to = from + 1;
            while (to < endings.size() && endings.get(to).start == endings.get(to - 1).stop + 1) to++;
            List<Ending> row = endings.subList(from, to);
            boolean used = IntStream.rangeClosed(row.get(0).start, row.get(row.size() - 1).stop)
                    .anyMatch(leads);
            if (used) kept.addAll(row);
            else
                for (Ending ending : row)
                    reportAt(ending.start, SkippedWhat.ENDING, numbersText(ending) + ", to which nothing repeats");
            from = to;
        }
        return kept;
    }

    private static String numbersText(Ending ending) {
        return String.join(", ", ending.numbers.stream().map(String::valueOf).toList());
    }

    private void reportAt(int measure, SkippedWhat what, String arg) {
        report.addAt(measures.get(measure).number(), what, arg);
    }
}
