package org.mantice.app.model;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;
import org.mantice.reading.SkippedWhat;

/**
 * Where the melody was taken from, and where else it could be.
 *
 * @param parts those of the file that have notes
 * @param taken index of the one that the melody was taken from
 * @param reason why that one, in words
 * @param grid how the notes of a MIDI file were put into measures, one line each; empty for what is written in notes
 */
public record MelodyModel(List<PartInfo> parts, int taken, String reason, List<String> grid) {
    private static final Set<SkippedWhat> GRID = EnumSet.of(
            SkippedWhat.BEAT_DIVIDED,
            SkippedWhat.NOTES_ON_GRID,
            SkippedWhat.PACE_FOLLOWED,
            SkippedWhat.PICKUP_ASSUMED,
            SkippedWhat.METER_OF_STANDARD);

    public MelodyModel {
        parts = List.copyOf(parts);
        grid = List.copyOf(grid);
    }

    public static MelodyModel of(ReadTune read, Words words) {
        MusicWords music = new MusicWords(words);
        List<PartInfo> parts = sounding(read);
        return new MelodyModel(
                parts,
                parts.indexOf(read.melody().part()),
                words.of("music", read.melody().rule()),
                read.skipped().stream()
                        .filter(each -> GRID.contains(each.what()))
                        .map(music::skipped)
                        .toList());
    }

    private static List<PartInfo> sounding(ReadTune read) {
        return read.parts().stream().filter(part -> part.notes() > 0).toList();
    }

    /** Whether there is anything to choose or to see. */
    public static boolean isOfUse(ReadTune read) {
        return hasChoice(read) || read.skipped().stream().anyMatch(each -> GRID.contains(each.what()));
    }

    static boolean hasChoice(ReadTune read) {
        return sounding(read).size() > 1;
    }

    /** What the reader knows a part by: its id, or its place where it has none of its own. */
    public static String handle(ReadTune read, PartInfo part) {
        boolean unique = read.parts().stream()
                        .filter(each -> each.id().equalsIgnoreCase(part.id()))
                        .count()
                == 1;
        return unique && !part.id().isBlank()
                ? part.id()
                : String.valueOf(read.parts().indexOf(part) + 1);
    }
}
