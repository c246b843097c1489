package org.mantice.app;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.mantice.app.files.ScoreFormat;
import org.mantice.reading.MidiBytes;
import org.mantice.reading.TuneReader;

/**
 * A folder as people have them: tunes in several formats and encodings, some under a wrong ending, names with
 * apostrophes, accents and spaces, and files that are no tunes. The music is invented.
 */
public final class MixedFolder {
    /** The title of the tune in each file that holds one. */
    public static final Map<String, String> TUNES = new TreeMap<>(Map.of(
            "d'été à Noël.txt", "Été d'hiver",
            "latin one.abc", "Übermut",
            "wide.abc", "Łąka",
            "marked.abc", "Ævintýr",
            "wide score.xml", "Été d'hiver",
            "latin score.musicxml", "Übermut",
            "l'archive.musicxml", "The Rusty Gate",
            "squeezed.zip", "The Rusty Gate",
            "tune without ending", "Klang",
            "l'orgue.txt", "Réveil"));

    /** What is neither a tune nor ours. */
    public static final List<String> OTHERS =
            List.of("letter to Zoë.txt", "other.zip", "picture.png", "pom.xml", "data.json");

    private MixedFolder() {}

    /** Fills a folder, and one below it. */
    public static Path fill(Path folder) throws IOException {
        Path below = Files.createDirectories(folder.resolve("l'été, 2e partie"));
        put(below, "d'été à Noël.txt", abc("Été d'hiver"), StandardCharsets.UTF_8);
        put(folder, "latin one.abc", abc("Übermut"), StandardCharsets.ISO_8859_1);
        put(folder, "wide.abc", abc("Łąka"), StandardCharsets.UTF_16);
        put(folder, "marked.abc", "\uFEFF" + abc("Ævintýr"), StandardCharsets.UTF_8);
        put(folder, "wide score.xml", score("UTF-16", "Été d'hiver"), StandardCharsets.UTF_16);
        put(folder, "latin score.musicxml", score("ISO-8859-1", "Übermut"), StandardCharsets.ISO_8859_1);
        byte[] archive = ScoreFormat.mxl.bytes(
                new TuneReader().read(Calls.tune("the-rusty-gate")).tune());
        Files.write(folder.resolve("l'archive.musicxml"), archive);
        Files.write(folder.resolve("squeezed.zip"), archive);
        put(folder, "tune without ending", abc("Klang"), StandardCharsets.UTF_8);
        Files.write(folder.resolve("l'orgue.txt"), midi("Réveil"));
        put(folder, "letter to Zoë.txt", "Dear Zoë,\nT: what a day.\n", StandardCharsets.UTF_8);
        put(folder, "pom.xml", "<project><modelVersion>4.0.0</modelVersion></project>", StandardCharsets.UTF_8);
        put(folder, "data.json", "{\"format\": \"of others\"}", StandardCharsets.UTF_8);
        put(folder, ".hidden.abc", abc("Hidden"), StandardCharsets.UTF_8);
        Files.write(
                folder.resolve("picture.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13});
        Files.write(folder.resolve("other.zip"), zip("words.txt", "no music"));
        return folder;
    }

    /** A file of the folder, wherever in it. */
    public static Path find(Path folder, String name) {
        Path file = folder.resolve(name);
        return Files.exists(file) ? file : folder.resolve("l'été, 2e partie").resolve(name);
    }

    private static void put(Path folder, String name, String text, Charset charset) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(charset));
    }

    private static String abc(String title) {
        return "X:1\nT:" + title + "\nM:4/4\nL:1/4\nK:G\n\"G\"GABc|\"D7\"dcBA|\"G\"G4|]\n";
    }

    private static String score(String encoding, String title) {
        return "<?xml version='1.0' encoding='" + encoding + "'?><score-partwise><work><work-title>" + title
                + "</work-title></work><part-list><score-part id='P1'><part-name>Voix</part-name></score-part></part-list>"
                + "<part id='P1'><measure number='1'><attributes><divisions>1</divisions><time><beats>4</beats>"
                + "<beat-type>4</beat-type></time></attributes><harmony><root><root-step>C</root-step></root>"
                + "<kind>major</kind></harmony><note><pitch><step>C</step><octave>5</octave></pitch>"
                + "<duration>4</duration></note></measure></part></score-partwise>";
    }

    /** Two parts: one is low and plays chords. */
    private static byte[] midi(String title) {
        MidiBytes.Track melody = new MidiBytes.Track().name("Chant");
        MidiBytes.Track chords = new MidiBytes.Track().name("Accords");
        int[] pitches = {72, 74, 76, 77, 79, 77, 76, 72};
        for (int i = 0; i < pitches.length; i++) melody.note(1, pitches[i], i * 96L, i * 96L + 90);
        for (int pitch : new int[] {48, 52, 55}) chords.note(2, pitch, 0, 380).note(2, pitch, 384, 760);
        return MidiBytes.file(
                1, 96, new MidiBytes.Track().name(title).meter(0, 4, 2).tempo(0, 500_000), melody, chords);
    }

    private static byte[] zip(String name, String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
