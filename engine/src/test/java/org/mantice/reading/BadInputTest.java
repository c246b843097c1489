package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.reading.TuneReadException.Reason;

/** Every unreadable file ends in one clear message with the place and what is allowed. */
class BadInputTest {
    private static final String ALLOWED = "allowed: MusicXML (.musicxml, .xml, .mxl), ABC (.abc) or MIDI (.mid)";
    private static final String GOOD = Xml.score(Xml.note("C4", 16));

    private static TuneReadException refusal(byte[] bytes) {
        return Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> catchThrowableOfType(
                        TuneReadException.class, () -> new TuneReader().read("bad.xml", bytes, ReadOptions.DEFAULT)));
    }

    private static TuneReadException refusal(String text) {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void anEmptyFile() {
        assertThat(refusal("")).hasMessage("bad.xml: the file is empty; " + ALLOWED);
        assertThat(refusal(" \n ")).hasMessage("bad.xml: the file is empty; " + ALLOWED);
    }

    @Test
    void aTruncatedFile() {
        assertThat(refusal(GOOD.substring(0, GOOD.length() - 20)))
                .hasMessage(
                        "bad.xml, line 2: the file ends in the middle of the score; allowed: a complete MusicXML file");
        for (int length = 60; length < GOOD.length() - 1; length += 7)
            assertThat(refusal(GOOD.substring(0, length)).reason()).isEqualTo(Reason.TRUNCATED);
    }

    @Test
    void aHugeFile() {
        assertThat(refusal(new byte[ReadLimits.FILE_BYTES + 1]))
                .hasMessage("bad.xml: the file has more than 33554432 bytes; allowed: at most 33554432");
    }

    @Test
    void aBinaryFile() {
        byte[] bytes = new byte[5000];
        new Random(7).nextBytes(bytes);

        assertThat(refusal(bytes))
                .hasMessage("bad.xml: the file is neither text nor an archive of MusicXML; " + ALLOWED);
    }

    @Test
    void filesOfOtherKindsAreNamed() {
        assertThat(refusal("MThd\0\0\0\6"))
                .hasMessage("bad.xml: the MIDI file ends before its first track; allowed: a complete file");
        assertThat(refusal("Dear reader")).hasMessage("bad.xml: the file looks like plain text; " + ALLOWED);
        assertThat(refusal("<html><body/></html>"))
                .hasMessage("bad.xml, line 1: the outermost element is <html>; "
                        + "allowed: <score-partwise> or <score-timewise>");
    }

    @Test
    void misEncodedUtf16() {
        byte[] bytes = {(byte) 0xFE, (byte) 0xFF, 0, '<', (byte) 0xD8, 0, 0, 'a'};

        assertThat(refusal(bytes))
                .hasMessage("bad.xml: the text is not valid UTF-16BE; "
                        + "allowed: UTF-8, UTF-16 or the encoding that its first line declares");
    }

    @Test
    void anEntityBomb() {
        StringBuilder doctype =
                new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE score-partwise [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 30; i++)
            doctype.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        String bomb = doctype + "]><score-partwise><movement-title>&a29;</movement-title></score-partwise>";

        assertThat(refusal(bomb))
                .hasMessage("bad.xml, line 1: the text uses an entity of its own; "
                        + "allowed: &amp; &lt; &gt; &quot; &apos; and numbers");
        assertThat(refusal(bomb.replace("<movement-title>&a29;</movement-title>", "<work id=\"&a29;\"/>"))
                        .reason())
                .isEqualTo(Reason.ENTITY);
    }

    @Test
    void anEntityThatPointsToAFileIsNotFollowed() {
        String xml = "<!DOCTYPE score-partwise [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>"
                + "<score-partwise><movement-title>&x;</movement-title></score-partwise>";

        assertThat(refusal(xml).reason()).isEqualTo(Reason.ENTITY);
    }

    @Test
    void aDoctypeOnTheNetworkIsNeverLoaded() {
        String xml = GOOD.replace(
                "<score-partwise version",
                "<!DOCTYPE score-partwise PUBLIC \"-//X//EN\" "
                        + "\"http://192.0.2.1/partwise.dtd\"><score-partwise version");

        ReadTune read = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(5), () -> Xml.read(xml));
        assertThat(read.tune().hasNotes()).isTrue();
    }

    @Test
    void deepNesting() {
        String xml = "<score-partwise>" + "<a>".repeat(100_000) + "</a>".repeat(100_000) + "</score-partwise>";

        assertThat(refusal(xml))
                .hasMessage("bad.xml, line 1: elements are nested more than 64 deep; allowed: at most 64");
        String inPart = "<score-partwise><part><x>" + "<a>".repeat(100_000) + "</a>".repeat(100_000)
                + "</x></part></score-partwise>";
        assertThat(refusal(inPart).reason()).isEqualTo(Reason.NO_MEASURES);
    }

    @Test
    void damagedXml() {
        assertThat(refusal(GOOD.replace("</note>", "</nota>")).getMessage())
                .startsWith("bad.xml, line 2: the XML is damaged (")
                .endsWith("); allowed: well-formed XML")
                .hasLineCount(1);
    }

    @Test
    void aZipBomb() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("score.xml"));
            byte[] zeros = new byte[1024 * 1024];
            for (int i = 0; i < 300; i++) zip.write(zeros);
        }

        assertThat(refusal(bytes.toByteArray()))
                .hasMessage("bad.xml: the archive unpacks to more than 67108864 bytes; allowed: at most 67108864");
    }

    @Test
    void anArchiveOfManyEntries() {
        String[] entries = new String[2 * (ReadLimits.ARCHIVE_ENTRIES + 1)];
        for (int i = 0; i < entries.length; i++) entries[i] = "x" + i;

        assertThat(refusal(Xml.zip(entries)))
                .hasMessage("bad.xml: the archive has more than 1000 entries; allowed: at most 1000");
    }

    @Test
    void aDamagedArchive() {
        byte[] whole = Xml.zip("score.xml", GOOD);
        byte[] cut = java.util.Arrays.copyOf(whole, 120);

        assertThat(refusal(cut).getMessage())
                .startsWith("bad.xml: the archive is damaged (")
                .endsWith("); allowed: a complete .mxl archive without a password");
    }

    @Test
    void anArchiveWithoutMusic() {
        assertThat(refusal(Xml.zip("readme.txt", "nothing here", "page.xml", "<html/>")))
                .hasMessage("bad.xml: the archive holds no MusicXML file; it holds: readme.txt, page.xml; "
                        + "allowed: an archive with a score in it");
    }

    /** Found by fuzzing: the parser of the platform then looks for a message that it does not have. */
    @Test
    void aDocumentTypeThatIsNotOne() {
        String xml = "<?xml version=\"1.0\"?>\n<!DOCTYPE score-partwise[ <\uffff> \"waltz\">\n<score-partwise/>";

        assertThat(refusal(xml).reason()).isEqualTo(Reason.NOT_WELL_FORMED);
        assertThat(refusal(xml)).hasMessageContaining("line 2").hasMessageContaining("allowed: well-formed XML");
    }

    /** Found by fuzzing: a tune without a note to play came out. */
    @Test
    void notesThatTakeNoTime() {
        assertThat(refusal(Xml.score("<note><pitch><step>A</step><octave>4</octave></pitch></note>")))
                .hasMessage("bad.xml: no pitched note of the melody has a length; allowed: one or more");
    }

    @Test
    void aScoreWithoutNotes() {
        assertThat(refusal(Xml.score(Xml.rest(16))))
                .hasMessage("bad.xml: the score has no pitched note; allowed: one or more");
        assertThat(refusal("<score-partwise><part-list/></score-partwise>"))
                .hasMessage("bad.xml: the score has no measures; allowed: one or more");
    }

    @Test
    void tooManyMeasures() {
        String[] measures = new String[ReadLimits.MEASURES + 1];
        java.util.Arrays.fill(measures, "<note><rest measure=\"yes\"/><duration>16</duration></note>");

        assertThat(refusal(Xml.score(measures)))
                .hasMessage("bad.xml, line 2: the score has more than 20000 measures; allowed: at most 20000");
    }

    @Test
    void tooManyNotes() {
        String[] measures = new String[1001];
        java.util.Arrays.fill(measures, "<note><rest/><duration>1</duration></note>".repeat(200));

        assertThat(refusal(Xml.score(measures)))
                .hasMessage("bad.xml, line 2: the score has more than 200000 notes; allowed: at most 200000");
    }

    @Test
    void tooManyRepeats() {
        String xml = Xml.score(
                Xml.note("C4", 16) + Xml.barline("right", "<repeat direction=\"backward\" times=\"1000000\"/>"));

        assertThat(refusal(xml))
                .hasMessage("bad.xml, measure 1: a passage is to be played 1000000 times; allowed: at most 100");
    }

    @Test
    void lengthsTooFineToCount() {
        StringBuilder measure = new StringBuilder();
        for (int prime : new int[] {999983, 999979, 999961, 999959, 999953})
            measure.append("<attributes><divisions>")
                    .append(prime)
                    .append("</divisions></attributes>")
                    .append(Xml.note("C4", 1));

        assertThat(refusal(Xml.score(measure.toString())))
                .hasMessage("bad.xml, measure 1, line 2: note lengths here cannot be counted exactly; "
                        + "allowed: divisions up to a million a quarter note");
    }

    @Test
    void garbageInEveryFieldIsSurvived() {
        String[] garbage = {"", " ", "x", "-1", "99999999999999999999", "1e9", "NaN", "0", "\u00e9", "&lt;"};
        String xml = Xml.score(Xml.harmony(
                        "C",
                        "major",
                        "<degree><degree-value>3</degree-value><degree-alter>1</degree-alter>"
                                + "<degree-type>add</degree-type></degree><offset>2</offset>")
                + Xml.direction(
                        "<metronome><beat-unit>quarter</beat-unit><per-minute>90</per-minute></metronome>",
                        "<sound tempo=\"90\" dynamics=\"80\"/>")
                + Xml.note(
                        "C4",
                        8,
                        "<voice>1</voice><type>half</type><staff>1</staff><notations><technical>"
                                + "<fingering>1</fingering></technical></notations>")
                + "<backup><duration>4</duration></backup><forward><duration>4</duration></forward>"
                + Xml.note("D4", 8)
                + Xml.barline(
                        "right", "<ending number=\"1\" type=\"start\"/><repeat direction=\"backward\" times=\"2\"/>"));
        String[] parts = xml.split("(?<=>)(?=[^<])|(?<=[^>])(?=<)|(?<==\")|(?=\"[ />])");
        for (int i = 2; i < parts.length; i++) {
            if (parts[i].startsWith("<") || parts[i].startsWith("\"") || parts[i].isBlank()) continue;
            for (String value : garbage) {
                String[] changed = parts.clone();
                changed[i] = value;
                TuneReadException refusal = refusal(String.join("", changed));
                if (refusal != null)
                    assertThat(refusal.getMessage()).hasLineCount(1).contains("allowed");
            }
        }
    }

    @Test
    void aFolderIsNotAFile(@TempDir java.nio.file.Path folder) {
        TuneReadException refusal = catchThrowableOfType(TuneReadException.class, () -> new TuneReader().read(folder));

        assertThat(refusal.reason()).isEqualTo(Reason.UNREADABLE);
    }
}
