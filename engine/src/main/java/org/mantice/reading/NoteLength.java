package org.mantice.reading;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.tune.MusicalTime;

/**
 * The length of a note as the file counts it and as its note value means it. The two differ where the divisions cannot
 * express a tuplet.
 */
record NoteLength(MusicalTime counted, MusicalTime exact) {
    private static final MusicalTime LONGEST = MusicalTime.of(1000, 1);
    private static final Map<String, MusicalTime> TYPES = Map.ofEntries(
            Map.entry("1024th", MusicalTime.of(1, 1024)),
            Map.entry("512th", MusicalTime.of(1, 512)),
            Map.entry("256th", MusicalTime.of(1, 256)),
            Map.entry("128th", MusicalTime.of(1, 128)),
            Map.entry("64th", MusicalTime.of(1, 64)),
            Map.entry("32nd", MusicalTime.of(1, 32)),
            Map.entry("16th", MusicalTime.of(1, 16)),
            Map.entry("eighth", MusicalTime.of(1, 8)),
            Map.entry("quarter", MusicalTime.of(1, 4)),
            Map.entry("half", MusicalTime.of(1, 2)),
            Map.entry("whole", MusicalTime.of(1, 1)),
            Map.entry("breve", MusicalTime.of(2, 1)),
            Map.entry("long", MusicalTime.of(4, 1)),
            Map.entry("maxima", MusicalTime.of(8, 1)));

    static NoteLength of(XmlNode note, PartState state, List<Finding> findings) {
        if (note.has("duration") && !state.divisionsGiven) {
            state.divisionsGiven = true;
            findings.add(Finding.of(SkippedWhat.NO_DIVISIONS));
        }
        String written = note.text("duration");
        Optional<MusicalTime> counted = Numbers.fraction(written)
                .filter(MusicalTime::isPositive)
                .map(count -> count.times(state.division))
                .filter(length -> !LONGEST.isBefore(length));
        Optional<MusicalTime> value = valueOf(note);
        if (counted.isEmpty()) {
            value.ifPresent(length ->
                    findings.add(Finding.of(SkippedWhat.LENGTH, "\"" + written + "\"", length + " of a whole note")));
            MusicalTime length = value.orElse(MusicalTime.ZERO);
            return new NoteLength(length, length);
        }
        boolean rounded = value.isPresent() && isRounded(counted.get(), value.get(), state.division);
        return new NoteLength(counted.get(), rounded ? value.get() : counted.get());
    }

    /** Whether the value lies between two counts of the division and the counted length is one of these. */
    private static boolean isRounded(MusicalTime counted, MusicalTime value, MusicalTime division) {
        MusicalTime difference = counted.minus(value);
        MusicalTime apart = difference.numerator() < 0 ? MusicalTime.ZERO.minus(difference) : difference;
        return !value.isMultipleOf(division) && apart.isBefore(division);
    }

    /** From type, dots and tuplet; empty if there is no readable type. */
    private static Optional<MusicalTime> valueOf(XmlNode note) {
        return unit(note.text("type"), (int) note.children("dot").count()).map(length -> {
            XmlNode tuplet = note.child("time-modification").orElse(new XmlNode("none", 0));
            int actual = Numbers.integer(tuplet.text("actual-notes"), 1);
            int normal = Numbers.integer(tuplet.text("normal-notes"), 1);
            if (actual < 1 || normal < 1 || actual > 1000 || normal > 1000) return length;
            return length.times(MusicalTime.of(normal, actual));
        });
    }

    /** A note value with dots, as the names of MusicXML have it. */
    static Optional<MusicalTime> unit(String type, int dots) {
        MusicalTime plain = TYPES.get(type);
        if (plain == null || dots > 6) return Optional.empty();
        long scale = BigInteger.TWO.pow(dots).longValueExact();
        return Optional.of(plain.times(MusicalTime.of(2 * scale - 1, scale)));
    }
}
