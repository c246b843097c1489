package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.sheet.Sheets.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Key;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/** Measures as signs: values, ties, tuplets, stems, displaced heads. */
class StaffMeasureTest {
    private static final Pitch A4 = Pitch.of(Step.A, 0, 4);

    /** Values as halvings with a dot for each dot: 2 is a quarter, 2. a dotted one. */
    private static String values(StaffMeasure staff) {
        return staff.events().stream()
                .map(event -> (event.isRest() ? "r" : "")
                        + event.value().halvings()
                        + ".".repeat(event.value().dots()))
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4/4 | 0 | 5/8 | 1 3 r2.",
                "4/4 | 1/8 | 5/8 | r3 2. 2 r2",
                "4/4 | 3/8 | 5/8 | r2. 3 1",
                "4/4 | 0 | 1 | 0",
                "4/4 | 1/8 | 1/2 | r3 1 r2.",
                "4/4 | 0 | 7/16 | 2.. r4 r1",
                "4/4 | 0 | 9/16 | 1 4 r2..",
                "6/8 | 0 | 5/8 | 2. 2 r3",
                "6/8 | 1/8 | 5/8 | r3 2 2.",
                "2/1 | 0 | 2 | -1",
                "5/4 | 0 | 5/4 | 0 2",
            })
    void lengthsThatNoSingleValueHasAreTiedWhereTheMeterIsStrong(
            String meter, String from, String length, String values) {
        String[] parts = meter.split("/");
        Meter known = Meter.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));

        StaffMeasure staff =
                StaffMeasure.of(measure(known, Key.C_MAJOR, MelodyEvent.note(time(from), time(length), A4)));

        assertThat(values(staff)).isEqualTo(values);
        List<StaffEvent> notes =
                staff.events().stream().filter(event -> !event.isRest()).toList();
        for (int i = 0; i + 1 < notes.size(); i++) {
            assertThat(notes.get(i).heads().get(0).tiedForward()).isTrue();
            assertThat(notes.get(i + 1).heads().get(0).tiedBack()).isTrue();
        }
        assertThat(notes.get(notes.size() - 1).heads().get(0).tiedForward()).isFalse();
    }

    private static MusicalTime time(String text) {
        String[] parts = text.split("/");
        return MusicalTime.of(Long.parseLong(parts[0]), parts.length == 1 ? 1 : Long.parseLong(parts[1]));
    }

    @Test
    void tripletsQuintupletsAndQuarterTripletsAreNumberedGroups() {
        List<MelodyEvent> events = new ArrayList<>();
        for (int i = 0; i < 3; i++) events.add(MelodyEvent.note(Sheets.time(i, 12), Sheets.time(1, 12), A4));
        for (int i = 0; i < 5; i++) events.add(MelodyEvent.note(Sheets.time(5 + i, 20), Sheets.time(1, 20), A4));
        for (int i = 0; i < 3; i++) events.add(MelodyEvent.note(Sheets.time(3 + i, 6), Sheets.time(1, 6), A4));

        StaffMeasure staff = StaffMeasure.of(measure(Meter.of(4, 4), Key.C_MAJOR, events.toArray(MelodyEvent[]::new)));

        assertThat(values(staff)).isEqualTo("3 3 3 4 4 4 4 4 2 2 2");
        assertThat(staff.tuplets()).containsExactly(List.of(0, 1, 2), List.of(3, 4, 5, 6, 7), List.of(8, 9, 10));
        assertThat(staff.events().get(3).tuplet()).isEqualTo(5);
        assertThat(staff.beams()).containsExactly(List.of(0, 1, 2), List.of(3, 4, 5, 6, 7));
    }

    @Test
    void emptyMeasureHasOneRestWhateverItsMeter() {
        StaffMeasure staff = StaffMeasure.of(measure(Meter.of(3, 8), Key.C_MAJOR));

        assertThat(values(staff)).isEqualTo("r0");
        assertThat(staff.events().get(0).wholeMeasure()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"A4, true", "B4, false", "C5, false", "F4 A4, true", "F4 E5, false", "D4 C5, true", "G4 D5, false"})
    void stemsPointToTheMiddleLine(String chord, boolean up) {
        StaffMeasure staff = StaffMeasure.of(measure(Meter.of(1, 4), Key.C_MAJOR, chord(chord)));

        assertThat(staff.events().get(0).stemUp()).isEqualTo(up);
    }

    @Test
    void upperNoteOfASecondIsDisplacedOnAStemUpAndTheLowerOnAStemDown() {
        StaffEvent up = StaffMeasure.of(measure(Meter.of(1, 4), Key.C_MAJOR, chord("E4 F4")))
                .events()
                .get(0);
        StaffEvent down = StaffMeasure.of(measure(Meter.of(1, 4), Key.C_MAJOR, chord("D5 E5")))
                .events()
                .get(0);

        assertThat(up.heads()).extracting(StaffEvent.Head::displaced).containsExactly(false, true);
        assertThat(down.heads()).extracting(StaffEvent.Head::displaced).containsExactly(true, false);
    }

    @Test
    void accidentalsOfAChordStandInColumnsThatDoNotTouch() {
        List<MelodyNote> notes = List.of(
                MelodyNote.of(Pitch.of(Step.C, 1, 4)),
                MelodyNote.of(Pitch.of(Step.E, 1, 4)),
                MelodyNote.of(Pitch.of(Step.G, 1, 4)),
                MelodyNote.of(Pitch.of(Step.C, 1, 5)));
        MelodyEvent event = new MelodyEvent(
                MusicalTime.ZERO, MusicalTime.QUARTER, notes, GraceGroup.NONE, GraceGroup.NONE, EventMarks.NONE);

        List<StaffEvent.Head> heads = StaffMeasure.of(measure(Meter.of(1, 4), Key.C_MAJOR, event))
                .events()
                .get(0)
                .heads();

        for (StaffEvent.Head one : heads)
            for (StaffEvent.Head other : heads) {
                if (one == other || Math.abs(one.place() - other.place()) >= 6) continue;
                assertThat(Math.abs(one.accidentalX() - other.accidentalX())).isGreaterThan(1);
            }
        assertThat(heads.get(0).accidentalX()).isEqualTo(heads.get(3).accidentalX());
    }

    private static MelodyEvent chord(String chord) {
        List<MelodyNote> notes = IntStream.range(0, chord.split(" ").length)
                .mapToObj(i -> chord.split(" ")[i])
                .map(text -> MelodyNote.of(Pitch.of(Step.valueOf(text.substring(0, 1)), 0, text.charAt(1) - '0')))
                .toList();
        return new MelodyEvent(
                MusicalTime.ZERO, MusicalTime.QUARTER, notes, GraceGroup.NONE, GraceGroup.NONE, EventMarks.NONE);
    }
}
