package org.mantice.reading.midi;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How much a part looks like the melody: high, one note at a time, named or sung as one, not a mere few notes. Points are
 * estimates.
 */
public final class MelodyScore {
    private static final Pattern FOR = Pattern.compile(
            "melod|lead|vocal|voice|vox|sing|gesang|stimme|solo|treble|diskant|right|rechts|violin|fiddle|geige|flute"
                    + "|fl\u00f6te|tune|chant|voix|cant[oa]");
    private static final Pattern AGAINST = Pattern.compile(
            "bass|chord|akkord|accomp|begleit|drum|schlagz|perc|rhythm|pad|string|left|links|guitar|gitarre|harmon"
                    + "|accord(?!ion|eon)|click|metron");

    private MelodyScore() {}

    /**
     * Points, more for what is more like a melody.
     *
     * @param mostNotes notes of the part that has the most
     * @param syllables where syllables are sung, in ticks
     */
    public static long of(MidiPart part, int mostNotes, List<Long> syllables) {
        long points = Math.max(-200, Math.min(400, (part.meanPitchCents() - 6_000) / 5));
        points -= part.crowdedPermille() * 2L / 5;
        String name = part.name().toLowerCase(Locale.ROOT);
        if (FOR.matcher(name).find()) points += 500;
        if (AGAINST.matcher(name).find()) points -= 500;
        if (part.notes().size() * 10L < mostNotes) points -= 400;
        if (isSung(part, syllables)) points += 600;
        return points;
    }

    /** Whether four of five syllables begin with a note. */
    private static boolean isSung(MidiPart part, List<Long> syllables) {
        if (syllables.isEmpty()) return false;
        long[] starts = part.notes().stream().mapToLong(MidiNote::start).toArray();
        long met = syllables.stream()
                .filter(tick -> Arrays.binarySearch(starts, tick) >= 0)
                .count();
        return met * 5 >= syllables.size() * 4L;
    }
}
