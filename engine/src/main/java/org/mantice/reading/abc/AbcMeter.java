package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** Reads M: and L: fields (ABC 2.1, sections 3.1.6 and 3.1.7). */
public final class AbcMeter {
    private static final Pattern METER =
            Pattern.compile("\\(?\\s*(\\d{1,3}(?:\\s*\\+\\s*\\d{1,3}){0,20})\\s*\\)?\\s*/\\s*(\\d{1,3})");
    private static final Pattern LENGTH = Pattern.compile("1(?:\\s*/\\s*(\\d{1,4}))?");

    private AbcMeter() {}

    /** Empty if it cannot be read. */
    public static Optional<Meter> meter(String text) {
        String plain = text.strip();
        if (plain.equals("C")) return Optional.of(Meter.of(4, 4));
        if (plain.equals("C|")) return Optional.of(Meter.of(2, 2));
        if (plain.isEmpty() || plain.equalsIgnoreCase("none") || plain.equalsIgnoreCase("free"))
            return Optional.of(Meter.FREE);
        Matcher matcher = METER.matcher(plain);
        if (!matcher.matches()) return Optional.empty();
        List<Integer> groups = new ArrayList<>();
        for (String group : matcher.group(1).split("\\+")) groups.add(Integer.valueOf(group.strip()));
        int unit = Integer.parseInt(matcher.group(2));
        boolean known = unit >= 1
                && unit <= 64
                && Integer.bitCount(unit) == 1
                && groups.stream().allMatch(group -> group >= 1 && group <= 128);
        return known ? Optional.of(new Meter(groups, unit)) : Optional.empty();
    }

    /** Empty if it cannot be read. */
    public static Optional<MusicalTime> unit(String text) {
        Matcher matcher = LENGTH.matcher(text.strip());
        if (!matcher.matches()) return Optional.empty();
        int parts = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
        return parts >= 1 && parts <= 512 ? Optional.of(MusicalTime.of(1, parts)) : Optional.empty();
    }

    /** The unit where none is given: a sixteenth in measures shorter than three quarters, else an eighth. */
    public static MusicalTime unitFor(Meter meter) {
        boolean shorter = !meter.isFree() && meter.length().isBefore(MusicalTime.of(3, 4));
        return MusicalTime.of(1, shorter ? 16 : 8);
    }
}
