package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.reading.MidiBytes.Track;
import org.mantice.tune.Key;
import org.mantice.tune.Lyric;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/** What a MIDI file says becomes music; invented notes, 480 ticks a quarter note unless a test says otherwise. */
class MidiReadingTest {
    private static final int Q = 480;

    private static ReadTune read(byte[] bytes) {
        return new TuneReader().read("tune.mid", bytes, ReadOptions.DEFAULT);
    }

    private static ReadTune read(Track... tracks) {
        return read(MidiBytes.file(1, Q, tracks));
    }

    /** Notes one after another, each as long as given in quarters; 0 is a rest. */
    private static Track line(Track track, int channel, long start, double[][] notes) {
        double at = start;
        for (double[] note : notes) {
            double end = at + note[1] * Q;
            if (note[0] > 0) track.note(channel, (int) note[0], Math.round(at), Math.round(end));
            at = end;
        }
        return track;
    }

    /** As {@code "0 1/4 C5~"}: offset, length, pitches; a tilde is a tie. */
    private static List<String> events(Measure measure) {
        return measure.melody().stream().map(MidiReadingTest::text).toList();
    }

    private static String text(MelodyEvent event) {
        StringBuilder text = new StringBuilder(event.offset() + " " + event.duration());
        event.notes().forEach(note -> text.append(' ')
                .append(note.tiedBack() ? "~" : "")
                .append(note.pitch())
                .append(note.tiedForward() ? "~" : ""));
        return text.toString();
    }

    private static List<String> chords(Measure measure) {
        return measure.chords().stream()
                .map(chord -> chord.offset() + " " + chord.symbol())
                .toList();
    }

