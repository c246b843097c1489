package org.mantice.reading.abc;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/**
 * A Q: field (ABC 2.1, sections 3.1.8 and 10.1).
 *
 * @param tempo empty where the field has only words or cannot be read
 * @param words in quotation marks
 * @param unread what is neither
 */
public record AbcTempo(Optional<Tempo> tempo, List<String> words, String unread) {
    private static final Pattern WORDS = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern BEATS =
            Pattern.compile("((?:\\d{1,3}/\\d{1,3}\\s*){1,8})=\\s*(\\d{1,4}(?:\\.\\d{1,3})?)");
    private static final Pattern UNITS = Pattern.compile("(?:C(\\d{0,2})\\s*=\\s*)?(\\d{1,4}(?:\\.\\d{1,3})?)");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,3})/(\\d{1,3})");

    public AbcTempo {
        words = List.copyOf(words);
    }

    /** @param unit the unit length, which a number alone counts (older versions) */
    public static AbcTempo read(String text, MusicalTime unit) {
        List<String> words = new ArrayList<>();
        Matcher quoted = WORDS.matcher(text);
        while (quoted.find()) words.add(AbcEscapes.read(quoted.group(1).strip()));
        words.removeIf(String::isEmpty);
        String plain = quoted.replaceAll(" ").strip();
        if (plain.isEmpty()) return new AbcTempo(Optional.empty(), words, "");
        Optional<Tempo> tempo = Optional.empty();
        Matcher beats = BEATS.matcher(plain);
        Matcher units = UNITS.matcher(plain);
        if (beats.matches()) tempo = tempo(sum(beats.group(1)), beats.group(2));
        else if (units.matches()) {
            String count = units.group(1);
            long times = count == null || count.isEmpty() ? 1 : Long.parseLong(count);
            tempo = tempo(unit.times(times), units.group(2));
        }
        return new AbcTempo(tempo, words, tempo.isPresent() ? "" : plain);
    }

    private static MusicalTime sum(String text) {
        MusicalTime sum = MusicalTime.ZERO;
        Matcher each = FRACTION.matcher(text);
        while (each.find()) {
            long parts = Long.parseLong(each.group(2));
            if (parts == 0) return MusicalTime.ZERO;
            sum = sum.plus(MusicalTime.of(Long.parseLong(each.group(1)), parts));
        }
        return sum;
    }

    private static Optional<Tempo> tempo(MusicalTime beat, String perMinute) {
        int thousandths = new BigDecimal(perMinute).movePointRight(3).intValue();
        boolean known = beat.isPositive() && thousandths >= 5_000 && thousandths <= 1_000_000;
        return known ? Optional.of(new Tempo(beat, thousandths)) : Optional.empty();
    }
}
