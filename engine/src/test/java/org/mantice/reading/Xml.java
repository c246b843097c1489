package org.mantice.reading;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes small invented MusicXML files for the tests: four divisions a quarter note. */
final class Xml {
    static final String ATTRIBUTES = "<attributes><divisions>4</divisions><key><fifths>0</fifths></key>"
            + "<time><beats>4</beats><beat-type>4</beat-type></time></attributes>";

    private Xml() {}

    /** A score of one part; attributes for 4/4 in C stand in the first measure. */
    static String score(String... measures) {
        StringBuilder part = new StringBuilder("<part id=\"P1\">");
        for (int i = 0; i < measures.length; i++)
            part.append("<measure number=\"")
                    .append(i + 1)
                    .append("\">")
                    .append(i == 0 ? ATTRIBUTES : "")
                    .append(measures[i])
                    .append("</measure>");
        return wrap(
                "<score-part id=\"P1\"><part-name>Tune</part-name></score-part>",
                part.append("</part>").toString());
    }

    static String wrap(String scoreParts, String parts) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\"><part-list>" + scoreParts
                + "</part-list>" + parts + "</score-partwise>";
    }

    /** As {@code note("F#4", 4)}; more elements go after the duration. */
    static String note(String pitch, int duration, String... more) {
        return "<note>" + pitch(pitch) + "<duration>" + duration + "</duration>" + String.join("", more) + "</note>";
    }

    static String chordNote(String pitch, int duration, String... more) {
        return note(pitch, duration, more).replace("<note>", "<note><chord/>");
    }

    static String grace(String pitch, String... more) {
        return "<note><grace/>" + pitch(pitch) + String.join("", more) + "</note>";
    }

    static String rest(int duration) {
        return "<note><rest/><duration>" + duration + "</duration></note>";
    }

    static String pitch(String name) {
        String alter = name.contains("#") ? "<alter>1</alter>" : name.contains("b") ? "<alter>-1</alter>" : "";
        return "<pitch><step>" + name.charAt(0) + "</step>" + alter + "<octave>" + name.charAt(name.length() - 1)
                + "</octave></pitch>";
    }

    static String harmony(String root, String kind, String... more) {
        return "<harmony><root><root-step>" + root + "</root-step></root><kind>" + kind + "</kind>"
                + String.join("", more) + "</harmony>";
    }

    static String direction(String type, String... more) {
        return "<direction><direction-type>" + type + "</direction-type>" + String.join("", more) + "</direction>";
    }

    static String words(String text) {
        return direction("<words>" + text + "</words>");
    }

    static String barline(String location, String content) {
        return "<barline location=\"" + location + "\">" + content + "</barline>";
    }

    static ReadTune read(String xml) {
        return read(xml, ReadOptions.DEFAULT);
    }

    static ReadTune read(String xml, ReadOptions options) {
        return new TuneReader().read("invented.musicxml", xml.getBytes(StandardCharsets.UTF_8), options);
    }

    /** Names and contents in turn. */
    static byte[] zip(String... entries) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int i = 0; i < entries.length; i += 2) {
                zip.putNextEntry(new ZipEntry(entries[i]));
                zip.write(entries[i + 1].getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