    private static List<String> said(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    @Test
    void notesRestsAndTiesOverBarlines() {
        Track track = new Track().meter(0, 3, 2).key(0, 1, false);
        line(track, 1, 0, new double[][] {{67, 1}, {0, 0.5}, {69, 0.5}, {71, 2.5}, {72, 1.5}});

        Tune tune = read(track).tune();

        assertThat(events(tune.measure(0))).containsExactly("0 1/4 G4", "1/4 1/8", "3/8 1/8 A4", "1/2 1/4 B4~");
        assertThat(events(tune.measure(1))).containsExactly("0 3/8 ~B4", "3/8 3/8 C5");
        assertThat(tune.measures()).hasSize(2).allMatch(measure -> measure.key().equals(new Key(1, Mode.MAJOR)));
    }

    @Test
    void aLengthWithoutANoteValueIsTiedTogetherAtABeat() {
        Track track = new Track().meter(0, 4, 2).key(0, 0, false);
        line(track, 1, 0, new double[][] {{60, 2.5}, {62, 1.5}});

        assertThat(events(read(track).tune().measure(0))).containsExactly("0 1/2 C4~", "1/2 1/8 ~C4", "5/8 3/8 D4");
    }

    @Test
    void tripletsBesideEighthsAndSixteenths() {
        double third = 1 / 3.0;
        Track track = new Track().meter(0, 4, 2).key(0, 0, false);
        line(track, 1, 0, new double[][] {
            {60, third}, {62, third}, {64, third}, {65, 0.5}, {67, 0.5}, {65, 0.25}, {64, 0.75}, {60, 1}
        });

        ReadTune read = read(track);

        assertThat(events(read.tune().measure(0)))
                .containsExactly(
                        "0 1/12 C4",
                        "1/12 1/12 D4",
                        "1/6 1/12 E4",
                        "1/4 1/8 F4",
                        "3/8 1/8 G4",
                        "1/2 1/16 F4",
                        "9/16 3/16 E4",
                        "3/4 1/4 C4");
        assertThat(said(read))
                .contains(
                        "assumed: beats of 1/4 are divided into 3 (measure 1)",
                        "assumed: beats of 1/4 are divided into 4 (measure 1)");
    }

    @Test
    void silenceBeforeTheFirstNoteMakesAPickup() {
        Track track = new Track().meter(0, 3, 2).key(0, 0, false);
        line(track, 1, 2 * Q, new double[][] {{67, 1}, {72, 2}, {74, 1}});

        ReadTune read = read(track);

        assertThat(read.tune().measures()).extracting(Measure::number).containsExactly("0", "1");
        assertThat(read.tune().measure(0).pickup()).isTrue();
        assertThat(read.tune().measure(0).length()).isEqualTo(MusicalTime.QUARTER);
        assertThat(said(read)).contains("assumed: the first measure is a pickup, because 1/2 of it is silent");
    }

    @Test
    void aShortFirstMeasureWithAMeterOfItsOwnIsAPickup() {
        Track track = new Track().meter(0, 1, 2).meter(Q, 4, 2).key(0, 0, false);
        line(track, 1, 0, new double[][] {{67, 1}, {72, 4}});

        Tune tune = read(track).tune();

        assertThat(tune.measure(0).pickup()).isTrue();
        assertThat(tune.measures())
                .extracting(measure -> measure.meter().toString())
                .containsExactly("4/4", "4/4");
        assertThat(events(tune.measure(1))).containsExactly("0 1 C5");
    }

    @Test
    void meterKeyAndTempoMayChange() {
        Track track = new Track().meter(0, 2, 2).key(0, 2, false).tempo(0, 500_000);
        track.meter(4L * Q, 6, 3).key(4L * Q, -1, true).tempo(4L * Q, 400_000);
        line(track, 1, 0, new double[][] {{62, 2}, {66, 2}, {62, 1.5}, {61, 1.5}, {58, 3}});

        Tune tune = read(track).tune();

        assertThat(tune.measures())
                .extracting(measure -> measure.meter().toString())
                .containsExactly("2/4", "2/4", "6/8", "6/8");
        assertThat(tune.measure(0).marks())
                .containsExactly(new Mark.TempoChange(MusicalTime.ZERO, Tempo.quarters(120)));
        assertThat(tune.measure(2).marks())
                .containsExactly(new Mark.TempoChange(MusicalTime.ZERO, new Tempo(MusicalTime.of(3, 8), 100_000)));
        assertThat(tune.measure(2).key()).isEqualTo(new Key(-1, Mode.MINOR));
        assertThat(events(tune.measure(1))).containsExactly("0 1/2 F#4");
        assertThat(events(tune.measure(2))).containsExactly("0 3/8 D4", "3/8 3/8 C#4");
        assertThat(events(tune.measure(3))).containsExactly("0 3/4 Bb3");
    }

    @Test
    void withoutSignaturesTheMeterIsThatOfTheStandardAndTheKeyIsFound() {
        Track track = line(new Track(), 1, 0, new double[][] {
            {62, 1}, {66, 1}, {69, 1}, {66, 1}, {67, 1}, {64, 1}, {61, 1}, {69, 1}, {62, 2}, {66, 1}, {62, 1}
        });

        ReadTune read = read(track);

        assertThat(read.tune().measure(0).key()).isEqualTo(new Key(2, Mode.MAJOR));
        assertThat(said(read))
                .contains("assumed: meter 4/4, because the file names none", "assumed: key of D major, from the notes");
    }

    @Test
    void theMelodyIsFoundAmongBassChordsAndDrums() {
        Track bass = line(new Track().name("One"), 2, 0, new double[][] {{48, 2}, {43, 2}, {48, 4}});
        Track drums = line(new Track().name("Two"), 10, 0, new double[][] {{76, 1}, {77, 1}, {76, 1}, {77, 1}});
        Track melody = line(new Track().name("Three"), 1, 0, new double[][] {{72, 2}, {71, 2}, {72, 4}});

        ReadTune read = read(bass, drums, melody);

        assertThat(read.melody().part().label()).isEqualTo("T3 (Three)");
        assertThat(read.melody())
                .hasToString("T3 (Three), staff 1: the part most like a melody: high, one note at a time,"
                        + " named or sung as one");
        assertThat(read.parts()).extracting(PartInfo::label).containsExactly("T1 (One)", "T2 (Two)", "T3 (Three)");
        assertThat(said(read)).contains("left out: drum notes of part T2 (Two) (4)");
    }

    @Test
    void thePartAskedForIsTaken() {
        Track low = line(new Track().name("Low"), 2, 0, new double[][] {{60, 4}});
        Track high = line(new Track().name("High"), 1, 0, new double[][] {{72, 4}});
        byte[] bytes = MidiBytes.file(1, Q, low, high);

        for (String part : List.of("T1", "low", "1")) {
            ReadTune read = new TuneReader().read("tune.mid", bytes, ReadOptions.ofPart(part));

            assertThat(events(read.tune().measure(0))).containsExactly("0 1 C4");
        }
    }

    @Test
    void inOneTrackChannelsAreParts() {
        Track track = line(new Track().name("A small dance"), 2, 0, new double[][] {{48, 2}, {43, 2}});
        line(track, 1, 0, new double[][] {{72, 2}, {71, 2}});

        ReadTune read = read(MidiBytes.file(0, Q, track));

        assertThat(read.tune().title()).isEqualTo("A small dance");
        assertThat(read.melody().part().id()).isEqualTo("T1C1");
        assertThat(events(read.tune().measure(0))).containsExactly("0 1/2 C5", "1/2 1/2 B4");
    }

    @Test
    void chordsAreRecognisedInBassAndChord() {
        Track melody = new Track().name("Melody").meter(0, 3, 2).key(0, 0, false);
        line(melody, 1, 0, new double[][] {{76, 3}, {77, 3}, {74, 3}, {72, 3}});
        Track left = new Track().name("Left hand");
        int[][] bars = {{36, 48, 52, 55}, {38, 50, 53, 57}, {43, 50, 53, 55, 59}, {36, 48, 52, 55}};
        for (int i = 0; i < bars.length; i++) {
            long at = 3L * Q * i;
            left.note(2, bars[i][0], at, at + Q - 60);
            for (int beat = 1; beat < 3; beat++)
                for (int j = 1; j < bars[i].length; j++) left.note(2, bars[i][j], at + beat * Q, at + beat * Q + 300);
        }

        ReadTune read = read(melody, left);

        assertThat(read.tune().measures())
                .extracting(MidiReadingTest::chords)
                .containsExactly(List.of("0 C"), List.of("0 Dm"), List.of("0 G7"), List.of("0 C"));
        assertThat(said(read)).contains("assumed: chord symbols, recognised from the notes of T2 (Left hand) (4)");
    }

    @Test
    void aKeyboardPartIsPartedIntoMelodyAndChords() {
        Track piano = new Track().meter(0, 4, 2).key(0, 0, false);
        line(piano, 1, 0, new double[][] {{72, 1}, {74, 1}, {76, 2}, {74, 2}, {71, 2}});
        for (int pitch : new int[] {48, 52, 55}) piano.note(1, pitch, 0, 4L * Q);
        for (int pitch : new int[] {43, 47, 50}) piano.note(1, pitch, 4L * Q, 8L * Q);

        Tune tune = read(piano).tune();

        assertThat(events(tune.measure(0))).containsExactly("0 1/4 C5", "1/4 1/4 D5", "1/2 1/2 E5");
        assertThat(tune.measures()).extracting(MidiReadingTest::chords).containsExactly(List.of("0 C"), List.of("0 G"));
    }

    @Test
    void overlapIsCutAndNotesTogetherAreAChord() {
        Track track = new Track().meter(0, 4, 2).key(0, 0, false);
        track.note(1, 72, 0, 2L * Q).note(1, 74, Q, 2L * Q);
        track.note(1, 76, 2L * Q, 4L * Q).note(1, 72, 2L * Q, 4L * Q);

        ReadTune read = read(track);

        assertThat(events(read.tune().measure(0))).containsExactly("0 1/4 C5", "1/4 1/4 D5", "1/2 1/2 C5 E5");
        assertThat(said(read)).contains("changed: overlap in one voice; the earlier note is cut (measure 1)");
    }

    @Test
    void shortTouchIsNoRestAndAWrittenRestIsOne() {
        Track track = new Track().meter(0, 4, 2).key(0, 0, false);
        track.note(1, 72, 0, Q - 50).note(1, 74, Q, 2L * Q - 50).note(1, 76, 2L * Q, 3L * Q);

        assertThat(events(read(track).tune().measure(0)))
                .containsExactly("0 1/4 C5", "1/4 1/4 D5", "1/2 1/4 E5", "3/4 1/4");
    }

    @Test
    void syllablesStandUnderTheirNotes() {
        Track track = new Track().meter(0, 4, 2).key(0, 0, false);
        line(track, 1, 0, new double[][] {{72, 1}, {74, 1}, {76, 2}});
        track.lyric(0, "wa").lyric(Q, "ter ").lyric(2L * Q, "falls");

        Tune tune = read(track).tune();

        assertThat(tune.measure(0).melody().stream().flatMap(event -> event.marks().lyrics().stream()))
                .containsExactly(new Lyric(1, "wa", false), new Lyric(1, "ter", true), new Lyric(1, "falls", true));
    }

    @Test
    void aFileInRiffReadsTheSame() {
        byte[] plain = MidiBytes.file(1, Q, line(new Track(), 1, 0, new double[][] {{72, 4}}));

        assertThat(read(MidiBytes.riff(plain)).tune()).isEqualTo(read(plain).tune());
    }

    @Test
    void coarseDivisionsHoldTripletsAndSixteenths() {
        Track track = new Track().meter(0, 2, 2).key(0, 0, false);
        track.note(1, 72, 0, 8).note(1, 74, 8, 16).note(1, 76, 16, 24);
        track.note(1, 72, 24, 42).note(1, 74, 42, 48);

        assertThat(events(read(MidiBytes.file(0, 24, track)).tune().measure(0)))
                .containsExactly("0 1/12 C5", "1/12 1/12 D5", "1/6 1/12 E5", "1/4 3/16 C5", "7/16 1/16 D5");
    }
}
