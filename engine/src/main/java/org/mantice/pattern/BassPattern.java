package org.mantice.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * An accompaniment pattern.
 *
 * @param id 1 to 64 of a-z, 0-9 and hyphens
 * @param names by language, as {@code "en"} and {@code "de"}; English is always there
 * @param source where it comes from, in plain words
 * @param cycle what the offsets of strokes count from
 * @param pickup when it is played in a pickup
 */
public record BassPattern(
        String id,
        SortedMap<String, String> names,
        String source,
        Fit fit,
        Cycle cycle,
        Figures figures,
        Pickup pickup) {
    /** What the strokes are counted from. */
    public enum Cycle {
        MEASURE,
        /** Each group of a meter as written (3+2/8 has two), each dotted beat of 6/8 and the like. */
        GROUP
    }

    /** When a pickup is accompanied; always by the end of the measure that it lacks. */
    public enum Pickup {
        /** Where it does not open the tune and lasts half a measure or more. */
        BY_LENGTH,
        ALWAYS,
        NEVER
    }

    /**
     * What is struck.
     *
     * @param plain in ordinary measures
     * @param fewer where two strokes would be closer than a hand strikes
     * @param last in the last measure; where empty, its first two strokes
     * @param beforeChange where the next measure begins with another bass and this one holds a single chord
     */
    public record Figures(Figure plain, Optional<Figure> fewer, Optional<Figure> last, Optional<Figure> beforeChange) {
        public Figures {
            for (Optional<Figure> other : List.of(Optional.of(plain), fewer, last))
                if (other.isPresent() && other.get().hasRun())
                    throw new IllegalArgumentException("a run leads to the next chord; allowed: in beforeChange only");
        }

        List<Figure> all() {
            List<Figure> all = new ArrayList<>(List.of(plain));
            for (Optional<Figure> other : List.of(fewer, last, beforeChange)) other.ifPresent(all::add);
            return all;
        }
    }

    /** A stroke at its place in a measure, in whole notes. */
    public record Placed(MusicalTime offset, Stroke stroke) {}

    private static final int LONGEST_TEXT = 200;
    private static final int MOST_LANGUAGES = 20;
    private static final int DOTTED = 3;

    public BassPattern {
        names = Collections.unmodifiableSortedMap(new TreeMap<>(names));
        if (!id.matches("[a-z0-9][a-z0-9-]{0,63}"))
            throw new IllegalArgumentException("id is " + id + "; allowed: 1 to 64 of a-z, 0-9 and hyphens");
        if (!names.containsKey("en") || names.size() > MOST_LANGUAGES)
            throw new IllegalArgumentException(
                    "names is " + names.keySet() + "; allowed: up to " + MOST_LANGUAGES + " languages, one of them en");
        for (Map.Entry<String, String> name : names.entrySet()) {
            if (!name.getKey().matches("[a-z]{2,3}"))
                throw new IllegalArgumentException("names is " + names.keySet() + "; allowed: languages as en and de");
            if (name.getValue().isBlank() || name.getValue().length() > LONGEST_TEXT)
                throw new IllegalArgumentException("names." + name.getKey() + " is " + name.getValue()
                        + "; allowed: 1 to " + LONGEST_TEXT + " characters");
        }
        if (source.isBlank() || source.length() > LONGEST_TEXT)
            throw new IllegalArgumentException(
                    "source is " + source + "; allowed: 1 to " + LONGEST_TEXT + " characters");
        if (cycle == Cycle.MEASURE)
            for (String meter : fit.meters())
                for (Figure figure : figures.all())
                    if (!figure.last().isBefore(MusicalTime.of(Fit.units(meter), 1)))
                        throw new IllegalArgumentException("meters is " + fit.meters() + "; allowed: such as hold the"
                                + " stroke at " + figure.last());
    }

    /** In a language, in English where it has no name in it. */
    public String name(Locale locale) {
        return Objects.requireNonNull(names.getOrDefault(locale.getLanguage(), names.get("en")));
    }

    /**
     * The strokes of a figure in a full measure, in order, all within it. In a group of a single unit, a figure of more
     * strokes is struck at once.
     */
    public List<Placed> placed(Figure figure, Meter meter) {
        List<Placed> placed = new ArrayList<>();
        MusicalTime unit = MusicalTime.of(1, meter.unit());
        int start = 0;
        for (int units : cycles(meter)) {
            place(figure, units, unit.times(start), unit, placed);
            start += units;
        }
        return List.copyOf(placed);
    }

    private List<Integer> cycles(Meter meter) {
        int units = (int) meter.length().countOf(MusicalTime.of(1, meter.unit()));
        if (cycle == Cycle.MEASURE) return List.of(units);
        if (meter.isCompound()) return Collections.nCopies(units / DOTTED, DOTTED);
        return meter.isFree() ? List.of(units) : meter.groups();
    }

    private static void place(Figure figure, int units, MusicalTime start, MusicalTime unit, List<Placed> placed) {
        MusicalTime end = MusicalTime.of(units, 1);
        Stroke first = figure.strokes().get(0);
        if (units == 1 && figure.strokes().size() > 1 && first.part() == Stroke.Part.BASS) {
            placed.add(new Placed(start.plus(unit.times(first.at())), together(first)));
            return;
        }
        for (Stroke stroke : figure.strokes())
            for (MusicalTime at = stroke.at(); at.isBefore(end); at = at.plus(MusicalTime.WHOLE)) {
                placed.add(new Placed(start.plus(unit.times(at)), stroke));
                if (!stroke.onward()) break;
            }
    }

    private static Stroke together(Stroke bass) {
        return new Stroke(
                bass.at(),
                Stroke.Part.BOTH,
                Optional.of(Stroke.Bass.ROOT),
                bass.soundsPerMille(),
                bass.stressed(),
                false);
    }
}
