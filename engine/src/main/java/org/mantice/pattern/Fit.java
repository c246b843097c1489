package org.mantice.pattern;

import java.util.List;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/**
 * Where a pattern may stand, and where it is taken when nobody chose.
 *
 * @param meters as {@code "3/4"} or {@code "3+2/8"}, or one of {@link #ANY}, {@link #GROUPED}, {@link #FREE}
 * @param usualFor those of the meters for which it is taken where the dance says nothing
 * @param fromBeatsPerMinute felt beats from which it is taken, 0 to 1,001
 * @param belowBeatsPerMinute felt beats below which it is taken, above {@code fromBeatsPerMinute} to 1,001
 * @param dances names under which a tune asks for it, in lower case
 */
public record Fit(
        List<String> meters,
        List<String> usualFor,
        int fromBeatsPerMinute,
        int belowBeatsPerMinute,
        List<String> dances) {
    /** Every meter, and free time. */
    public static final String ANY = "any";
    /** Every meter written in two groups or more. */
    public static final String GROUPED = "grouped";
    /** Free time. */
    public static final String FREE = "free";

    private static final String METER =
            "[1-9]\\d{0,2}(\\+[1-9]\\d{0,2}){0,15}/(1|2|4|8|16|32|64)|" + ANY + "|" + GROUPED + "|" + FREE;
    private static final int MOST = 64;
    private static final int LONGEST_NAME = 60;
    static final int ALL_TEMPOS = 1_001;
    private static final MusicalTime MINUTE_MICROS = MusicalTime.of(60_000_000, 1);

    public Fit {
        meters = List.copyOf(meters);
        usualFor = List.copyOf(usualFor);
        dances = List.copyOf(dances);
        limit("meters", meters.size(), 1);
        limit("usualFor", usualFor.size(), 0);
        limit("dances", dances.size(), 0);
        for (int i = 0; i < meters.size(); i++)
            if (!meters.get(i).matches(METER))
                throw new IllegalArgumentException(
                        "meters[" + i + "] is " + meters.get(i) + "; allowed: as 3/4 or 3+2/8, or any, grouped, free");
        for (int i = 0; i < usualFor.size(); i++)
            if (!meters.contains(usualFor.get(i)))
                throw new IllegalArgumentException(
                        "usualFor[" + i + "] is " + usualFor.get(i) + "; allowed: one of the meters " + meters);
        for (int i = 0; i < dances.size(); i++)
            if (dances.get(i).isBlank() || dances.get(i).length() > LONGEST_NAME)
                throw new IllegalArgumentException("dances[" + i + "] is " + dances.get(i)
                        + "; allowed: a name of 1 to " + LONGEST_NAME + " characters");
        if (fromBeatsPerMinute < 0 || fromBeatsPerMinute >= ALL_TEMPOS)
            throw new IllegalArgumentException("fromBeatsPerMinute is " + fromBeatsPerMinute + "; allowed: 0 to 1000");
        if (belowBeatsPerMinute <= fromBeatsPerMinute || belowBeatsPerMinute > ALL_TEMPOS)
            throw new IllegalArgumentException("belowBeatsPerMinute is " + belowBeatsPerMinute + "; allowed: "
                    + (fromBeatsPerMinute + 1) + " to " + ALL_TEMPOS);
    }

    private static void limit(String name, int size, int least) {
        if (size < least || size > MOST)
            throw new IllegalArgumentException(name + " is " + size + " long; allowed: " + least + " to " + MOST);
    }

    /** Whether it may stand in a meter. */
    public boolean fits(Meter meter) {
        return names(meters, meter);
    }

    boolean isUsualFor(Meter meter) {
        return names(usualFor, meter);
    }

    /** Whether the tempo, counted in felt beats of the meter, lies in its range. */
    boolean fits(Meter meter, Tempo tempo) {
        MusicalTime micros = tempo.microsPerWholeNote().times(meter.beat());
        return !MINUTE_MICROS.isBefore(micros.times(fromBeatsPerMinute))
                && MINUTE_MICROS.isBefore(micros.times(belowBeatsPerMinute));
    }

    private static boolean names(List<String> meters, Meter meter) {
        return meters.contains(ANY)
                || meters.contains(meter.toString())
                || meters.contains(GROUPED) && meter.groups().size() > 1;
    }

    /** The units that every measure of the meter named has; the least there can be for names of several meters. */
    static int units(String meter) {
        if (meter.equals(FREE)) return Meter.FREE.unit();
        if (!meter.contains("/")) return 1;
        int units = 0;
        for (String group : meter.substring(0, meter.indexOf('/')).split("\\+")) units += Integer.parseInt(group);
        return units;
    }
}
