package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassEvent;
import org.mantice.tune.BassMarks;

/** Invented snippets of two-staff music. */
class BassStaffReadingTest {
    private static final String TWO_STAVES = "<staves>2</staves><clef number=\"1\"><sign>G</sign></clef>"
            + "<clef number=\"2\"><sign>F</sign></clef></attributes>";
    private static final String UPPER =
            Xml.note("E5", 16, "<voice>1</voice><staff>1</staff>") + "<backup><duration>16</duration></backup>";

    private static String bass(String pitch, int duration, String... more) {
        return Xml.note(pitch, duration, "<voice>5</voice><staff>2</staff>", String.join("", more));
    }

    private static String letter(String letter) {
        return Xml.direction("<words>" + letter + "</words>", "<staff>2</staff>");
    }

    private static ReadTune read(String... measures) {
        return Xml.read(Xml.score(measures).replaceFirst("</attributes>", TWO_STAVES));
    }

    private static List<String> shown(ReadTune read, int measure) {
        return read.tune().measure(measure).bass().stream()
                .map(BassStaffReadingTest::shown)
                .toList();
    }

    private static String shown(BassEvent event) {
        return event.offset() + " " + event.pitches()
                + event.chord().map(BassChordType::letter).orElse("");
    }

    @Test
    void bassNotesAndChordsWithTheirLetters() {
        ReadTune read =
                read(UPPER + bass("C2", 4) + letter("M") + bass("C4", 4) + bass("G2", 4) + letter("m") + bass("A3", 4));

        assertThat(shown(read, 0)).containsExactly("0 [C2]", "1/4 [C4]M", "1/2 [G2]", "3/4 [A3]m");
        assertThat(read.tune().measure(0).marks()).isEmpty();
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void aLetterHoldsForTheSameNoteUntilAnother() {
        ReadTune read = read(
                UPPER + bass("C2", 4) + letter("M") + bass("C4", 4) + bass("C2", 4) + bass("C4", 4),
                UPPER + bass("C2", 4) + bass("C4", 4) + bass("C2", 4) + letter("7") + bass("C4", 4),
                UPPER + bass("C2", 4) + bass("C4", 12));

        assertThat(shown(read, 0)).containsExactly("0 [C2]", "1/4 [C4]M", "1/2 [C2]", "3/4 [C4]M");
        assertThat(shown(read, 1)).containsExactly("0 [C2]", "1/4 [C4]M", "1/2 [C2]", "3/4 [C4]7");
        assertThat(shown(read, 2)).containsExactly("0 [C2]", "1/4 [C4]7");
    }

    @Test
    void lettersUnderTheNotesAndWholeChords() {
        ReadTune read = read(UPPER
                + bass("D2", 8)
                + bass("D3", 8, "<lyric><text>d</text></lyric>")
                + Xml.chordNote("F3", 8, "<voice>5</voice><staff>2</staff>"));

        assertThat(shown(read, 0)).containsExactly("0 [D2]", "1/2 [D3, F3]d");
    }

    @Test
    void aNoteWithAnUnderlinedTextIsACounterbassUnlessTheTextIsALetter() {
        ReadTune read = read(UPPER
                + bass("D2", 4, "<lyric><text underline=\"1\">D</text></lyric>")
                + bass("C4", 4, "<lyric><text underline=\"1\">M</text></lyric>")
                + bass("E2", 4, "<notations><technical><fingering>3</fingering></technical></notations>")
                + bass("E2", 4, "<lyric><text>E</text></lyric>"));

        assertThat(shown(read, 0)).containsExactly("0 [D2]", "1/4 [C4]M", "1/2 [E2]", "3/4 [E2]");
        assertThat(read.tune().measure(0).bass())
                .extracting(BassEvent::marks)
                .containsExactly(
                        new BassMarks(true, OptionalInt.empty()),
                        BassMarks.NONE,
                        new BassMarks(false, OptionalInt.of(3)),
                        BassMarks.NONE);
    }

    @Test
    void severalVoicesOfTheBassStaffAreAllRead() {
        ReadTune read = read(UPPER + bass("C2", 16) + "<backup><duration>16</duration></backup>"
                + Xml.rest(8).replace("</note>", "<voice>6</voice><staff>2</staff></note>") + letter("M")
                + Xml.note("C4", 8, "<voice>6</voice><staff>2</staff>"));

        assertThat(shown(read, 0)).containsExactly("0 [C2]", "1/2 [C4]M");
    }

    @Test
    void tiedBassNotesAreStruckOnce() {
        ReadTune read = read(UPPER + bass("C2", 8, "<tie type=\"start\"/>") + bass("C2", 8, "<tie type=\"stop\"/>"));

        assertThat(read.tune().measure(0).bass())
                .extracting(BassEvent::tiedBack)
                .containsExactly(false, true);
    }

    @Test
    void aLowerStaffInATrebleClefIsNoBassStaffAndIsListed() {
        ReadTune read = Xml.read(Xml.score(UPPER + bass("C4", 16))
                .replaceFirst("</attributes>", TWO_STAVES.replace("<sign>F</sign>", "<sign>G</sign>")));

        assertThat(read.tune().hasBassStaff()).isFalse();
        assertThat(read.skipped())
                .extracting(Skipped::toString)
                .containsExactly("left out: notes of voice 5 on staff 2 (measure 1)");
    }
}
