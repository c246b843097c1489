package org.mantice.writing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.mantice.performance.Performance;
import org.mantice.tune.Tune;

/**
 * Writes a tune as MusicXML 4.0, plain or compressed. The same tune gives the same bytes: no date, nothing of the
 * machine. No document type is named, because the standard's schema is XSD by now and programs that follow the
 * address of a document type would go to the network for it.
 *
 * <p>Everything that a tune holds is written by the standard's own means and, read by {@code TuneReader}, gives the same
 * tune again, but for these:
 *
 * <ul>
 *   <li>white space at either end of words, syllables, chord texts, measure numbers and the title goes; inside title and
 *       measure numbers it becomes single spaces. Texts without any letter or sign are left out, as are characters that
 *       XML cannot hold;
 *   <li>a register without any dot is left out, and a bass staff of nothing but rests;
 *   <li>the root of "no chord" becomes C, for it means nothing;
 *   <li>a tempo whose beat no note values without a tuplet add up to becomes the same tempo in quarters.
 * </ul>
 *
 * <p>An event that no single note shows is written as tied notes, of which all but the first carry a notation "same
 * event" that is not printed. A phrase start is a direction "phrase start" that is not printed either. A proposed chord
 * has the editorial level "proposed". Stateless.
 */
public final class MusicXmlWriter {
    /** Who wrote the file. What it says is then taken at its word when it is read again. */
    static final String SOFTWARE = "Mantice";

    private static final String ROOT = "score.musicxml";
    private static final String MIMETYPE = "application/vnd.recordare.musicxml";

    private MusicXmlWriter() {}

    /**
     * UTF-8 text, indented.
     *
     * @throws TuneWriteException if a pitch lies outside octaves 0 to 9, or a measure needs more than 1,000,000 divisions
     *     a quarter note
     */
    public static byte[] write(Tune tune) {
        return new ScoreWriter(tune).write();
    }

    /**
     * The tune with every time through written out, without repeats and jumps, for what differs from pass to pass. It is
     * in the key of the performance.
     *
     * @param marking what each played measure is given beside what is written
     */
    public static Tune unrolled(Performance performance, Marking marking) {
        return new Unrolling(performance).unroll(marking);
    }

    /**
     * The tune in an archive (MusicXML 4.0, "compressed .mxl files"): its kind uncompressed as the first entry, then the
     * container that names the score, then the score.
     */
    public static byte[] writeCompressed(Tune tune) {
        XmlOut container = new XmlOut();
        container
                .open("container")
                .open("rootfiles")
                .empty("rootfile", "full-path", ROOT, "media-type", MIMETYPE + "+xml")
                .close()
                .close();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            byte[] kind = MIMETYPE.getBytes(StandardCharsets.US_ASCII);
            put(zip, stored("mimetype", kind), kind);
            put(zip, new ZipEntry("META-INF/container.xml"), container.bytes());
            put(zip, new ZipEntry(ROOT), write(tune));
        } catch (IOException e) {
            throw new UncheckedIOException("an archive in memory cannot fail to be written", e);
        }
        return bytes.toByteArray();
    }

    private static ZipEntry stored(String name, byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        return entry;
    }

    /** The time of an entry counts from a fixed day, because no entry may tell when it was written. */
    private static void put(ZipOutputStream zip, ZipEntry entry, byte[] content) throws IOException {
        entry.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
