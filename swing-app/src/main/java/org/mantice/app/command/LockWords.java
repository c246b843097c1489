package org.mantice.app.command;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.layer.Places;
import org.mantice.plan.Lock;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Locks as typed on the command line: {@code pass2:turn@9:1=no}. Measures by their printed number. */
final class LockWords {
    private static final Pattern FORM =
            Pattern.compile("(?:pass(\\d{1,3}):)?(register|octave|turn|finger)(?:@([^:=]+)(?::([0-9+/]+))?)?=(.+)");

    private LockWords() {}

    /** @throws IllegalArgumentException if the words are no lock in any tune */
    static void check(String words) {
        Matcher parts = parts(words);
        switch (parts.group(2)) {
            case "register" -> {}
            case "octave" -> octave(words, parts.group(5));
            case "turn" -> yes(words, parts.group(5));
            default -> finger(words, parts.group(5));
        }
        boolean placed = parts.group(3) != null;
        boolean needsPlace = parts.group(2).equals("turn") || parts.group(2).equals("finger");
        if (needsPlace && !placed)
            throw new IllegalArgumentException("lock " + words + " has no place; allowed: @MEASURE:BEAT, as in @9:1");
        if (!needsPlace && placed)
            throw new IllegalArgumentException("lock " + words + " has a place; allowed: a whole pass or every pass");
    }

    private static Matcher parts(String words) {
        Matcher parts = FORM.matcher(words);
        if (!parts.matches())
            throw new IllegalArgumentException("lock is " + words
                    + "; allowed: register=ID, octave=N, turn@MEASURE:BEAT=yes|no, finger@MEASURE:BEAT=1..5,"
                    + " each with passN: before it for one pass only");
        return parts;
    }

    static Lock read(String words, Tune tune) {
        check(words);
        Matcher parts = parts(words);
        OptionalInt pass = parts.group(1) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(parts.group(1)));
        String value = parts.group(5);
        return switch (parts.group(2)) {
            case "register" -> new Lock.Register(pass, value);
            case "octave" -> new Lock.Octave(pass, octave(words, value));
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

    /**
     * A place by printed measure number and beat.
     *
     * @param beat as {@link Places#beat} writes it; empty for the first event of the measure
     */
    static WrittenPlace place(String number, String beat, Tune tune) {
        for (int i = 0; i < tune.measures().size(); i++) {
            Measure measure = tune.measure(i);
            if (!measure.number().equals(number)) continue;
            if (beat.isEmpty()) return new WrittenPlace(i, firstOffset(measure));
            for (MelodyEvent event : measure.melody())
                if (Places.beat(measure, event.offset()).equals(beat)) return new WrittenPlace(i, event.offset());
            throw new IllegalArgumentException("beat is " + beat + " in measure " + number + "; allowed: "
                    + String.join(", ", measure.melody().stream().map(event -> Places.beat(measure, event.offset())).toList()));
        }
        throw new IllegalArgumentException("measure is " + number + "; allowed: "
                + tune.measure(0).number() + " to " + tune.measure(tune.measures().size() - 1).number());
    }

    private static MusicalTime firstOffset(Measure measure) {
        return measure.melody().isEmpty() ? MusicalTime.ZERO : measure.melody().get(0).offset();
    }
}
