package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;

/** Invented snippets about chord symbols. */
class HarmonyReadingTest {
    private static List<String> chords(ReadTune read, int measure) {
        return read.tune().measure(measure).chords().stream()
                .map(HarmonyReadingTest::shown)
                .toList();
    }

    private static String shown(PlacedChord chord) {
        return chord.offset() + " " + chord.symbol();
    }

    private static List<String> skipped(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    @Test
    void rootKindDegreesAndBass() {
        String degree = "<degree><degree-value>9</degree-value><degree-alter>-1</degree-alter>"
                + "<degree-type>add</degree-type></degree>";
        ReadTune read = Xml.read(Xml.score(
                "<harmony><root><root-step>B</root-step><root-alter>-1</root-alter></root><kind>dominant</kind>"
                        + "<bass><bass-step>F</bass-step></bass>" + degree + "</harmony>" + Xml.note("D5", 8)
                        + Xml.harmony("E", "minor-seventh") + Xml.note("E5", 8)));

        assertThat(chords(read, 0)).containsExactly("0 Bb7(addb9)/F", "1/2 Em7");
        assertThat(read.skipped()).isEmpty();
    }

    /** O34; MusicXML 4.0, type kind-value. */
    @Test
    void halfDiminishedOnBIsBDFA() {
        ReadTune read = Xml.read(Xml.score(Xml.harmony("B", "half-diminished") + Xml.note("B4", 16)));

        assertThat(read.tune().measure(0).chords().get(0).symbol().pitchClasses())
                .containsExactly(2, 5, 9, 11);
    }

    @Test
    void everyKindOfTheStandardIsReadAsItself() {
        for (ChordKind kind : ChordKind.values()) {
            ReadTune read = Xml.read(Xml.score(Xml.harmony("C", kind.musicXml()) + Xml.note("C4", 16)));
            assertThat(read.tune().measure(0).chords().get(0).symbol().kind()).isEqualTo(kind);
            assertThat(read.skipped()).isEmpty();
        }
    }

    @Test
    void anEmptyOrUnknownKindIsReadFromItsTextAndListed() {
        String harmony = "<harmony><root><root-step>C</root-step></root><kind text=\"%s\">%s</kind></harmony>";
        ReadTune read = Xml.read(Xml.score(harmony.formatted("m7", "")
                + Xml.note("C4", 4)
                + harmony.formatted("", "")
                + Xml.note("C4", 4)
                + harmony.formatted("sus", "suspended-eleventh")
                + Xml.note("C4", 4)
                + harmony.formatted("like a bell", "bell")
                + Xml.note("C4", 4)));

        assertThat(read.tune().measure(0).chords())
                .extracting(chord -> chord.symbol().kind())
                .containsExactly(ChordKind.MINOR_SEVENTH, ChordKind.MAJOR, ChordKind.SUSPENDED_FOURTH, ChordKind.OTHER);
        assertThat(skipped(read))
                .containsExactly(
                        "changed: chord kind \"\" with text \"m7\" read as minor-seventh (measure 1)",
                        "changed: chord kind \"\" with text \"\" read as major (measure 1)",
                        "changed: chord kind \"suspended-eleventh\" with text \"sus\" read as suspended-fourth"
                                + " (measure 1)",
                        "changed: chord kind \"bell\" with text \"like a bell\" read as other (measure 1)");
    }

    @Test
    void kindTextsInTheirManySpellings() {
        assertThat(ChordKindText.ofText("Maj7")).contains(ChordKind.MAJOR_SEVENTH);
        assertThat(ChordKindText.ofText("\u25b37")).contains(ChordKind.MAJOR_SEVENTH);
        assertThat(ChordKindText.ofText("\u00b07")).contains(ChordKind.DIMINISHED_SEVENTH);
        assertThat(ChordKindText.ofText("m7(\u266d5)")).contains(ChordKind.HALF_DIMINISHED);
        assertThat(ChordKindText.ofText("MIN")).contains(ChordKind.MINOR);
        assertThat(ChordKindText.ofText("M")).contains(ChordKind.MAJOR);
        assertThat(ChordKindText.ofText("m")).contains(ChordKind.MINOR);
        assertThat(ChordKindText.ofText("bell")).isEmpty();
    }

    @Test
    void offsetMovesAChordAndOneAfterTheLastNoteBelongsToTheNextMeasure() {
        ReadTune read = Xml.read(Xml.score(
                Xml.harmony("C", "major")
                        + Xml.harmony("G", "dominant", "<offset>6</offset>")
                        + Xml.note("C4", 16)
                        + Xml.harmony("F", "major"),
                Xml.note("C4", 16)));

        assertThat(chords(read, 0)).containsExactly("0 C", "3/8 G7");
        assertThat(chords(read, 1)).containsExactly("0 F");
    }

    @Test
    void severalChordsBeforeOneNoteShareItAndAnAnticipationIsDropped() {
        ReadTune read = Xml.read(Xml.score(Xml.harmony("C", "major")
                + Xml.harmony("A", "minor")
                + Xml.note("C4", 8)
                + Xml.harmony("D", "minor")
                + Xml.harmony("G", "dominant")
                + Xml.note("D4", 4)
                + Xml.harmony("G", "dominant")
                + Xml.note("B3", 4)));

        assertThat(chords(read, 0)).containsExactly("0 C", "1/4 Am", "1/2 Dm", "3/4 G7");
        assertThat(skipped(read))
                .containsExactly("changed: chord symbols at one place spread over the note (2; measure 1)");
    }

    @Test
    void ofTwoChordsAtOnePlaceTheFirstCounts() {
        ReadTune read = Xml.read(Xml.score(Xml.harmony("C", "major", "<offset>0</offset>")
                + Xml.harmony("A", "minor", "<offset>0</offset>")
                + Xml.note("C4", 16)));

        assertThat(chords(read, 0)).containsExactly("0 C");
        assertThat(skipped(read)).containsExactly("left out: chord symbol Am beside another at its place (measure 1)");
    }

    /** MusicXML 4.0, type harmony-type: "alternate represents alternate analyses". */
    @Test
    void anAlternateStandsBesideTheChordBeforeIt() {
        String alternate = Xml.harmony("E", "minor").replace("<harmony>", "<harmony type=\"alternate\">");
        String explicit = Xml.harmony("G", "major").replace("<harmony>", "<harmony type=\"explicit\">");
        ReadTune read = Xml.read(Xml.score(explicit
                + alternate
                + Xml.note("C4", 8)
                + Xml.harmony("C", "major")
                + Xml.harmony("D", "major")
                + alternate
                + Xml.note("C4", 8)));

        assertThat(Abc.chords(read)).isEqualTo("G(Em)@0 C@1/2 D(Em)@3/4");
        assertThat(skipped(read))
                .containsExactly("changed: chord symbols at one place spread over the note (measure 1)");
    }

    @Test
    void anAlternateToNothingIsAChordAndTheSecondAlternateIsLeftOut() {
        String alternate = Xml.harmony("E", "minor").replace("<harmony>", "<harmony type=\"alternate\">");
        String another = Xml.harmony("A", "minor").replace("<harmony>", "<harmony type=\"alternate\">");
        ReadTune read = Xml.read(Xml.score(
                alternate + Xml.note("C4", 8) + Xml.harmony("G", "major") + alternate + another + Xml.note("C4", 8)));

        assertThat(Abc.chords(read)).isEqualTo("Em@0 G(Em)@1/2");
        assertThat(skipped(read)).containsExactly("left out: chord symbol Am beside another at its place (measure 1)");
    }

    @Test
    void noChordByKindAndByWords() {
        ReadTune read = Xml.read(Xml.score(
                Xml.harmony("C", "none") + Xml.note("C4", 8) + Xml.harmony("F", "major") + Xml.note("F4", 8),
                Xml.words("N.C.") + Xml.note("C4", 16)));

        assertThat(chords(read, 0)).containsExactly("0 N.C.", "1/2 F");
        assertThat(chords(read, 1)).containsExactly("0 N.C.");
        assertThat(read.tune().measure(1).marks()).isEmpty();
    }

    @Test
    void anInversionWithoutABassNamesTheBassNote() {
        ReadTune read = Xml.read(Xml.score(Xml.harmony("D", "dominant", "<inversion>1</inversion>")
                + Xml.note("D4", 8)
                + Xml.harmony("A", "minor", "<inversion>2</inversion>")
                + Xml.note("A4", 8)));

        assertThat(chords(read, 0)).containsExactly("0 D7/F#", "1/2 Am/E");
        assertThat(skipped(read))
                .containsExactly(
                        "changed: chord bass of inversion 1 read as F# (measure 1)",
                        "changed: chord bass of inversion 2 read as E (measure 1)");
    }

    @Test
    void numeralsAreReadInTheirKeyAndFunctionsAreListed() {
        ReadTune read = Xml.read(
                Xml.score("<harmony><numeral><numeral-root>5</numeral-root></numeral><kind>dominant</kind></harmony>"
                                + Xml.note("A4", 8)
                                + "<harmony><function>V/II</function><kind>dominant</kind></harmony>"
                                + Xml.note("D4", 8))
                        .replace("<fifths>0", "<fifths>2"));

        assertThat(chords(read, 0)).containsExactly("0 A7");
        assertThat(skipped(read)).containsExactly("left out: chord symbol of function V/II (measure 1)");
    }

    @Test
    void degreesThatCannotBeReadAreListed() {
        ReadTune read = Xml.read(Xml.score(Xml.harmony(
                        "C",
                        "major",
                        "<degree><degree-value>99</degree-value>"
                                + "<degree-alter>0</degree-alter><degree-type>add</degree-type></degree>")
                + Xml.note("C4", 16)));

        assertThat(read.tune().measure(0).chords().get(0).symbol())
                .isEqualTo(ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.MAJOR));
        assertThat(skipped(read)).containsExactly("left out: degree add 99 of a chord symbol (measure 1)");
    }

    @Test
    void aChordInWordsCountsWhereAMeasureHasNoSymbolAndNoSectionBegins() {
        ReadTune read = Xml.read(Xml.score(
                Xml.harmony("C", "major") + Xml.note("C4", 16),
                Xml.words("G7") + Xml.note("D4", 16),
                Xml.words("Chorus") + Xml.note("D4", 16) + Xml.barline("right", "<bar-style>light-light</bar-style>"),
                Xml.words("B") + Xml.note("E4", 16)));

        assertThat(chords(read, 1)).containsExactly("0 G7");
        assertThat(chords(read, 2)).isEmpty();
        assertThat(chords(read, 3)).isEmpty();
        assertThat(skipped(read)).containsExactly("changed: words \"G7\" read as a chord symbol (measure 2)");
    }
}
