package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Archives and encodings. */
class ContainerReadingTest {
    private static final String SCORE = Xml.score(Xml.note("C4", 16));
    private static final String TITLED =
            SCORE.replace("<part-list>", "<movement-title>Frühlingsträume</movement-title><part-list>");
    private static final String CONTAINER =
            "<?xml version=\"1.0\"?><container><rootfiles>" + "<rootfile full-path=\"%s\"/></rootfiles></container>";

    private static ReadTune read(byte[] bytes) {
        return new TuneReader().read("a.mxl", bytes, ReadOptions.DEFAULT);
    }

    private static List<String> skipped(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    private static byte[] bytes(String declared, Charset charset) {
        return TITLED.replace("UTF-8", declared).getBytes(charset);
    }

    @Test
    void theContainerNamesTheScore() {
        String other = SCORE.replace("<step>C", "<step>D");
        ReadTune read = read(Xml.zip(
                "decoy.xml",
                other,
                "META-INF/container.xml",
                CONTAINER.formatted("music/a&amp;b.xml"),
                "music/a&b.xml",
                SCORE));

        assertThat(read.tune().measure(0).melody().get(0).notes().get(0).pitch())
                .hasToString("C4");
        assertThat(read.skipped()).isEmpty();
    }

    @Test
    void aMissingContainerAndOneThatNamesNothingAreForgiven() {
        assertThat(skipped(read(Xml.zip("notes.txt", "x", "tune.xml", SCORE))))
                .containsExactly("changed: archive: META-INF/container.xml is missing, \"tune.xml\" taken");
        assertThat(skipped(read(Xml.zip("META-INF/container.xml", CONTAINER.formatted("lost.xml"), "tune.xml", SCORE))))
                .containsExactly(
                        "changed: archive: META-INF/container.xml names the missing entry \"lost.xml\", \"tune.xml\""
                                + " taken");
    }

    @Test
    void aContainerBrokenByAnApostropheInTheNameIsForgiven() {
        String container = "<container><rootfiles><rootfile full-path='Miller's Jig.xml'/></rootfiles></container>";
        ReadTune read = read(Xml.zip("META-INF/container.xml", container, "Miller's Jig.xml", SCORE));

        assertThat(skipped(read))
                .containsExactly("changed: archive: META-INF/container.xml is damaged or names no "
                        + "score, \"Miller's Jig.xml\" taken");
    }

    @Test
    void whatAFileIsShowsFromItsContentNotItsName(@TempDir Path folder) throws IOException {
        Path file = Files.write(folder.resolve("tune.txt"), Xml.zip("tune.xml", SCORE));

        assertThat(new TuneReader().read(file).tune().hasNotes()).isTrue();
        assertThat(new TuneReader()
                        .read(
                                "x",
                                new ByteArrayInputStream(TITLED.getBytes(StandardCharsets.UTF_8)),
                                ReadOptions.DEFAULT)
                        .tune()
                        .title())
                .isEqualTo("Frühlingsträume");
    }

    @Test
    void encodingsAsDeclaredAndByByteOrderMark() {
        byte[] bom = ("\ufeff" + TITLED).getBytes(StandardCharsets.UTF_8);
        for (byte[] file : List.of(
                bytes("UTF-8", StandardCharsets.UTF_8),
                bom,
                bytes("UTF-16", StandardCharsets.UTF_16),
                bytes("UTF-16", StandardCharsets.UTF_16LE),
                ("\ufeff" + TITLED).getBytes(StandardCharsets.UTF_16LE),
                bytes("ISO-8859-1", StandardCharsets.ISO_8859_1),
                bytes("windows-1252", Charset.forName("windows-1252")))) {
            ReadTune read = read(file);
            assertThat(read.tune().title()).isEqualTo("Frühlingsträume");
            assertThat(read.skipped()).isEmpty();
        }
    }

    @Test
    void falseDeclarationsAreForgivenAndListed() {
        assertThat(read(bytes("UTF-16", StandardCharsets.UTF_8)).tune().title()).isEqualTo("Frühlingsträume");
        assertThat(skipped(read(bytes("UTF-16", StandardCharsets.UTF_8))))
                .containsExactly("changed: encoding: the text is not the UTF-16 it claims to be, read as UTF-8");
        assertThat(skipped(read(bytes("UTF-8", StandardCharsets.ISO_8859_1))))
                .containsExactly("changed: encoding: the text is not the UTF-8 it claims to be, read as Latin-1");
        assertThat(skipped(read(bytes("KLINGON-8", StandardCharsets.UTF_8))))
                .containsExactly("changed: encoding: the text is not the KLINGON-8 it claims to be, read as UTF-8");
    }

    @Test
    void findingsAreOneShortLine() {
        Finding finding = Finding.of(SkippedWhat.DIRECTION, "a\n\tb" + "c".repeat(300));

        assertThat(finding.args().get(0)).startsWith("a bccc").hasSize(160).endsWith("...");
    }
}
