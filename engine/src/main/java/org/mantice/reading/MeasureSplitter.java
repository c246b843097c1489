package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.reading.ScoreBarline.Location;
import org.mantice.reading.ScoreSign.Order;
import org.mantice.tune.MusicalTime;

/**
 * Splits measures at repeat signs in their middle, in all parts alike, so that the order of play only ever turns at
 * barlines. A note that is held across the place becomes two tied ones.
 */
final class MeasureSplitter {
    private final List<ScorePart> parts;

    MeasureSplitter(List<ScorePart> parts) {
        this.parts = parts;
    }

    List<ScorePart> split() {
        int size = parts.stream().mapToInt(part -> part.measures().size()).max().orElse(0);
        List<List<MusicalTime>> places = new ArrayList<>();
        for (int i = 0; i < size; i++) places.add(places(i));
        if (places.stream().allMatch(List::isEmpty)) return parts;
        return parts.stream().map(part -> split(part, places)).toList();
    }

    private List<MusicalTime> places(int index) {
        return parts.stream()
                .filter(part -> index < part.measures().size())
                .map(part -> part.measures().get(index))
                .flatMap(measure -> measure.barlines().stream()
                        .filter(MeasureSplitter::splits)
                        .map(ScoreBarline::onset)
                        .filter(onset -> onset.isPositive() && onset.isBefore(measure.end())))
                .distinct()
                .sorted()
                .toList();
    }

    private static boolean splits(ScoreBarline barline) {
        return barline.location() == Location.MIDDLE && !barline.repeat().isEmpty();
    }

    private static ScorePart split(ScorePart part, List<List<MusicalTime>> places) {
        List<ScoreMeasure> measures = new ArrayList<>();
        for (ScoreMeasure whole : part.measures()) {
            ScoreMeasure rest = whole;
            MusicalTime before = MusicalTime.ZERO;
            for (MusicalTime place : places.get(whole.index())) {
                MusicalTime at = place.minus(before);
                measures.add(half(rest, MusicalTime.ZERO, Optional.of(at), measures.size()));
                rest = half(rest, at, Optional.empty(), measures.size());
                before = place;
            }
            measures.add(half(rest, MusicalTime.ZERO, Optional.empty(), measures.size()));
        }
        return new ScorePart(part.id(), part.name(), List.copyOf(measures));
    }

    /** What lies from one place on, up to the other one if there is one. */
    private static ScoreMeasure half(ScoreMeasure all, MusicalTime from, Optional<MusicalTime> to, int index) {
        boolean second = from.isPositive();
        List<Finding> findings = new ArrayList<>(second ? List.of() : all.findings());
        if (to.isPresent()) findings.add(Finding.of(SkippedWhat.MEASURE_SPLIT));
        MusicalTime end = to.map(all.end()::min).orElse(all.end()).minus(from).max(MusicalTime.ZERO);
        return new ScoreMeasure(
                index,
                all.number(),
                all.implicit() || second,
                all.key(),
                all.meter(),
                end,
                notes(all.notes(), from, to),
                all.chords().stream()
                        .filter(chord -> isInside(chord.onset(), from, to))
                        .map(chord -> chord.at(chord.onset().minus(from)))
                        .toList(),
                all.signs().stream()
                        .filter(sign -> isInside(sign, from, to))
                        .map(sign -> sign.at(sign.onset().minus(from).max(MusicalTime.ZERO)))
                        .toList(),
                all.barlines().stream()
                        .filter(barline -> isInside(barline, from, to))
                        .map(barline -> moved(barline, from, to))
                        .toList(),
                all.clefs(),
                all.repeated(),
                findings);
    }

    private static boolean isInside(MusicalTime onset, MusicalTime from, Optional<MusicalTime> to) {
        return !onset.isBefore(from) && (to.isEmpty() || onset.isBefore(to.get()));
    }

    /** Jumps at the place end the first half, all else there begins the second. */
    private static boolean isInside(ScoreSign sign, MusicalTime from, Optional<MusicalTime> to) {
        boolean ends = sign instanceof Order order
                && order.what() != Order.What.SEGNO
                && order.what() != Order.What.CODA_START;
        if (!ends) return isInside(sign.onset(), from, to);
        boolean after = from.isZero() || from.isBefore(sign.onset());
        return after && (to.isEmpty() || !to.get().isBefore(sign.onset()));
    }

    private static boolean isInside(ScoreBarline barline, MusicalTime from, Optional<MusicalTime> to) {
        return switch (barline.location()) {
            case LEFT -> from.isZero();
            case RIGHT -> to.isEmpty();
            case MIDDLE -> {
                if (!splits(barline)) yield isInside(barline.onset(), from, to);
                boolean backward = barline.repeat().equals("backward");
                yield backward
                        ? to.isPresent() ? !to.get().isBefore(barline.onset()) : from.isBefore(barline.onset())
                        : isInside(barline.onset(), from, to);
            }
        };
    }

    private static ScoreBarline moved(ScoreBarline barline, MusicalTime from, Optional<MusicalTime> to) {
        MusicalTime onset = barline.onset().minus(from).max(MusicalTime.ZERO);
        Location location = barline.location();
        if (splits(barline) && to.equals(Optional.of(barline.onset()))) location = Location.RIGHT;
        if (splits(barline) && from.isPositive() && onset.isZero()) location = Location.LEFT;
        return barline.at(location, onset);
    }

    private static List<ScoreNote> notes(List<ScoreNote> notes, MusicalTime from, Optional<MusicalTime> to) {
        List<ScoreNote> inside = new ArrayList<>();
        for (ScoreNote note : notes) {
            boolean wholeRest = note.kind() == ScoreNote.Kind.MEASURE_REST;
            boolean begins = isInside(note.onset(), from, to);
            boolean heldInto = note.onset().isBefore(from) && from.isBefore(note.end());
            if (!begins && !heldInto && !wholeRest) continue;
            MusicalTime onset = note.onset().max(from);
            MusicalTime end = to.map(note.end()::min).orElse(note.end());
            boolean goesOn = end.isBefore(note.end());
            inside.add(wholeRest ? note : note.part(onset.minus(from), end.minus(onset), heldInto, goesOn));
        }
        inside.sort(Comparator.comparingInt(ScoreNote::run));
        return inside;
    }
}
