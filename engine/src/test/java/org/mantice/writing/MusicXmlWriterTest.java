package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.mantice.examples.MusicXmlSchema;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReader;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** What a file says, element by element. */
class MusicXmlWriterTest {
    private static String xml(Tune tune) {
        return Written.text(MusicXmlWriter.write(tune)).replaceAll(">\\s+<", "><");
    }

    private static Tune with(Mark... marks) {
        return changed(Tunes.melody("4/4", "C4 w"), List.of(), List.of(marks));
    }

    private static Tune with(ChordSymbol symbol) {
        return changed(Tunes.melody("4/4", "C4 w"), List.of(new PlacedChord(MusicalTime.ZERO, symbol)), List.of());
    }

    private static Tune changed(Tune tune, List<PlacedChord> chords, List<Mark> marks) {
        Measure measure = tune.measure(0);
        return new Tune(
                tune.title(),
                tune.dance(),
                List.of(new Measure(
                        measure.number(),
                        measure.length(),
                        measure.meter(),
                        measure.key(),
                        measure.pickup(),
                        measure.melody(),
                        chords,
                        measure.bass(),
                        marks,
                        measure.barlines())));
    }

    private static Tune lasting(MusicalTime length) {
        Measure measure = Tunes.melody("4/4", "C4 w").measure(0);
        MelodyEvent event = MelodyEvent.note(MusicalTime.ZERO, length, Pitch.of(Step.C, 0, 4));
        return new Tune(
                "",
                Optional.empty(),
                List.of(new Measure(
                        "1",
                        length,
                        measure.meter(),
                        Key.C_MAJOR,
                        false,
                        List.of(event),
                        List.of(),
                        List.of(),
                        List.of(),
                        measure.barlines())));
    }

    @Test
    void theSameTuneGivesTheSameBytesWithoutDateOrDocumentType() {
        Tune tune = RandomTunes.tune(3);

        assertThat(MusicXmlWriter.write(tune)).isEqualTo(MusicXmlWriter.write(tune));
        assertThat(MusicXmlWriter.writeCompressed(tune)).isEqualTo(MusicXmlWriter.writeCompressed(tune));
        assertThat(xml(tune)).doesNotContain("encoding-date", "DOCTYPE").contains("<software>Mantice</software>");
    }

    /** Expected by hand: how a copyist shows these lengths. */
    @ParameterizedTest
    @CsvSource({
        "1, 4, quarter",
        "3, 8, quarter.",
        "7, 16, quarter..",
        "5, 8, half + eighth",
        "9, 8, whole + eighth",
        "15, 16, half.. + 16th",
        "1, 12, eighth 3:2",
        "1, 6, quarter 3:2",
        "5, 12, half 3:2 + eighth 3:2",
        "1, 20, 16th 5:4",
        "3, 28, eighth. 7:4",
        "1, 9, eighth 9:8",
        "2, 1, breve"
    })
    void lengthsAreShownAsNotesDotsTiesAndTuplets(long numerator, long denominator, String shown) {
        List<String> values = new ArrayList<>();
        for (NoteValue.Stretch each : NoteValue.of(MusicalTime.of(numerator, denominator))) {
            NoteValue value = each.value().orElseThrow();
            String tuplet = value.isTuplet() ? " " + value.actual() + ":" + value.normal() : "";
            values.add(value.type() + ".".repeat(value.dots()) + tuplet);
        }

        assertThat(String.join(" + ", values)).isEqualTo(shown);
    }

    @Test
    void aLengthThatNoNoteShowsBecomesTiedNotesAndIsReadBackAsOne() {
        Tune tune = lasting(MusicalTime.of(5, 8));

        assertThat(xml(tune))
                .contains("<type>half</type>", "<tied type=\"start\"/>", "<type>eighth</type>", ">same event<");
        assertThat(Written.read(MusicXmlWriter.write(tune)).tune()).isEqualTo(tune);
        assertThat(Written.readWithoutOurName(MusicXmlWriter.write(tune))
                        .tune()
                        .measure(0)
                        .melody())
                .hasSize(2);
    }

    @Test
    void aTripletHasABracketFromItsFirstToItsLastNote() {
        String xml = xml(Tunes.melody("2/4", "C4 et, D4 et, E4 et, F4 q"));

        assertThat(xml.split("<note>")[1]).contains("<tuplet type=\"start\"").doesNotContain("\"stop\"");
        assertThat(xml.split("<note>")[2]).contains("<actual-notes>3").doesNotContain("<tuplet");
        assertThat(xml.split("<note>")[3]).contains("<tuplet type=\"stop\"/>");
        assertThat(xml.split("<note>")[4]).doesNotContain("time-modification");
    }

