package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.sheet.BeamGroups.Stemmed;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** Groups after Gould, Behind Bars (2011), and Read, Music Notation (1969), from memory. */
class BeamGroupsTest {
    /** Lengths in 16ths; a minus is a rest. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4/4 | 2 2 2 2 2 2 2 2 | 0-3 4-7",
                "4/4 | 4 2 2 2 2 4 | 1-2 3-4",
                "4/4 | 2 4 2 2 2 2 2 | 3-6",
                "4/4 | 1 1 1 1 2 2 4 4 | 0-3 4-5",
                "4/4 | 3 1 3 1 8 | 0-1 2-3",
                "4/4 | 2 -2 2 2 8 | 2-3",
                "3/4 | 2 2 2 2 2 2 | 0-5",
                "3/4 | 4 2 2 2 2 | 1-4",
                "3/4 | 6 2 2 2 | 2-3",
                "2/4 | 2 2 2 2 | 0-3",
                "2/4 | 2 1 1 2 2 | 0-2 3-4",
                "2/2 | 2 2 2 2 2 2 2 2 | 0-3 4-7",
                "6/8 | 2 2 2 2 2 2 | 0-2 3-5",
                "6/8 | 4 2 2 2 2 | 2-4",
                "6/8 | 2 4 2 2 2 | 2-4",
                "9/8 | 2 2 2 2 2 2 2 2 2 | 0-2 3-5 6-8",
                "3/8 | 2 2 2 | 0-2",
                "5/8 | 2 2 2 2 2 | 0-2 3-4",
                "7/8 | 2 2 2 2 2 2 2 | 0-1 2-3 4-6",
                "3+2/8 | 2 2 2 2 2 | 0-2 3-4",
                "2+3/8 | 2 2 2 2 2 | 0-1 2-4",
                "4/8 | 2 2 2 2 | 0-1 2-3",
                "6/4 | 2 2 2 2 2 2 2 2 2 2 2 2 | 0-5 6-11",
                "free | 2 2 2 2 2 2 2 2 | 0-1 2-3 4-5 6-7",
            })
    void notesOfABeatShareABeam(String meter, String lengths, String groups) {
        List<Stemmed> notes = notes(lengths, MusicalTime.ZERO);

        assertThat(text(BeamGroups.of(notes, meter(meter)))).isEqualTo(groups);
    }

    @Test
    void beamsOfAPickupFollowTheBeatsOfTheMeasureThatItLacks() {
        List<Stemmed> notes = notes("2 2 2", MusicalTime.of(5, 8));

        assertThat(text(BeamGroups.of(notes, Meter.of(4, 4)))).isEqualTo("1-2");
    }

    @Test
    void tupletHasABeamOfItsOwn() {
        List<Stemmed> notes = new ArrayList<>(notes("2 2", MusicalTime.ZERO));
        for (int i = 0; i < 3; i++)
            notes.add(new Stemmed(MusicalTime.of(3 + i, 12), MusicalTime.of(1, 12), true, 1, 3));

        assertThat(text(BeamGroups.of(notes, Meter.of(2, 4)))).isEqualTo("0-1 2-4");
    }

    private static Meter meter(String text) {
        if (text.equals("free")) return Meter.FREE;
        String[] parts = text.split("/");
        List<Integer> groups = new ArrayList<>();
        for (String group : parts[0].split("\\+")) groups.add(Integer.parseInt(group));
        return new Meter(groups, Integer.parseInt(parts[1]));
    }

    private static List<Stemmed> notes(String lengths, MusicalTime start) {
        List<Stemmed> notes = new ArrayList<>();
        MusicalTime at = start;
        for (String text : lengths.split(" ")) {
            int sixteenths = Math.abs(Integer.parseInt(text));
            MusicalTime length = MusicalTime.of(sixteenths, 16);
            boolean beamable = !text.startsWith("-") && sixteenths < 4;
            notes.add(new Stemmed(at, length, beamable, sixteenths == 1 ? 2 : 1, 1));
            at = at.plus(length);
        }
        return notes;
    }

    private static String text(List<List<Integer>> groups) {
        return groups.stream()
                .map(group -> group.get(0) + "-" + group.get(group.size() - 1))
                .collect(Collectors.joining(" "));
    }
}
