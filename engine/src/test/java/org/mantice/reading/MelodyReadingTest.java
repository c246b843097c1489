package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Articulation;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.EventMarks;
import org.mantice.tune.Key;
import org.mantice.tune.Lyric;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Meter;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;

/** Invented snippets, one feature each. */
class MelodyReadingTest {
    /** As {@code "C4:1/4 z:1/2"}; a tilde before and after a pitch shows its ties. */
    private static String shown(Measure measure) {
        return measure.melody().stream().map(MelodyReadingTest::shown).collect(Collectors.joining(" "));
    }

    private static String shown(MelodyEvent event) {
        String notes = event.notes().stream()
                .map(note -> (note.tiedBack() ? "~" : "") + note.pitch() + (note.tiedForward() ? "~" : ""))
                .collect(Collectors.joining("+"));
        return (event.isRest() ? "z" : notes) + ":" + event.duration();
    }

    private static Measure first(ReadTune read) {
        return read.tune().measure(0);
    }

    private static List<String> skipped(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    @Test
    void notesRestsAndChords() {
        ReadTune read = Xml.read(Xml.score(Xml.note("C4", 4)
                + Xml.rest(4)
                + Xml.note("E4", 8)
                + Xml.chordNote("C4", 8)
                + Xml.chordNote("G#4", 8)));

        assertThat(shown(first(read))).isEqualTo("C4:1/4 z:1/4 C4+E4+G#4:1/2");
        assertThat(read.skipped()).isEmpty();
        assertThat(read.melody())
                .hasToString("P1 (Tune), staff 1: the only part with pitched notes; "
                        + "its first voice with notes in each measure");
        assertThat(read.fingerprint()).matches("[0-9a-f]{64}");
    }

    @Test
    void tiesAcrossTheBarlineAndTiesThatNeverEnd() {
        String start = "<tie type=\"start\"/>";
        String stop = "<tie type=\"stop\"/>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 16, start),
                Xml.note("C4", 8, stop, start) + Xml.note("D4", 8),
                Xml.note("E4", 16, stop)));