    /** O33: the schema refuses 0 and 4 dots; the writer cannot be asked for them. An empty sign says nothing. */
    @Test
    void registrationsHaveOneToThreeMiddleDotsAndNoneIsEmpty() throws Exception {
        Mark master = new Mark.Registration(MusicalTime.ZERO, true, 2, true);
        Mark none = new Mark.Registration(MusicalTime.ZERO, false, 0, false);

        String xml = xml(with(master, none));

        assertThat(xml)
                .containsOnlyOnce("<accordion-registration>")
                .contains("<accordion-high/><accordion-middle>2</accordion-middle><accordion-low/>");
        assertThatThrownBy(() -> new Mark.Registration(MusicalTime.ZERO, true, 4, true))
                .isInstanceOf(IllegalArgumentException.class);
        for (String dots : new String[] {"0", "4"})
            assertThat(Written.problems(
                            Written.schema(),
                            xml.replace("middle>2<", "middle>" + dots + "<").getBytes(StandardCharsets.UTF_8)))
                    .isNotEmpty();
    }

    /** O36: all 33 kinds, valid and the same again; O34 among them. */
    @ParameterizedTest
    @EnumSource(ChordKind.class)
    void everyChordKindComesBack(ChordKind kind) throws Exception {
        NoteName root = kind == ChordKind.NONE ? new NoteName(Step.C, 0) : new NoteName(Step.B, 0);
        Tune tune = with(ChordSymbol.of(root, kind));

        byte[] written = MusicXmlWriter.write(tune);

        assertThat(Written.read(written).tune()).isEqualTo(tune);
        assertThat(Written.readWithoutOurName(written).tune()).isEqualTo(tune);
        assertThat(Written.problems(Written.schema(), written)).isEmpty();
    }

    /** O34: B half-diminished is B D F A. */
    @Test
    void halfDiminishedOnBIsStillBDFA() {
        Tune tune = with(ChordSymbol.of(new NoteName(Step.B, 0), ChordKind.HALF_DIMINISHED));

        ChordSymbol read = Written.read(MusicXmlWriter.write(tune))
                .tune()
                .measure(0)
                .chords()
                .get(0)
                .symbol();

        assertThat(read.pitchClasses()).containsExactly(2, 5, 9, 11);
    }

    /** MusicXML 4.0, type harmony-type: "alternate represents alternate analyses". */
    @Test
    void anAlternateIsAHarmonyOfItsOwnAndBracketsAreALevel() throws Exception {
        Tune tune = Tunes.melody("4/4", "\"G(Em)\" C4 h, \"(A7)\" D4 q, \"(D)(Bm)\" E4 q");

        byte[] written = MusicXmlWriter.write(tune);

        assertThat(xml(tune))
                .contains("<harmony type=\"alternate\"><root><root-step>E</root-step></root>"
                        + "<kind text=\"m\">minor</kind></harmony>")
                .contains("<level parentheses=\"yes\">optional</level>");
        assertThat(Written.problems(Written.schema(), written)).isEmpty();
        assertThat(Written.read(written).tune()).isEqualTo(tune);
        assertThat(Written.readWithoutOurName(written).tune()).isEqualTo(tune);
    }

