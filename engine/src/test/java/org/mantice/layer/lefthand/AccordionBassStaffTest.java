package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.examples.ExampleFiles;
import org.mantice.examples.MusicXmlSchema;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.BassSound;
import org.mantice.instrument.StradellaBass;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.LeftHandPlan;
import org.mantice.player.BassMethod;
import org.mantice.reading.Corpus;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.writing.MusicXmlWriter;
import org.xml.sax.InputSource;

class AccordionBassStaffTest {
    private static final StradellaBass FULL = StradellaBass.ofSize(120);

    private static Performance once(Tune tune) {
        return Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(1).build());
    }

    private static LeftHandPlan plan(Performance performance, int buttons) {
        return LeftHands.best(LeftHands.layer(performance, buttons, BassMethod.FOUR_THREE_TWO, LeftHands.RULES));
    }

    private static AccordionBassStaff staff(Performance performance, int buttons) {
        return AccordionBassStaff.of(performance, plan(performance, buttons), StradellaBass.ofSize(buttons));
    }

    private static AccordionBassStaff staff(String meter, String tune) {
        return staff(once(Tunes.melody(meter, tune)), 120);
    }

    private static Tune written(Performance performance, AccordionBassStaff staff) {
        return MusicXmlWriter.unrolled(
                performance, (played, measure) -> measure.withBass(staff.measure(played.index())));
    }

    private static ReadTune read(byte[] bytes) {
        return new TuneReader().read("written.musicxml", bytes, ReadOptions.DEFAULT);
    }

    private static List<String> shown(List<BassEvent> events) {
        return events.stream()
                .map(event -> event.duration()
                        + (event.isRest() ? " rest" : " " + event.pitches().get(0))
                        + (event.marks().counterbass() ? "_" : "")
                        + event.chord().map(BassChordType::letter).orElse(""))
                .toList();
    }

    @Test
    void aWaltzIsWrittenInQuartersHowEverShortTheySound() {
        AccordionBassStaff staff = staff("3/4", "!tempo=150 \"C\" C4 h. | \"G7\" D4 h. | \"Am\" E4 h. | \"C\" C4 h.");

        assertThat(shown(staff.measure(0))).containsExactly("1/4 C2", "1/4 C4M", "1/4 C4M");
        assertThat(shown(staff.measure(1))).containsExactly("1/4 G2", "1/4 G37", "1/4 G37");
        assertThat(shown(staff.measure(2))).containsExactly("1/4 A2", "1/4 A3m", "1/4 A3m");
    }

    @Test
    void restsFillWhatThePatternLeaves() {
        AccordionBassStaff staff = staff("3/4", "@pickup G4 q | \"C\" C4 h. | \"G7\" D4 h. | \"C\" C4 h.");

        assertThat(shown(staff.measure(0))).containsExactly("1/4 rest");
        assertThat(shown(staff.measure(3))).endsWith("1/4 rest");
    }

    @Test
    void bassAndChordStruckTogetherStandAtOnePlace() {
        List<BassEvent> together =
                staff("3/4", "!tempo=400 \"C\" C4 h. | \"G\" G4 h.").measure(0);

        assertThat(together).extracting(BassEvent::offset).containsOnly(MusicalTime.ZERO);
        assertThat(shown(together)).containsExactly("3/4 C2", "3/4 C4M");
    }

    /** As published (German encyclopaedia article): basses in the great octave, chords from about small e-flat to f1. */
    @Test
    void basesStandInTheGreatOctaveAndChordsAroundSmallG() {
        Performance performance = once(Tunes.melody("4/4", "\"C\" C4 w"));
        BassSigns signs = new BassSigns(performance, FULL.sound());
        LeftHandPlan.Event press = plan(performance, 120).events().get(0);

        for (BassButton button : FULL.allButtons()) {
            Pitch pitch = signs.pitch(button, press);
            if (button.row().isChord()) assertThat(pitch.midi()).isBetween(51, 65);
            else assertThat(pitch.midi()).isBetween(36, 47);
            assertThat(pitch.name().pitchClass()).isEqualTo(button.noteName().pitchClass());
        }
    }

    /** The letter is printed where the chord changes; elsewhere it is in the file for programs to play. */
    @Test
    void lettersArePrintedWhereTheChordChanges() {
        Performance performance =
                once(Tunes.melody("3/4", "!tempo=150 \"C\" C4 h. | C4 h. | \"G7\" D4 h. | \"C\" C4 h."));
        String text =
                new String(MusicXmlWriter.write(written(performance, staff(performance, 120))), StandardCharsets.UTF_8);

        assertThat(text.split("<lyric>", -1)).hasSize(1 + 3);
        assertThat(text.split("<lyric print-object=\"no\">", -1)).hasSize(1 + 4);
    }

    @Test
    void aCounterbassIsUnderlinedAndComesBackOnItsRow() {
        Performance performance = once(Tunes.melody("4/4", "\"C/E\" C4 w | \"C/E\" C4 w | \"C\" C4 w"));
        AccordionBassStaff staff = staff(performance, 120);
        byte[] bytes = MusicXmlWriter.write(written(performance, staff));

        assertThat(shown(staff.measure(0))).startsWith("1/4 E2_");
        assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("<text underline=\"1\">E</text>");
        assertThat(read(bytes).skipped()).isEmpty();
    }

    /** Letters of the rows: New International Manual of Braille Music Notation, accordion chapter (M, m, 7, d). */
    @Test
    void eachRowHasItsLetterAndTheCounterbassItsLine() {
        assertThat(Stream.of(BassRow.values())
                        .map(row -> BassSigns.letter(new BassButton(row, 0))
                                        .map(BassChordType::letter)
                                        .orElse("-")
                                + BassSigns.marks(new BassButton(row, 0), 3).counterbass())
                        .toList())
                .containsExactly("-true", "-false", "Mfalse", "mfalse", "7false", "dfalse");
    }

    /** A chord is spelled by its symbol, whichever of two equal buttons plays it. */
    @Test
    void notesAreSpelledByTheChordThatHolds() {
        AccordionBassStaff flat = staff("4/4", "\"Db\" C4 w | \"Db\" C4 w | \"Db\" C4 w");
        AccordionBassStaff sharp = staff("4/4", "\"C#m\" C4 w | \"C#m\" C4 w | \"C#m\" C4 w");

        assertThat(shown(flat.measure(0)).get(0)).contains("Db2");
        assertThat(shown(sharp.measure(0)).get(0)).contains("C#2");
    }

    /** O21, an encyclopaedia article: of twelve roots exactly four have their counterbass below the root. */
    @Test
    void exactlyFourRootsHaveTheirCounterbassBelowThem() {
        Performance performance = once(Tunes.melody("4/4", "\"C\" C4 w"));
        for (int lowest = 24; lowest < 48; lowest++) {
            BassSigns signs = new BassSigns(performance, new BassSound(lowest, 54, 4, 6));
            LeftHandPlan.Event press = plan(performance, 120).events().get(0);
            int below = 0;
            for (int column = -5; column <= 6; column++)
                if (signs.pitch(new BassButton(BassRow.COUNTERBASS, column), press)
                                .midi()
                        < signs.pitch(new BassButton(BassRow.BASS, column), press)
                                .midi()) below++;

            assertThat(below).as("lowest bass %s", lowest).isEqualTo(4);
        }
    }

    @Test
    void examplesComeBackAndArePlannedOnTheSameButtons() throws Exception {
        List<Performance> performances = new ArrayList<>();
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            for (Path file : files.sorted().toList())
                performances.add(once(new TuneReader().read(file).tune()));
        }

        check(performances, "examples");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mxl-leadsheets-pd", "abc-nottingham"})
    void corpusTunesComeBackAndArePlannedOnTheSameButtons(String folder) throws Exception {
        List<Performance> performances = new ArrayList<>();
        for (Corpus.Numbered file : Corpus.files(folder, ".mxl", ".abc")) {
            try {
                Tune tune = new TuneReader().read(file.path()).tune();
                if (performances.size() < 40) performances.add(once(tune));
            } catch (TuneReadException e) {
                // what cannot be read is another test's matter
            }
        }

        check(performances, folder);
    }

    private static void check(List<Performance> performances, String name) throws Exception {
        Optional<MusicXmlSchema> schema = MusicXmlSchema.find();
        int presses = 0;
        for (Performance performance : performances)
            for (int buttons : List.of(48, 120)) {
                LeftHandPlan plan = plan(performance, buttons);
                if (plan.events().isEmpty()) continue;
                Tune tune =
                        written(performance, AccordionBassStaff.of(performance, plan, StradellaBass.ofSize(buttons)));
                tune.measures().forEach(measure -> assertFilled(measure.bass(), measure.length()));
                byte[] bytes = MusicXmlWriter.write(tune);
                if (schema.isPresent())
                    assertThat(schema.get().problems(new InputSource(new ByteArrayInputStream(bytes))))
                            .isEmpty();
                ReadTune again = read(bytes);
                assertThat(again.tune().measures().stream()
                                .map(each -> each.bass())
                                .toList())
                        .as(tune.title())
                        .isEqualTo(tune.measures().stream()
                                .map(each -> each.bass())
                                .toList());
                LeftHandPlan second = plan(once(again.tune()), buttons);
                assertThat(second.events()).as(tune.title()).hasSameSizeAs(plan.events());
                for (int i = 0; i < plan.events().size(); i++) {
                    assertThat(signs(second.events().get(i).buttons()))
                            .as("%s, %s buttons, event %s", tune.title(), buttons, i)
                            .isEqualTo(signs(plan.events().get(i).buttons()));
                    presses++;
                }
            }
        assertThat(presses).as(name).isGreaterThan(1_000);
    }

    /** Row and root: what a staff can say. Of equal buttons at both ends of the columns it cannot tell which is meant. */
    private static List<String> signs(Collection<BassButton> buttons) {
        return buttons.stream()
                .map(button -> button.row() + " " + button.rootPitchClass())
                .toList();
    }

    private static void assertFilled(List<BassEvent> events, MusicalTime length) {
        MusicalTime end = MusicalTime.ZERO;
        for (BassEvent event : events) {
            assertThat(event.offset()).isLessThanOrEqualTo(end);
            end = end.max(event.end());
        }
        assertThat(end).isEqualTo(length);
    }
}
