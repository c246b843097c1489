package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;

class ChordTextTest {
    private final ChordText text = new ChordText(ChordText.Letters.INTERNATIONAL);

    /**
     * tonal leaves the eleventh out of a thirteenth and the third out of an eleventh, and reads "7alt" its own way; the
     * kinds of MusicXML hold every third up to the extension.
     */
    private static final List<String> TONAL_LEAVES_OUT = List.of("11", "13", "m13", "maj13", "13b9", "7b13", "7alt");

    @Test
    void spellsAsTonalDoesAndWhereThatIsSilentAsTeoriaDoes() throws IOException {
        List<String> disagree = new ArrayList<>();
        int compared = 0;
        for (String[] row : table()) {
            if (TONAL_LEAVES_OUT.contains(row[0])) continue;
            String theirs = row[row.length - 1];
            String ours = text.symbol("C" + row[0]).map(ChordTextTest::classes).orElse("not a chord");
            compared++;
            if (!ours.equals(theirs)) disagree.add(row[0] + ": " + ours + " against " + theirs);
        }

        assertThat(compared).isGreaterThan(50);
        assertThat(disagree).isEmpty();
    }

    @Test
    void readsEverySpellingOfTheTable() throws IOException {
        for (String[] row : table())
            assertThat(text.symbol("C" + row[0])).as("C" + row[0]).isPresent();
    }

    private static List<String[]> table() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                ChordTextTest.class.getResourceAsStream("chord-spellings-tonal.tsv"), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("# "))
                    .map(line -> line.split("\t"))
                    .toList();
        }
    }

    private static String classes(ChordSymbol symbol) {
        return symbol.pitchClasses().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** The dialect of a collection of folk tunes: d and a after a root, small slash bass, plus for sharp. */
    @ParameterizedTest
    @CsvSource({
        "Cd, DIMINISHED, ''", "Ca, AUGMENTED, ''", "Fa7, AUGMENTED_SEVENTH, ''", "D/f+, MAJOR, F#",
                "A7/c+, DOMINANT, C#",
        "Gm/bb, MINOR, Bb", "G/B, MAJOR, B", "E7/g+, DOMINANT, G#", "C#d, DIMINISHED, ''", "D m, MINOR, ''"
    })
    void readsFolkSpellings(String written, ChordKind kind, String bass) {
        ChordSymbol symbol = text.symbol(written).orElseThrow();

        assertThat(symbol.kind()).isEqualTo(kind);
        assertThat(symbol.bass().map(Object::toString).orElse("")).isEqualTo(bass);
    }

    /** ABC 2.1, section 4.18: combinations, a slash bass, an alternate in brackets. */
    @Test
    void readsTheExamplesOfAbc() {
        assertThat(text.symbol("Cdim7").orElseThrow().kind()).isEqualTo(ChordKind.DIMINISHED_SEVENTH);
        assertThat(text.symbol("C/E").orElseThrow().bass().orElseThrow()).hasToString("E");

        ChordText.Written alternate = text.read("G(Em)").orElseThrow();
        assertThat(alternate.symbol()).hasToString("G");
        assertThat(alternate.alternate().orElseThrow()).hasToString("Em");
    }

    @Test
    void readsWhatMayBeLeftOut() {
        ChordText.Written written = text.read("(A7)").orElseThrow();

        assertThat(written.symbol()).hasToString("A7");
        assertThat(written.optional()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"N.C.", "NC", "n.c.", "No Chord"})
    void readsSilence(String written) {
        assertThat(text.read(written).orElseThrow().symbol().isSilent()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1", "3", "12", "D.C.", "D.S. al Fine", "tr", "Fine", "Coda", "Bass", "Allegro", "Go", "Do", "Add",
                        "B1",
                "A.Train", "", " ", "/", "C/", "C/h", "Cmaj7/", "C10", "G(slowly)", "Aeolian", "c", "em", "Dolce",
                        "Ebbing",
                "Cresc.", "Gb5b", "Csus7sus", "m7", "Hm", "(", "()", "C(", "Cadd", "Cno", "C7alt7alt", "Dance",
                        "Chorus", "End"
            })
    void leavesOtherTextAlone(String written) {
        assertThat(text.read(written)).as(written).isEmpty();
    }

    @Test
    void readsGermanLettersOnRequest() {
        ChordText german = new ChordText(ChordText.Letters.GERMAN);

        assertThat(german.symbol("Hm7").orElseThrow()).hasToString("Bm7");
        assertThat(german.symbol("B").orElseThrow()).hasToString("Bb");
        assertThat(german.symbol("Bb").orElseThrow()).hasToString("Bb");
        assertThat(text.symbol("Hm7")).isEmpty();
    }

    @Test
    void readsUnicodeAccidentals() {
        assertThat(text.symbol("B\u266dm7\u266d5").orElseThrow())
                .isEqualTo(new ChordSymbol(
                        text.symbol("Bb").orElseThrow().root(),
                        ChordKind.HALF_DIMINISHED,
                        List.of(),
                        java.util.Optional.empty(),
                        "m7b5"));
        assertThat(text.symbol("F\u266f").orElseThrow()).hasToString("F#");
    }

    /** MusicXML 4.0, elements kind and degree: what a kind holds is altered, what it does not hold is added. */
    @Test
    void addsOrAltersAsMusicXmlDoes() {
        Map<String, String> expected = Map.of(
                "C7b9", "C7(addb9)",
                "C9b5", "C9(b5)",
                "Cmaj7#11", "Cmaj7(add#11)",
                "C13b9", "C13(b9)",
                "C6/9", "C6(add9)",
                "C7sus4", "Csus4(add7)",
                "Cno3", "C(no3)");

        expected.forEach((written, shown) ->
                assertThat(text.symbol(written).orElseThrow()).as(written).hasToString(shown));
    }

    @Test
    void readsWhatItWritesItself() {
        for (ChordKind kind : ChordKind.values()) {
            if (kind.intervals().isEmpty()) continue;
            ChordSymbol symbol = ChordSymbol.of(new org.mantice.tune.NoteName(org.mantice.tune.Step.E, -1), kind);

            assertThat(text.symbol(symbol.toString()).orElseThrow().kind()).isEqualTo(kind);
        }
    }
}