    /** MusicXML 4.0, element kind: the root of "none" has no meaning and is kept from being shown. */
    @Test
    void noChordHidesItsRoot() {
        assertThat(xml(with(ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.NONE))))
                .contains("<root-step text=\"\">C</root-step>");
    }

    @Test
    void aPhraseStartIsReadBackByAnyName() {
        Tune tune = with(new Mark.PhraseStart(MusicalTime.QUARTER));

        assertThat(xml(tune)).contains("<other-direction print-object=\"no\">phrase start</other-direction>");
        assertThat(Written.readWithoutOurName(MusicXmlWriter.write(tune)).tune())
                .isEqualTo(tune);
    }

    @Test
    void aBeatOfTiedValuesIsShownAsSuchAndOneInATupletBecomesQuarters() {
        Tune tied = with(new Mark.TempoChange(MusicalTime.ZERO, new Tempo(MusicalTime.of(5, 8), 40_000)));
        Tune triplet = with(new Mark.TempoChange(MusicalTime.QUARTER, new Tempo(MusicalTime.of(1, 6), 90_000)));

        assertThat(xml(tied)).contains("<beat-unit-tied><beat-unit>eighth</beat-unit>", "<sound tempo=\"100\"/>");
        assertThat(Written.readWithoutOurName(MusicXmlWriter.write(tied)).tune())
                .isEqualTo(tied);
        assertThat(Written.read(MusicXmlWriter.write(triplet)).tune())
                .isEqualTo(with(new Mark.TempoChange(MusicalTime.QUARTER, Tempo.quarters(60))));
    }

    /** O58: A with two endings plays A 1 A 2; the endings are written as such. */
    @Test
    void repeatsEndingsAndJumpsComeBackWithTheirPlayback() {
        Tune tune = Tunes.melody(
                "2/4",
                "@start @segno C4 h | @ending1 @stop @end D4 h | @ending2 @stop @double E4 h | @tocoda F4 h | @ds G4 h"
                        + " | @coda @double C4 h");

        assertThat(xml(tune))
                .contains(
                        "<ending number=\"1\" type=\"start\"/>",
                        "<ending number=\"1\" type=\"stop\"/>",
                        "direction=\"backward\" times=\"2\" after-jump=\"yes\"",
                        "<sound segno=\"segno\"/>",
                        "<sound tocoda=\"coda\"/>",
                        "<words>D.S. al Coda</words>",
                        "<sound dalsegno=\"segno\"/>",
                        "<sound coda=\"coda\"/>");
        assertThat(Written.readWithoutOurName(MusicXmlWriter.write(tune)).tune())
                .isEqualTo(tune);
    }

    @Test
    void wordsAreReadAsNothingButWordsInAFileOfOurs() {
        Tune tune = with(
                new Mark.Words(MusicalTime.ZERO, "D.C. al Fine"),
                new Mark.Words(MusicalTime.ZERO, "cresc."),
                new Mark.Dynamic(MusicalTime.QUARTER, Loudness.F));

        assertThat(Written.read(MusicXmlWriter.write(tune)).tune()).isEqualTo(tune);
    }

    @Test
    void textsAreEscapedAndWhatXmlCannotHoldIsLeftOut() {
        Tune tune = new Tune("A <\"b\"> & c\u0001", Optional.empty(), with().measures());

        assertThat(xml(tune)).contains("<movement-title>A &lt;\"b\"&gt; &amp; c</movement-title>");
        assertThat(Written.read(MusicXmlWriter.write(tune)).tune().title()).isEqualTo("A <\"b\"> & c");
    }

    @Test
    void aPitchBelowOctave0IsRefusedWithItsPlace() {
        MelodyNote low = MelodyNote.of(Pitch.of(Step.B, 0, -1));
        MelodyEvent event = new MelodyEvent(
                MusicalTime.ZERO,
                MusicalTime.WHOLE,
                List.of(low),
                GraceGroup.NONE,
                GraceGroup.NONE,
                with().measure(0).melody().get(0).marks());
        Measure plain = with().measure(0);
        Tune tune = new Tune(
                "Low",
                Optional.empty(),
                List.of(new Measure(
                        "7",
                        plain.length(),
                        plain.meter(),
                        plain.key(),
                        false,
                        List.of(event),
                        List.of(),
                        List.of(),
                        List.of(),
                        plain.barlines())));

        assertThatThrownBy(() -> MusicXmlWriter.write(tune))
                .isInstanceOf(TuneWriteException.class)
                .hasMessage("Low, measure 7: MusicXML has no octave for B-1; allowed: octaves 0 to 9");
    }

    @Test
    void timeThatIsTooFineIsRefused() {
        assertThatThrownBy(() -> MusicXmlWriter.write(lasting(MusicalTime.of(1, 4_000_004))))
                .isInstanceOf(TuneWriteException.class)
                .hasMessageContaining("allowed: 1000000 divisions a quarter note");
    }

    /** MusicXML 4.0, ".mxl files": the kind comes first and unpacked, META-INF/container.xml names the score. */
    @Test
    void theArchiveHasItsKindFirstThenTheContainerThenTheScore() throws Exception {
        Tune tune = RandomTunes.tune(5);
        byte[] archive = MusicXmlWriter.writeCompressed(tune);

        List<String> names = new ArrayList<>();
        byte[] container = new byte[0];
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
                byte[] bytes = zip.readAllBytes();
                if (names.size() == 1) assertThat(entry.getMethod()).isEqualTo(ZipEntry.STORED);
                if (names.size() == 2) container = bytes;
            }
        }

        assertThat(names).containsExactly("mimetype", "META-INF/container.xml", "score.musicxml");
        assertThat(new String(archive, 30, 42, StandardCharsets.US_ASCII))
                .isEqualTo("mimetypeapplication/vnd.recordare.musicxml");
        assertThat(new TuneReader().read("x.mxl", archive, ReadOptions.DEFAULT).tune())
                .isEqualTo(tune);
        Optional<MusicXmlSchema> schema = MusicXmlSchema.find("container.xsd");
        Assumptions.assumeTrue(schema.isPresent(), "the corpus with the schema is absent");
        assertThat(Written.problems(schema.get(), container)).isEmpty();
    }
}
