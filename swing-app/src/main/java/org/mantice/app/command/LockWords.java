package org.mantice.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.ButtonNames;
import org.mantice.performance.Places;
import org.mantice.plan.Lock;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Locks as typed on the command line: {@code pass2:turn@9:1=no}. Measures by their printed number. */
final class LockWords {
    private static final Pattern FORM = Pattern.compile(
            "(?:pass(\\d{1,3}):)?(register|octave|turn|buttons|finger)(?:@([^:=]+)(?::([0-9+/]+))?)?=(.+)");

    private static final Pattern BEAT = Pattern.compile("([1-9]\\d{0,2})(?:\\+(\\d{1,4})/([1-9]\\d{0,3}))?");
    private static final Set<String> PLACED = Set.of("turn", "buttons", "finger");

    private LockWords() {}

    /** @throws IllegalArgumentException if the words are no lock in any tune */
    static void check(String words) {
        Matcher parts = parts(words);
        switch (parts.group(2)) {
            case "register" -> {}
            case "octave" -> octave(words, parts.group(5));
            case "turn" -> yes(words, parts.group(5));
            case "buttons" -> buttons(words, parts.group(5));
            default -> finger(words, parts.group(5));
        }
        boolean placed = parts.group(3) != null;
        boolean needsPlace = PLACED.contains(parts.group(2));
        if (needsPlace && !placed)
            throw new IllegalArgumentException("lock " + words + " has no place; allowed: @MEASURE:BEAT, as in @9:1");
        if (!needsPlace && placed)
            throw new IllegalArgumentException("lock " + words + " has a place; allowed: a whole pass or every pass");
    }

    private static Matcher parts(String words) {
        Matcher parts = FORM.matcher(words);
        if (!parts.matches())
            throw new IllegalArgumentException("lock is " + words
                    + "; allowed: register=ID, octave=N, turn@MEASURE:BEAT=yes|no,"
                    + " buttons@MEASURE:BEAT=C bass+C major, finger@MEASURE:BEAT=1..5,"
                    + " each with passN: before it for one pass only");
        return parts;
    }

    static Lock read(String words, Tune tune) {
        check(words);
        Matcher parts = parts(words);
        OptionalInt pass =
                parts.group(1) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(parts.group(1)));
        String value = parts.group(5);
        return switch (parts.group(2)) {
            case "register" -> new Lock.Register(pass, value);
            case "octave" -> new Lock.Octave(pass, octave(words, value));
            case "buttons" -> new Lock.Buttons(pass, place(parts, tune), buttons(words, value));
            case "turn" -> new Lock.Turn(pass, place(parts, tune), yes(words, value));
            default -> new Lock.Finger(pass, place(parts, tune), 0, finger(words, value));
        };
    }

    private static int octave(String words, String value) {
        return number(words, value, "-?[01]", "-1, 0, 1");
    }

    private static int finger(String words, String value) {
        return number(words, value, "[1-5]", "1 to 5");
    }

    private static int number(String words, String value, String form, String allowed) {
        if (!value.matches(form))
            throw new IllegalArgumentException("value in lock " + words + " is " + value + "; allowed: " + allowed);
        return Integer.parseInt(value);
    }

    private static boolean yes(String words, String value) {
        if (!value.equals("yes") && !value.equals("no"))
            throw new IllegalArgumentException("value in lock " + words + " is " + value + "; allowed: yes, no");
        return value.equals("yes");
    }

    private static WrittenPlace place(Matcher parts, Tune tune) {
        return place(parts.group(3), parts.group(4) == null ? "" : parts.group(4), tune);
    }

    private static Set<BassButton> buttons(String words, String value) {
        Set<BassButton> buttons = new TreeSet<>();
        for (String name : value.split("\\+")) buttons.add(button(words, name.strip()));
        return buttons;
    }

    private static BassButton button(String words, String name) {
        return ButtonNames.find(name)
                .orElseThrow(() -> new IllegalArgumentException("button in lock " + words + " is " + name
                        + "; allowed: as C bass, E counterbass, G major, A minor, D seventh, B diminished"));
    }

    /**
     * A place by printed measure number and beat.
     *
     * @param beat as {@link Places#beat} writes it; empty for the first event of the measure
     */
    static WrittenPlace place(String number, String beat, Tune tune) {
        List<String> beats = new ArrayList<>();
        for (int i = 0; i < tune.measures().size(); i++) {
            Measure measure = tune.measure(i);
            if (!measure.number().equals(number)) continue;
            Optional<MusicalTime> offset = beat.isEmpty() ? Optional.of(firstOffset(measure)) : offset(measure, beat);
            if (offset.isPresent()) return new WrittenPlace(i, offset.get());
            measure.melody().forEach(event -> beats.add(Places.beat(measure, event.offset())));
        }
        if (!beats.isEmpty())
            throw new IllegalArgumentException("beat is " + beat + " in measure " + number
                    + "; allowed: a place in the measure, as the melody's " + String.join(", ", beats));
        throw new IllegalArgumentException("measure is " + number + "; allowed: "
                + tune.measure(0).number() + " to "
                + tune.measure(tune.measures().size() - 1).number());
    }

    private static Optional<MusicalTime> offset(Measure measure, String beat) {
        Matcher parts = BEAT.matcher(beat);
        if (parts.matches()) {
            MusicalTime before = measure.meter().beat().times(Long.parseLong(parts.group(1)) - 1);
            MusicalTime after = parts.group(2) == null
                    ? MusicalTime.ZERO
                    : MusicalTime.of(Long.parseLong(parts.group(2)), Long.parseLong(parts.group(3)));
            MusicalTime missing = measure.pickup()
                    ? measure.meter().length().minus(measure.length()).max(MusicalTime.ZERO)
                    : MusicalTime.ZERO;
            MusicalTime offset = before.plus(after).minus(missing);
            if (!offset.isBefore(MusicalTime.ZERO) && offset.isBefore(measure.length())) return Optional.of(offset);
        }
        return Optional.empty();
    }

    private static MusicalTime firstOffset(Measure measure) {
        return measure.melody().isEmpty()
                ? MusicalTime.ZERO
                : measure.melody().get(0).offset();
    }
}
