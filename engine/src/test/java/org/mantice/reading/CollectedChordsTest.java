package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.mantice.tune.ChordSymbol;

/**
 * Every chord that people spelled in the collections against tonal 6.4.2 and, where that is silent, teoria 2.5.0; the
 * script that asked them lies beside the table.
 */
class CollectedChordsTest {
    private static final Pattern FIELD = Pattern.compile("[A-Za-z+]:.*");
    private static final Pattern MUSIC = Pattern.compile("[A-Ga-gxyz]:[|:].*");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern PRINTED_KIND = Pattern.compile("<kind[^>]* text=\"([^\"]*)\"");

    /** tonal leaves the eleventh out of a thirteenth; the kinds of MusicXML hold every third up to the extension. */
    private static final Map<String, String> WITH_ELEVENTH = Map.of("C13", "0 2 4 5 7 9 10 / -");

    private final ChordText text = new ChordText(ChordText.Letters.INTERNATIONAL);

    @Test
    void haveTheNotesThatOtherLibrariesGiveThem() throws IOException {
        List<String> unlike = new ArrayList<>();
        int chords = 0;
        for (String[] row : table()) {
            String theirs = row[1].equals("none") ? "none" : row[3] + " / " + row[4];
            String ours = text.read(row[0])
                    .map(ChordText.Written::symbol)
                    .map(CollectedChordsTest::classes)
                    .orElse("none");
            if (!ours.equals("none")) chords++;
            if (!ours.equals(WITH_ELEVENTH.getOrDefault(row[0], theirs)))
                unlike.add(row[0] + ": " + ours + " against " + theirs);
        }

        assertThat(unlike).isEmpty();
        assertThat(chords).isGreaterThan(100);
    }

    @Test
    void areAllInTheTable() throws IOException {
        Set<String> written = new TreeSet<>();
        for (String folder : List.of("abc-flyingcat", "abc-nottingham"))
            for (Path file : files(folder, ".abc"))
                for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\\R")) {
                    boolean music = MUSIC.matcher(line).matches();
                    if (music || !FIELD.matcher(line).matches())
                        collect(QUOTED, line.replaceAll("%.*", ""), "", written);
                }
        for (String folder : List.of("musicxml-misc", "musicxml-test-suite", "mxl-leadsheets-pd"))
            for (Path file : files(folder, ".xml", ".musicxml", ".mxl"))
                for (String score : scores(file)) collect(PRINTED_KIND, score, "C", written);

        assertThat(table().stream().map(row -> row[0])).containsExactlyInAnyOrderElementsOf(written);
    }

    private static void collect(Pattern pattern, String from, String before, Set<String> into) {
        Matcher matcher = pattern.matcher(from);
        while (matcher.find()) into.add(before + matcher.group(1));
    }

    private static List<String> scores(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        if (!file.toString().endsWith(".mxl")) return List.of(new String(bytes, StandardCharsets.UTF_8));
        List<String> scores = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry())
                scores.add(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
        return scores;
    }

    private static List<Path> files(String folder, String... endings) throws IOException {
        try (Stream<Path> all = Files.walk(Corpus.folder(folder))) {
            return all.filter(Files::isRegularFile)
                    .filter(path -> Stream.of(endings).anyMatch(path.toString()::endsWith))
                    .sorted()
                    .toList();
        }
    }

    private static String classes(ChordSymbol symbol) {
        String notes = symbol.pitchClasses().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return notes + " / "
                + symbol.bass().map(bass -> String.valueOf(bass.pitchClass())).orElse("-");
    }

    private static List<String[]> table() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                CollectedChordsTest.class.getResourceAsStream("chord-spellings-of-collections.tsv"),
                StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\t"))
                    .toList();
        }
    }
}