        assertThat(shown(first(read))).isEqualTo("C4~:1");
        assertThat(shown(read.tune().measure(1))).isEqualTo("~C4:1/2 D4:1/2");
        assertThat(shown(read.tune().measure(2))).isEqualTo("E4:1");
        assertThat(skipped(read)).containsExactly("left out: tie without its other end (2; measures 2, 3)");
    }

    @Test
    void aTieIntoASecondEndingIsKept() {
        String start = "<tie type=\"start\"/>";
        String stop = "<tie type=\"stop\"/>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 16, start),
                Xml.barline("left", "<ending number=\"1\" type=\"start\"/>")
                        + Xml.note("C4", 16, stop)
                        + Xml.barline("right", "<ending number=\"1\" type=\"stop\"/><repeat direction=\"backward\"/>"),
                Xml.barline("left", "<ending number=\"2\" type=\"start\"/>")
                        + Xml.note("C4", 16, stop)
                        + Xml.barline("right", "<ending number=\"2\" type=\"stop\"/>")));

        assertThat(shown(read.tune().measure(2))).isEqualTo("~C4:1");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void graceNotesBeforeAndAfter() {
        ReadTune read = Xml.read(Xml.score(Xml.grace("B3") + Xml.grace("C4") + Xml.note("D4", 8)
                + "<note><grace steal-time-previous=\"20\"/>" + Xml.pitch("E4") + "</note>" + Xml.note("F4", 8)
                + Xml.grace("G4")));

        MelodyEvent before = first(read).melody().get(0);
        MelodyEvent last = first(read).melody().get(1);
        assertThat(before.graces().notes()).hasSize(2);
        assertThat(before.after().notes()).hasSize(1);
        assertThat(last.graces().notes()).isEmpty();
        assertThat(last.after().notes()).hasSize(1);
    }

    @Test
    void graceNotesBeforeTheBarlineGoToTheNextNoteWhereNoneStandsBefore() {
        ReadTune read = Xml.read(Xml.score(Xml.rest(16) + Xml.grace("B3"), Xml.note("C4", 16)));

        assertThat(read.tune().measure(1).melody().get(0).graces().notes()).hasSize(1);
    }

    @Test
    void tripletsAreExactEvenWhereTheDivisionsAreNot() {
        String triplet = "<type>eighth</type><time-modification><actual-notes>3</actual-notes>"
                + "<normal-notes>2</normal-notes></time-modification>";
        ReadTune read = Xml.read(Xml.score(Xml.note("C4", 1, triplet) + Xml.note("D4", 1, triplet)
                + Xml.note("E4", 2, triplet) + Xml.note("F4", 12)
                + "<backup><duration>12</duration></backup>"
                + Xml.note("C3", 12, "<voice>2</voice>")));

        assertThat(shown(first(read))).isEqualTo("C4:1/12 D4:1/12 E4:1/12 F4:3/4");
        assertThat(first(read).length()).isEqualTo(MusicalTime.WHOLE);
    }

    @Test
    void aLengthThatIsMissingIsReadFromTheNoteValue() {
        ReadTune read = Xml.read(Xml.score("<note>" + Xml.pitch("C4") + "<type>half</type><dot/></note>" + "<note>"
                + Xml.pitch("D4") + "</note>" + Xml.note("E4", 4)));

        assertThat(shown(first(read))).isEqualTo("C4:3/4 E4:1/4");
        assertThat(skipped(read))
                .containsExactly(
                        "left out: note without a length (measure 1)",
                        "changed: note length \"\" read as 3/4 of a whole note (measure 1)");
    }

    @Test
    void missingDivisionsMeanOneAQuarter() {
        ReadTune read = Xml.read(Xml.score(Xml.note("C4", 4)).replace("<divisions>4</divisions>", ""));

        assertThat(shown(first(read))).isEqualTo("C4:1");
        assertThat(skipped(read)).containsExactly("assumed: one division a quarter note (measure 1)");
    }

    @Test
    void forwardLeavesSilenceAndOtherVoicesAreListed() {
        ReadTune read = Xml.read(Xml.score(Xml.note("C5", 4, "<voice>1</voice>")
                + "<forward><duration>8</duration></forward>" + Xml.note("D5", 4, "<voice>1</voice>")
                + "<backup><duration>16</duration></backup>" + Xml.note("E4", 16, "<voice>2</voice>")));

        assertThat(first(read).melody())
                .extracting(MelodyEvent::offset)
                .containsExactly(MusicalTime.ZERO, MusicalTime.of(3, 4));
        assertThat(skipped(read)).containsExactly("left out: notes of voice 2 on staff 1 (measure 1)");
    }

    @Test
    void whereVoicesAlternateTheFirstWithNotesIsTakenInEachMeasure() {
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C5", 16, "<voice>1</voice>"),
                "<note><rest measure=\"yes\"/><duration>16</duration><voice>1</voice></note>"
                        + "<backup><duration>16</duration></backup>" + Xml.note("E4", 16, "<voice>2</voice>")));

        assertThat(shown(read.tune().measure(1))).isEqualTo("E4:1");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void overlapsInOneVoiceAreCutAndNotesAtOnePlaceJoined() {
        ReadTune read = Xml.read(Xml.score(Xml.note("C4", 8, "<voice>1</voice>")
                + "<backup><duration>4</duration></backup>" + Xml.note("D4", 12, "<voice>1</voice>")
                + "<backup><duration>12</duration></backup>" + Xml.note("F4", 12, "<voice>1</voice>")));

        assertThat(shown(first(read))).isEqualTo("C4:1/4 D4+F4:3/4");
        assertThat(skipped(read))
                .containsExactly(
                        "changed: overlap in one voice; the earlier note is cut (measure 1)",
                        "changed: two notes of one voice at one place read as a chord (measure 1)");
    }

    @Test
    void pickupOverfullUnderfullAndEmptyMeasures() {
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 4), Xml.note("D4", 20), "", Xml.note("E4", 8), Xml.note("F4", 16), Xml.note("G4", 12)));

        assertThat(read.tune().measures())
                .extracting(Measure::pickup)
                .containsExactly(true, false, false, false, false, false);
        assertThat(read.tune().measures())
                .extracting(measure -> measure.length().toString())
                .containsExactly("1/4", "5/4", "1", "1/2", "1", "3/4");
        assertThat(skipped(read))
                .containsExactly(
                        "changed: measure longer than its meter, kept as written (measure 2)",
                        "changed: measure shorter than its meter, kept as written (measure 4)");
    }

    @Test
    void measureZeroAndTheSecondHalfOfASplitMeasureDoNotCount() {
        ReadTune read = Xml.read(Xml.score(Xml.note("C4", 4), Xml.note("D4", 8), Xml.note("E4", 8), Xml.note("F4", 16))
                .replace("number=\"1\"", "number=\"0\" implicit=\"yes\"")
                .replace("number=\"3\"", "number=\"X1\" implicit=\"yes\""));

        assertThat(read.tune().measures()).extracting(Measure::number).containsExactly("0", "2", "X1", "4");
        assertThat(read.tune().measures()).extracting(Measure::pickup).containsExactly(true, false, true, false);
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void metersOfEveryKind() {
        String meter = "<attributes><time>%s</time></attributes>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 16),
                meter.formatted("<beats>3+2</beats><beat-type>8</beat-type>") + Xml.note("C4", 10),
                meter.formatted("<beats>2</beats><beat-type>4</beat-type><beats>3</beats><beat-type>8</beat-type>")
                        + Xml.note("C4", 14),
                meter.formatted("<senza-misura/>") + Xml.note("C4", 20),
                meter.formatted("<beats>none</beats><beat-type>4</beat-type>") + Xml.note("C4", 6),
                meter.formatted("<beats>4</beats><beat-type>5</beat-type>") + Xml.note("C4", 6)));

        assertThat(read.tune().measures())
                .extracting(measure -> measure.meter().toString())
                .containsExactly("4/4", "3+2/8", "4+3/8", "free", "free", "free");
        assertThat(read.tune().measure(3).length()).isEqualTo(MusicalTime.of(5, 4));
        assertThat(skipped(read)).containsExactly("left out: time signature 4/5 (measure 6)");
    }

    @Test
    void withoutATimeSignatureTheCommonestLengthDecides() {
        String xml = Xml.score(Xml.note("C4", 4), Xml.note("C4", 12), Xml.note("D4", 12), Xml.note("E4", 12))
                .replaceAll("<time>.*?</time>", "");
        ReadTune read = Xml.read(xml);

        assertThat(read.tune().measures()).extracting(Measure::meter).containsOnly(Meter.of(3, 4));
        assertThat(read.tune().measures()).extracting(Measure::pickup).containsExactly(true, false, false, false);
        assertThat(skipped(read)).containsExactly("assumed: meter 3/4, from the length of most measures");
    }

    @Test
    void keysChangeAtBarlinesAndStrangeOnesAreListed() {
        String key = "<attributes><key>%s</key></attributes>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 16),
                key.formatted("<fifths>-3</fifths><mode>minor</mode>") + Xml.note("C4", 16),
                Xml.note("C4", 8) + key.formatted("<fifths>2</fifths><mode>dorian</mode>") + Xml.note("C4", 8),
                key.formatted("<key-step>F</key-step><key-alter>1</key-alter>") + Xml.note("C4", 16)));

        assertThat(read.tune().measures())
                .extracting(Measure::key)
                .containsExactly(
                        new Key(0, Mode.NONE),
                        new Key(-3, Mode.MINOR),
                        new Key(-3, Mode.MINOR),
                        new Key(2, Mode.DORIAN));
        assertThat(skipped(read))
                .containsExactly(
                        "left out: key signature that is not a row of fifths (measure 4)",
                        "changed: key change in mid-measure takes effect at the next measure (measure 3)");
    }

    @Test
    void transposingPartsSoundInTheirSoundingKey() {
        String clarinet = "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>";
        ReadTune read = Xml.read(Xml.score(Xml.harmony("D", "minor") + Xml.note("D4", 8) + Xml.note("F#4", 8))
                .replace("<fifths>0", "<fifths>2")
                .replace("</attributes>", clarinet));

        assertThat(shown(first(read))).isEqualTo("C4:1/2 E4:1/2");
        assertThat(first(read).key().fifths()).isZero();
        assertThat(first(read).chords().get(0).symbol()).hasToString("Cm");
    }

    @Test
    void aTransposedKeyBeyondSevenSharpsIsRespelled() {
        String part = "<transpose><diatonic>-1</diatonic><chromatic>-1</chromatic></transpose></attributes>";
        ReadTune read = Xml.read(
                Xml.score(Xml.note("G#4", 16)).replace("<fifths>0", "<fifths>4").replace("</attributes>", part));

        assertThat(first(read).key().fifths()).isEqualTo(-3);
        assertThat(shown(first(read))).isEqualTo("G4:1");
        assertThat(Transposition.of(1, 1, 1)
                        .keeping(new Key(6, Mode.MAJOR))
                        .of(new Key(6, Mode.MAJOR))
                        .fifths())
                .isEqualTo(1);
    }

    @Test
    void octaveShiftsAreAlreadyInThePitches() {
        ReadTune read =
                Xml.read(Xml.score(Xml.direction("<octave-shift type=\"down\" size=\"8\"/>") + Xml.note("C6", 16)));

        assertThat(shown(first(read))).isEqualTo("C6:1");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void cueNotesMicrotonesUnpitchedAndUnreadableNotesAreListed() {
        ReadTune read = Xml.read(Xml.score("<note><cue/>" + Xml.pitch("C5") + "<duration>4</duration></note>"
                + "<note><unpitched/><duration>4</duration></note>"
                + "<note><pitch><step>C</step><alter>0.5</alter><octave>4</octave></pitch><duration>4</duration></note>"
                + "<note><pitch><step>H</step><octave>4</octave></pitch><duration>4</duration></note>"));

        assertThat(shown(first(read))).isEqualTo("C4:1/4");
        assertThat(skipped(read))
                .containsExactly(
                        "left out: cue notes (measure 1)",
                        "left out: notes without pitch (measure 1)",
                        "left out: note with unreadable pitch H4 (measure 1)",
                        "changed: microtone 0.5 rounded to a semitone (measure 1)");
    }

    @Test
    void multipleMeasureRestsAndMeasureRepeats() {
        ReadTune read = Xml.read(Xml.score(
                "<note><rest measure=\"yes\"/><duration>999</duration></note>",
                Xml.note("C4", 8) + Xml.note("D4", 8),
                "<attributes><measure-style><measure-repeat"
                        + " type=\"start\">1</measure-repeat></measure-style></attributes>",
                "",
                "<attributes><measure-style><measure-repeat type=\"stop\"/></measure-style></attributes>"
                        + Xml.note("E4", 16)));

        assertThat(shown(first(read))).isEqualTo("z:1");
        assertThat(shown(read.tune().measure(2))).isEqualTo("C4:1/2 D4:1/2");
        assertThat(shown(read.tune().measure(3))).isEqualTo("C4:1/2 D4:1/2");
        assertThat(shown(read.tune().measure(4))).isEqualTo("E4:1");
        assertThat(skipped(read)).containsExactly("changed: measure repeat sign written out (2; measures 3, 4)");
    }

    @Test
    void fingeringsSubstitutionsAndFingersOfAWholeChordAtOneNote() {
        String technical = "<notations><technical>%s</technical></notations>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 4, technical.formatted("<fingering>1</fingering>"))
                        + Xml.note(
                                "D4",
                                4,
                                technical.formatted(
                                        "<fingering>2</fingering><fingering substitution=\"yes\">3</fingering>"))
                        + Xml.note("E4", 4, technical.formatted("<fingering>5-4</fingering>"))
                        + Xml.note("E4", 4, technical.formatted("<fingering>5</fingering><fingering>1</fingering>"))
                        + Xml.chordNote("C5", 4),
                Xml.note(
                        "C4",
                        16,
                        technical.formatted(
                                "<fingering>7</fingering>" + "<fingering alternate=\"yes\">2</fingering>"))));

        assertThat(first(read).melody())
                .extracting(event -> event.notes().get(0).fingers())
                .containsExactly(List.of(1), List.of(2, 3), List.of(5, 4), List.of(1));
        assertThat(first(read).melody().get(3).notes().get(1).fingers()).containsExactly(5);
        assertThat(skipped(read))
                .containsExactly(
                        "left out: fingering \"7\" (measure 2)",
                        "left out: fingering \"2\" (measure 2)",
                        "changed: fingers written at one note shared out over its chord (measure 1)");
    }

    @Test
    void slursCountAndOnesFromAGraceNoteToItsNoteDoNot() {
        String slur = "<notations><slur type=\"%s\" number=\"%s\"/></notations>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 4, slur.formatted("start", "1"))
                        + Xml.grace("E4", slur.formatted("start", "2"))
                        + Xml.note("D4", 4, slur.formatted("stop", "2"))
                        + Xml.note("E4", 8, slur.formatted("stop", "1")),
                Xml.note("E4", 16, slur.formatted("stop", "3"))));

        assertThat(first(read).melody())
                .extracting(event -> event.marks().slurStarts())
                .containsExactly(1, 0, 0);
        assertThat(first(read).melody())
                .extracting(event -> event.marks().slurStops())
                .containsExactly(0, 0, 1);
        assertThat(skipped(read)).containsExactly("left out: slur without its other end (measure 2)");
    }

    @Test
    void aSlurBetweenTwoEqualNeighboursIsATieUnlessTheSecondIsSungOrTouched() {
        String start = "<notations><slur type=\"start\"/></notations>";
        String stop = "<notations><slur type=\"stop\"/></notations>";
        String touched = "<notations><slur type=\"stop\"/><articulations><staccato/></articulations></notations>";
        ReadTune read = Xml.read(Xml.score(
                Xml.note("C4", 16, start),
                Xml.note("C4", 8, stop)
                        + Xml.note("D4", 4, start)
                        + Xml.note("D4", 4, stop, "<lyric><text>la</text></lyric>"),
                Xml.note("E4", 8, start) + Xml.note("E4", 8, touched)));

        assertThat(shown(first(read))).isEqualTo("C4~:1");
        assertThat(shown(read.tune().measure(1))).isEqualTo("~C4:1/2 D4:1/4 D4:1/4");
        assertThat(shown(read.tune().measure(2))).isEqualTo("E4:1/2 E4:1/2");
        assertThat(read.tune().measure(1).melody())
                .extracting(event -> event.marks().slurStarts())
                .containsExactly(0, 1, 0);
        assertThat(skipped(read))
                .containsExactly("changed: slur between two equal neighbours read as a tie (measure 1)");
    }

    @Test
    void articulationsBreathsFermatasAndLyrics() {
        ReadTune read = Xml.read(Xml.score(Xml.note(
                        "C4",
                        4,
                        "<notations><articulations><staccato/><accent/></articulations></notations>",
                        "<lyric number=\"1\"><syllabic>begin</syllabic><text>Mor</text></lyric>"
                                + "<lyric number=\"2\"><text>Oh,</text></lyric>")
                + Xml.note(
                        "D4",
                        4,
                        "<notations><articulations><breath-mark>comma</breath-mark></articulations>"
                                + "<fermata/></notations>",
                        "<lyric><syllabic>end</syllabic><text>ning</text><elision/><text>air!</text></lyric>")
                + Xml.note(
                        "E4",
                        8,
                        "<notations><articulations><caesura/><doit/></articulations>"
                                + "<ornaments><trill-mark/></ornaments></notations>")));

        EventMarks marks = first(read).melody().get(0).marks();
        assertThat(marks.articulations()).containsExactly(Articulation.STACCATO, Articulation.ACCENT);
        assertThat(marks.lyrics()).containsExactly(new Lyric(1, "Mor", false), new Lyric(2, "Oh,", true));
        EventMarks second = first(read).melody().get(1).marks();
        assertThat(second.breathAfter()).isTrue();
        assertThat(second.fermata()).isTrue();
        assertThat(second.lyrics()).containsExactly(new Lyric(1, "ning air!", true));
        assertThat(first(read).melody().get(2).marks().breathAfter()).isTrue();
        assertThat(skipped(read)).containsExactly("left out: doit (measure 1)", "left out: trill-mark (measure 1)");
    }

    @Test
    void bellowsShakeAndRicochetByGlyphNameAndByWords() {
        ReadTune read = Xml.read(Xml.score(
                Xml.note(
                                "C4",
                                4,
                                "<notations><technical><other-technical"
                                        + " smufl=\"accdnRicochet3\"/></technical></notations>")
                        + Xml.words("bellows shake")
                        + Xml.note("D4", 4)
                        + Xml.note("E4", 4)
                        + Xml.words("N.B.")
                        + Xml.note("F4", 4),
                Xml.words("B.S.") + Xml.note("C4", 8) + Xml.note("D4", 8)));

        assertThat(read.tune().measures().stream()
                        .flatMap(measure -> measure.melody().stream())
                        .map(event -> event.marks()
                                .bellowsEffect()
                                .map(BellowsEffect::name)
                                .orElse("")))
                .containsExactly("RICOCHET", "SHAKE", "SHAKE", "", "SHAKE", "");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void aNoteThatCrossesToTheOtherStaffStaysInItsVoice() {
        String xml = Xml.score(Xml.note("C5", 4, "<voice>1</voice><staff>1</staff>")
                + Xml.note("D5", 8, "<voice>1</voice><staff>1</staff>")
                + Xml.note("C4", 4, "<voice>1</voice><staff>2</staff>"));

        assertThat(shown(first(Xml.read(xml)))).isEqualTo("C5:1/4 D5:1/2 C4:1/4");
    }

    private static final String THREE_PARTS = Xml.wrap(
            "<score-part id=\"A\"><part-name>Drum</part-name></score-part>"
                    + "<score-part id=\"B\"><part-name>Bass</part-name></score-part>"
                    + "<score-part id=\"C\"><part-name>Flute</part-name></score-part>"
                    + "<score-part id=\"D\"><part-name>Voice</part-name></score-part>",
            part("A", "<note><unpitched/><duration>16</duration></note>")
                    + part("B", "<attributes><clef><sign>F</sign></clef></attributes>" + Xml.note("C2", 16))
                    + part("C", Xml.note("G5", 16))
                    + part("D", Xml.harmony("C", "major") + Xml.note("E4", 16)));

    private static String part(String id, String measure) {
        return "<part id=\"" + id + "\"><measure number=\"1\">" + Xml.ATTRIBUTES + measure + "</measure></part>";
    }

    @Test
    void theFirstTreblePartWithChordSymbolsIsTheMelody() {
        ReadTune read = Xml.read(THREE_PARTS);

        assertThat(read.melody().part().id()).isEqualTo("D");
        assertThat(read.melody().rule()).isEqualTo(MelodyChoice.Rule.CARRIES_CHORDS);
        assertThat(read.parts())
                .extracting(PartInfo::label)
                .containsExactly("A (Drum)", "B (Bass)", "C (Flute)", "D (Voice)");
        assertThat(skipped(read))
                .containsExactly(
                        "left out: notes of part B (Bass) (measure 1)",
                        "left out: notes of part C (Flute) (measure 1)");
    }

    @Test
    void withoutChordSymbolsTheFirstTreblePartIs() {
        ReadTune read = Xml.read(THREE_PARTS.replaceAll("<harmony>.*?</harmony>", ""));

        assertThat(read.melody().part().id()).isEqualTo("C");
        assertThat(read.melody().rule()).isEqualTo(MelodyChoice.Rule.TREBLE);
    }

    @Test
    void aPartMayBeAskedForByIdNameOrNumberAndTakesTheChordsOfAnother() {
        for (String wanted : List.of("C", "flute", "3")) {
            ReadTune read = Xml.read(THREE_PARTS, ReadOptions.ofPart(wanted));

            assertThat(shown(first(read))).isEqualTo("G5:1");
            assertThat(first(read).chords().get(0).symbol()).hasToString("C");
            assertThat(skipped(read)).contains("assumed: the chord symbols of part D (Voice) belong to the melody");
        }
    }

    @Test
    void anUnknownPartAndOneWithoutNotesAreRefusedWithTheChoice() {
        assertThatThrownBy(() -> Xml.read(THREE_PARTS, ReadOptions.ofPart("oboe")))
                .hasMessage("invented.musicxml: there is no part \"oboe\"; "
                        + "allowed: A (Drum), B (Bass), C (Flute), D (Voice)");
        assertThatThrownBy(() -> Xml.read(THREE_PARTS, ReadOptions.ofPart("1")))
                .hasMessage("invented.musicxml: part A (Drum) has no pitched note; "
                        + "parts that have: B (Bass), C (Flute), D (Voice)");
    }

    @Test
    void measuresThatHoldPartsAreReadAsWell() {
        String timewise = "<score-timewise><part-list><score-part id=\"P1\"><part-name>Tune</part-name></score-part>"
                + "</part-list><measure number=\"7\" implicit=\"no\"><part id=\"P1\">" + Xml.ATTRIBUTES
                + Xml.note("C4", 16) + "</part></measure></score-timewise>";
        ReadTune read = Xml.read(timewise);

        assertThat(first(read).number()).isEqualTo("7");
        assertThat(shown(first(read))).isEqualTo("C4:1");
    }
}
