package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.Articulation;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Meter;

/** ABC 2.1 (December 2011), by its sections; rules and examples from memory (high confidence), notes invented. */
class AbcStandardTest {
    @ParameterizedTest(name = "3.1.6 M:{0} is {1}")
    @CsvSource({
        "4/4, 4/4",
        "C, 4/4",
        "C|, 2/2",
        "6/8, 6/8",
        "9/8, 9/8",
        "(2+3+2)/8, 2+3+2/8",
        "2+3/8, 2+3/8",
        "none, free"
    })
    void section316(String written, String meter) {
        ReadTune read = Abc.tune("M:" + written + "\nL:1/8\nK:C", "CDEF|GABc|");

        assertThat(read.tune().measure(0).meter()).hasToString(meter);
    }

    @Test
    void section316_withoutMeterTheCommonestLengthIsAssumedAndSaid() {
        ReadTune read = Abc.tune("L:1/4\nK:C", "CDE|FGA|Bcd|e3|");

        assertThat(read.tune().measure(0).meter()).isEqualTo(Meter.of(3, 4));
        assertThat(Abc.count(read, SkippedWhat.NO_METER)).isEqualTo(1);
    }

    @ParameterizedTest(name = "3.1.7 M:{0} has the unit {1}")
    @CsvSource({"2/4, 1/16", "3/4, 1/8", "6/8, 1/8", "4/4, 1/8", "C|, 1/8", "none, 1/8", "3/8, 1/16"})
    void section317(String meter, String unit) {
        assertThat(Abc.melody(Abc.tune("M:" + meter + "\nK:C", "CDEF|")).get(0).duration())
                .hasToString(unit);
    }

    @ParameterizedTest(name = "3.1.8 Q:{0} is {1}")
    @CsvSource({
        "1/4=120, 1/4=120",
        "3/8=50, 3/8=50",
        "'\"Allegro\" 1/4=140', 1/4=140",
        "'3/8=50 \"Slowly\"', 3/8=50",
        "1/4 3/8 1/4 3/8=40, 5/4=40",
        "180, 1/8=180",
        "C3=60, 3/8=60",
        "C=100, 1/8=100"
    })
    void section318(String written, String tempo) {
        ReadTune read = Abc.tune("M:4/4\nL:1/8\nQ:" + written + "\nK:C", "C8|");

        assertThat(read.tune().measure(0).marks())
                .filteredOn(mark -> mark instanceof Mark.TempoChange)
                .extracting(mark -> ((Mark.TempoChange) mark).tempo().toString())
                .containsExactly(tempo);
    }

    @Test
    void section318_wordsAloneAreKeptAsWords() {
        assertThat(Abc.tune("Q:\"Andante\"\nM:4/4\nK:C", "C8|")
                        .tune()
                        .measure(0)
                        .marks())
                .anyMatch(
                        mark -> mark instanceof Mark.Words words && words.text().equals("Andante"));
    }

    @ParameterizedTest(name = "3.1.9 P:{0} plays {1}")
    @CsvSource({
        "ABA, 60 64 60",
        "A3B, 60 60 60 64",
        "(AB)2, 60 64 60 64",
        "((AB)2.C)2, 60 64 60 64 67 60 64 60 64 67",
        "ABC, 60 64 67",
        "CBA, 67 64 60",
        "AABC, 60 60 64 67"
    })
    void section319(String order, String played) {
        ReadTune read = Abc.tune("M:4/4\nL:1/1\nP:" + order + "\nK:C", "P:A\nC|\nP:B\nE|\nP:C\nG|");

        assertThat(Abc.played(read)).isEqualTo(played);
    }

    @Test
    void section319_aRepeatAroundAPartIsAmongItsTimesInTheOrder() {
        String body = "P:A\n|:C|[1D:|[2E|]\nP:B\nG|";

        assertThat(Abc.played(Abc.tune("M:4/4\nL:1/1\nP:AAB\nK:C", body))).isEqualTo("60 62 60 64 67");
        assertThat(Abc.played(Abc.tune("M:4/4\nL:1/1\nP:AABA\nK:C", body))).isEqualTo("60 62 60 64 67 60 64");
        assertThat(Abc.played(Abc.tune("M:4/4\nL:1/1\nP:ABA\nK:C", body))).isEqualTo("60 62 60 64 67 60 62 60 64");
    }

    @ParameterizedTest(name = "3.1.14 K:{0} has {1} sharps or flats and sounds {2}")
    @CsvSource({
        "C, 0, C4 F4 B4",
        "G, 1, C4 F#4 B4",
        "Bb, -2, C4 F4 Bb4",
        "F#m, 3, C#4 F#4 B4",
        "A Mix, 2, C#4 F#4 B4",
        "ADor, 1, C4 F#4 B4",
        "E minor, 1, C4 F#4 B4",
        "Gmaj, 1, C4 F#4 B4",
        "D Phrygian, -2, C4 F4 Bb4",
        "Flydian, 0, C4 F4 B4",
        "Blocrian, 0, C4 F4 B4",
        "C#, 7, C#4 F#4 B#4",
        "AMIX, 2, C#4 F#4 B4",
        "Aaeo, 0, C4 F4 B4",
        "Gion, 1, C4 F#4 B4",
        "HP, 0, C4 F4 B4",
        "Hp, 2, C#4 F#4 B4",
        "none, 0, C4 F4 B4",
        "'', 0, C4 F4 B4",
        "D exp _b ^f, 2, C4 F#4 Bb4",
        "D =c, 1, C4 F#4 B4",
        "D Phr ^f, -2, C4 F#4 Bb4"
    })
    void section3114(String key, int fifths, String pitches) {
        ReadTune read = Abc.tune("M:3/4\nL:1/4\nK:" + key, "CFB|");

        assertThat(Abc.pitches(read)).isEqualTo(pitches);
        assertThat(read.tune().measure(0).key().fifths()).isEqualTo(fifths);
    }

    @Test
    void section32_fieldsChangeInsideTheTuneAndInsideALine() {
        ReadTune read = Abc.tune("M:2/4\nL:1/8\nK:C", "CDEF|[M:3/4]GABcde|[K:G][L:1/4]FGA|\nM:C\nFGAB|");

        assertThat(read.tune().measures())
                .extracting(measure -> measure.meter().toString())
                .containsExactly("2/4", "3/4", "3/4", "4/4");
        assertThat(Abc.events(read)).endsWith("F#4 1/4, G4 1/4, A4 1/4 | F#4 1/4, G4 1/4, A4 1/4, B4 1/4");
    }

    @Test
    void section33_aFieldGoesOnInTheNextLine() {
        ReadTune read = Abc.plain("C2D2E2F2|\nw: one two\n+: three four");

        assertThat(Abc.melody(read))
                .extracting(event -> event.marks().lyrics().get(0).text())
                .containsExactly("one", "two", "three", "four");
    }

    @Test
    void section41_lettersAndOctaves() {
        assertThat(Abc.pitches(Abc.plain("C,C c c' C,, c''|"))).isEqualTo("C3 C4 C5 C6 C2 C7");
    }

    @Test
    void section42_accidentalsLastToTheBarLineInAllOctavesAndOverTies() {
        assertThat(Abc.pitches(Abc.plain("^C_D=E^^F __G2cd|c4-c4|^f4-|f4f4|")))
                .isEqualTo("C#4 Db4 E4 F##4 Gbb4 C#5 Db5 C5 C5 F#5 F#5 F5");
        assertThat(Abc.pitches(Abc.plain("[I:propagate-accidentals octave]^C c C C4|")))
                .isEqualTo("C#4 C5 C#4 C#4");
        assertThat(Abc.pitches(Abc.plain("[I:propagate-accidentals not]^C c C C4|")))
                .isEqualTo("C#4 C5 C4 C4");
    }

    @Test
    void section42_microtonesAreRoundedAndListed() {
        ReadTune read = Abc.plain("^/C^3/2D2E4|");

        assertThat(Abc.pitches(read)).isEqualTo("C#4 D##4 E4");
        assertThat(Abc.count(read, SkippedWhat.PITCH_ROUNDED)).isEqualTo(2);
    }

    @Test
    void section43_lengths() {
        assertThat(Abc.events(Abc.plain("A/2A/A//A/4A3/2A3A|")))
                .isEqualTo("A4 1/16, A4 1/16, A4 1/32, A4 1/32, A4 3/16, A4 3/8, A4 1/8");
    }

    @Test
    void section44_brokenRhythm() {
        assertThat(Abc.events(Abc.plain("a>b c<d a>>b a<<<b|")))
                .isEqualTo("A5 3/16, B5 1/16, C5 1/16, D5 3/16, A5 7/32, B5 1/32, A5 1/64, B5 15/64");
        assertThat(Abc.events(Abc.plain("[Ac]>{g}\"G\"b z<c d4|")))
                .isEqualTo("A4+C5 3/16, B5 1/16, - 1/16, C5 3/16, D5 1/2");
    }

    @Test
    void section45_rests() {
        ReadTune read = Abc.plain("z4x4|Z2|y4C8|X|");

        assertThat(Abc.events(read)).isEqualTo("- 1/2, - 1/2 | - 1 | - 1 | C4 1 | - 1");
        assertThat(Abc.listed(read)).isEmpty();
    }

    @Test
    void section46_clefsOctavesAndTransposition() {
        assertThat(Abc.pitches(Abc.tune("M:4/4\nL:1/4\nK:C octave=-1", "CDEF|")))
                .isEqualTo("C3 D3 E3 F3");
        assertThat(Abc.pitches(Abc.tune("M:4/4\nL:1/4\nK:C clef=treble-8", "CDEF|")))
                .isEqualTo("C3 D3 E3 F3");
        assertThat(Abc.pitches(Abc.tune("M:4/4\nL:1/4\nK:C bass middle=d", "cdef|")))
                .isEqualTo("C3 D3 E3 F3");
        assertThat(Abc.pitches(Abc.tune("M:4/4\nL:1/4\nK:C alto", "CDEF|"))).isEqualTo("C4 D4 E4 F4");
        ReadTune moved = Abc.tune("M:4/4\nL:1/4\nK:C transpose=2", "\"C\"CDEF|");
        assertThat(Abc.pitches(moved)).isEqualTo("D4 E4 F#4 G4");
        assertThat(Abc.chords(moved)).isEqualTo("D@0");
        assertThat(moved.tune().measure(0).key().fifths()).isEqualTo(2);
        assertThat(Abc.pitches(Abc.tune("%%MIDI transpose -12\nM:4/4\nL:1/4\nK:C", "CDEF|")))
                .isEqualTo("C3 D3 E3 F3");
    }

    @ParameterizedTest(name = "4.8 {0} plays {1}")
    @CsvSource({
        "|:C|D:|E||, 60 62 60 62 64",
        "|:C:||:D:|, 60 60 62 62",
        "|:C::D:|, 60 60 62 62",
        "|:C:||:D:|], 60 60 62 62",
        "C:|D:|, 60 60 62 62",
        "|::C::|D|, 60 60 60 62",
        "|:C:|:D:|, 60 60 62 62",
        "|:C :| |: D :|, 60 60 62 62",
        "[|C|D|], 60 62",
        "C.|D||E[|]F[]G|], 60 62 64 65 67",
        "C|:D:|E|, 60 62 62 64"
    })
    void section48(String body, String played) {
        assertThat(Abc.played(Abc.tune("M:4/4\nL:1/1\nK:C", body))).isEqualTo(played);
    }

    @ParameterizedTest(name = "4.9, 4.10 {0} plays {1}")
    @CsvSource({
        "|:C|1D:|2E|], 60 62 60 64",
        "|:C[1D:|[2E||F|], 60 62 60 64 65",
        "|:C|[1D:|[2E|], 60 62 60 64",
        "|:C| [1 D :| [2 E |], 60 62 60 64",
        "C|1D:|2E|], 60 62 60 64",
        "'|:C|[1,3D:|[2E:|[4F|]', 60 62 60 64 60 62 60 65",
        "|:C[1-3D:|[4E|], 60 62 60 62 60 62 60 64",
        "|:C|1D:|2E:|3F|], 60 62 60 64 60 65",
        "|:C[\"1.\"D:|[\"2.\"E|], 60 62 60 64"
    })
    void section49(String body, String played) {
        assertThat(Abc.played(Abc.tune("M:4/4\nL:1/1\nK:C", body))).isEqualTo(played);
    }

    @Test
    void section411_tiesAndSlurs() {
        List<MelodyEvent> melody = Abc.melody(Abc.plain("(A(B)c2-)c4|[CE-]4[CE]4|(d2.(e2)f2-f2)|"));

        assertThat(melody.get(0).marks().slurStarts()).isEqualTo(1);
        assertThat(melody.get(2).marks().slurStops()).isEqualTo(1);
        assertThat(melody.get(2).notes().get(0).tiedForward()).isTrue();
        assertThat(melody.get(3).notes().get(0).tiedBack()).isTrue();
        assertThat(melody.get(4).notes()).extracting(note -> note.tiedForward()).containsExactly(false, true);
        assertThat(Abc.played(Abc.plain("A4-A4|A4-|A8|"))).isEqualTo("69 69");
    }

    @Test
    void section411_aTieReachesIntoBothEndings() {
        assertThat(Abc.played(Abc.plain("|:A8-|1A4B4:|2A4c4|]"))).isEqualTo("69 71 69 72");
    }

    @Test
    void section412_graceNotes() {
        List<MelodyEvent> melody = Abc.melody(Abc.plain("{g}A4{/gef}B4|{[ce]d}c8{e}|"));

        assertThat(melody.get(0).graces().notes()).hasSize(1);
        assertThat(melody.get(1).graces().notes()).hasSize(3);
        assertThat(melody.get(2).graces().notes().get(0)).hasSize(2);
        assertThat(melody.get(2).after().notes()).hasSize(1);
    }

    @ParameterizedTest(name = "4.13 {0} in {1} lasts {2}")
    @CsvSource({
        "(2AB, 6/8, 3/8",
        "(3ABc, 4/4, 1/4",
        "(4ABcd, 6/8, 3/8",
        "(5ABcde, 4/4, 1/4",
        "(5ABcde, 6/8, 3/8",
        "(6ABcdef, 4/4, 1/4",
        "(7ABcdefg, 9/8, 3/8",
        "(8ABcdefga, 6/8, 3/8",
        "(9ABcdefgab, 4/4, 1/4",
        "(3:2:2AB, 4/4, 1/6",
        "(3:2:4ABcd, 4/4, 1/3",
        "(3::2AB, 4/4, 1/6",
        "(3:4ABc, 4/4, 1/2",
        "(3A2B, 4/4, 1/4",
        "(3z[Ac]B, 4/4, 1/4"
    })
    void section413(String tuplet, String meter, String length) {
        String body = tuplet.equals("(3A2B") ? "(3:2:2A2B" : tuplet;
        ReadTune read = Abc.tune("M:" + meter + "\nL:1/8\nK:C", body + "|C|");

        Measure first = read.tune().measure(0);
        assertThat(first.melody().get(first.melody().size() - 1).end()).hasToString(length);
    }

    @Test
    void section414_decorations() {
        List<MelodyEvent> melody = Abc.melody(
                Abc.plain(".A!tenuto!B LcHd !>!e!wedge!f!breath!g!1!a|!0!A[!1!C!3!E]!2!!4![DF]!mf!A4!<(!A!<)!B|"));

        assertThat(melody.get(0).marks().articulations()).containsExactly(Articulation.STACCATO);
        assertThat(melody.get(1).marks().articulations()).containsExactly(Articulation.TENUTO);
        assertThat(melody.get(2).marks().articulations()).containsExactly(Articulation.ACCENT);
        assertThat(melody.get(3).marks().fermata()).isTrue();
        assertThat(melody.get(4).marks().articulations()).containsExactly(Articulation.ACCENT);
        assertThat(melody.get(5).marks().articulations()).containsExactly(Articulation.STACCATISSIMO);
        assertThat(melody.get(6).marks().breathAfter()).isTrue();
        assertThat(melody.get(7).notes().get(0).fingers()).containsExactly(1);
        assertThat(melody.get(9).notes())
                .extracting(note -> note.fingers().get(0))
                .containsExactly(1, 3);
        assertThat(melody.get(10).notes())
                .extracting(note -> note.fingers().get(0))
                .containsExactly(2, 4);
    }

    @Test
    void section414_loudnessHairpinsAndPhrases() {
        ReadTune read = Abc.plain("!p!C2!crescendo(!D2E2F2|!crescendo)!!f!G2!shortphrase!A2B2c2|");

        assertThat(read.tune().measure(0).marks().toString()).contains("Dynamic", "HairpinStart");
        assertThat(read.tune().measure(1).marks().toString())
                .contains("HairpinEnd[offset=0]", "level=F", "PhraseStart[offset=1/2]");
        assertThat(Abc.listed(read)).isEmpty();
    }

    @ParameterizedTest(name = "4.14 {0} plays {1}")
    @CsvSource({
        "C|!fine!D|E!D.C.!|], 60 62 64 60 62",
        "C|!segno!D|!fine!E|F!D.S.!|], 60 62 64 65 62 64",
        "C|!dacoda!D|E!D.C.alcoda!|!coda!F|], 60 62 64 60 62 65",
        "C|SD|E|F\"D.S.\"|], 60 62 64 65 62 64 65",
        "C|D\"Fine\"|E\"^D.C. al Fine\"|], 60 62 64 60 62"
    })
    void section414_jumps(String body, String played) {
        assertThat(Abc.played(Abc.tune("M:4/4\nL:1/1\nK:C", body))).isEqualTo(played);
    }

    @Test
    void section416_signsAreRedefined() {
        ReadTune read = Abc.tune("U:T=!tenuto!\nU:n=!staccato!\nU:~=!nil!\nM:4/4\nL:1/4\nK:C", "TCnD~EF|");

        assertThat(Abc.melody(read).get(0).marks().articulations()).containsExactly(Articulation.TENUTO);
        assertThat(Abc.melody(read).get(1).marks().articulations()).containsExactly(Articulation.STACCATO);
        assertThat(Abc.listed(read)).isEmpty();
    }

    @Test
    void section417_chordsMultiplyLengths() {
        assertThat(Abc.events(Abc.plain("[CEG]2[C2E2G2][C2E2]2[CE]/2[DF]/2 z|")))
                .isEqualTo("C4+E4+G4 1/4, C4+E4+G4 1/4, C4+E4 1/2, C4+E4 1/16, D4+F4 1/16, - 1/8");
    }

    @Test
    void section418_chordSymbols() {
        ReadTune read = Abc.plain("\"Am7\"A2\"D/F#\"B2\"G(Em)\"c2\"(A7)\"d2|\"1\"A2\"D.C. \"B2\"tr\"c4|\"C\"\"F\"C8|");

        assertThat(Abc.chords(read)).isEqualTo("Am7@0 D/F#@1/4 G(Em)@1/2 (A7)@3/4 |  | C(F)@0");
        assertThat(Abc.listed(read)).noneMatch(line -> line.contains("chord symbol"));
    }

    @Test
    void section418_ofThreeChordSymbolsAtOneNoteTheThirdIsLeftOut() {
        ReadTune read = Abc.plain("\"C\"\"Am\"\"F\"C4\"G(Em)\"\"D\"G4|\"(D7)\"\"(F)\"\"F\"A8|");

        assertThat(Abc.chords(read)).isEqualTo("C(Am)@0 G(Em)@1/2 | (D7)(F)@0");
        assertThat(Abc.listed(read))
                .contains(
                        "left out: chord symbol F beside another at its place (measure 1)",
                        "left out: chord symbol D beside another at its place (measure 1)");
    }

    @Test
    void section419_annotationsAreWords() {
        assertThat(Abc.plain("\"^softly\"C2\"_Am\"D2\"<(\"E2\"@1,2.5 here\"F2|")
                        .tune()
                        .measure(0)
                        .marks())
                .extracting(mark -> ((Mark.Words) mark).text())
                .containsExactly("softly", "Am", "(", "here");
    }

    @Test
    void section51_words() {
        ReadTune read = Abc.plain("C2D2E2F2|G2A2B2c2|\nw: syll-a-ble | two~words*late\\-r_\nC8|\nw: 1.~one\nw: 2.~two");

        assertThat(Abc.melody(read))
                .extracting(event -> event.marks().lyrics().stream()
                        .map(lyric -> lyric.verse() + lyric.text() + (lyric.endsWord() ? "" : "-"))
                        .toList()
                        .toString())
                .containsExactly(
                        "[1syll-]",
                        "[1a-]",
                        "[1ble]",
                        "[]",
                        "[1two words]",
                        "[]",
                        "[1late-r]",
                        "[]",
                        "[11. one, 22. two]");
    }

    @Test
    void section6_linesAreContinuedAndCommentsPassedOver() {
        ReadTune read = Abc.plain("CDEF\\\n% a remark\nGABc| % another\n%%scale 0.7\nc8|[r:and this]");

        assertThat(read.tune().measures()).hasSize(2);
        assertThat(Abc.listed(read)).isEmpty();
    }

    @Test
    void section7_voicesTheFirstWithNotesIsTheMelodyAndABassClefTheBassStaff() {
        ReadTune read = Abc.tune(
                "M:4/4\nL:1/4\nV:1 name=\"Tune\"\nV:2 name=\"Second\"\nV:3 clef=bass\nK:C",
                "V:1\nCDEF|GABc|\nV:2\n\"C\"EFGA|Bcde|\n[V:3]C,2G,,2|C,2G,,2|");

        assertThat(Abc.pitches(read)).isEqualTo("C4 D4 E4 F4 G4 A4 B4 C5");
        assertThat(read.tune().hasBassStaff()).isTrue();
        assertThat(read.melody().part().label()).isEqualTo("1 (Tune)");
        assertThat(Abc.listed(read))
                .containsExactly(
                        "left out: notes of part 2 (Second) (8; measures 1, 2)",
                        "assumed: the chord symbols of part 2 (Second) belong to the melody");
        assertThat(Abc.read("X:1\nM:4/4\nL:1/4\nK:C\nV:1\nCDEF|\nV:2\nG4|\n", ReadOptions.ofPart("2"))
                        .melody()
                        .part()
                        .id())
                .isEqualTo("2");
    }

    @Test
    void section74_overlaysAreLeftOutAndListed() {
        ReadTune read = Abc.plain("C4D4&E8|F8|");

        assertThat(Abc.events(read)).isEqualTo("C4 1/2, D4 1/2 | F4 1");
        assertThat(Abc.listed(read)).containsExactly("left out: notes of voice 1&1 on staff 1 (measure 1)");
    }

    @Test
    void section91_staticMacros() {
        ReadTune read = Abc.tune("M:4/4\nL:1/8\nm:~G2 = {A}G{F}G\nK:C", "~G2A2B4|");

        assertThat(Abc.pitches(read)).isEqualTo("G4 G4 A4 B4");
        assertThat(Abc.melody(read).get(1).graces().notes()).hasSize(1);
        assertThat(Abc.listed(read)).isEmpty();
    }

    @ParameterizedTest(name = "9.2 {0} is {1}")
    @CsvSource({"~G3, G4 G4 G4", "~B3, B4 B4 B4", "'~c3', C5 C5 C5", "'~C,3', C3 C3 C3", "'~b3', B5 B5 B5"})
    void section92_transposingMacros(String written, String pitches) {
        ReadTune read = Abc.tune("M:3/8\nL:1/8\nm:~n3 = n{o}n{m}n\nK:C", written + "|");

        assertThat(Abc.pitches(read)).isEqualTo(pitches);
        assertThat(Abc.listed(read)).isEmpty();
    }

    @ParameterizedTest(name = "9.2 hiz around {0} are {1}")
    @CsvSource({"G, A3 B3 E6", "B, C4 D4 G6", "c, D4 E4 A6", "'C,', D2 E2 A4"})
    void section92_lettersAreTheNotesAround(String written, String pitches) {
        ReadTune read = Abc.tune("M:3/8\nL:1/8\nm:~n = !trill!hiz\nK:C", "~" + written + "|");

        assertThat(Abc.pitches(read)).isEqualTo(pitches);
    }

    @Test
    void section9_aLineThatWouldGrowTooLongIsReadWithoutMacrosAndListed() {
        String many = "C".repeat(64);
        ReadTune read =
                Abc.tune("M:none\nL:1/8\nm:C=" + "D".repeat(200) + "\nm:D=" + "E".repeat(200) + "\nK:C", many + "|");

        assertThat(Abc.melody(read)).hasSize(64);
        assertThat(Abc.listed(read)).anyMatch(line -> line.contains("m:"));
    }

    /** The standard's own example. */
    @Test
    void section415_symbolLines() {
        ReadTune read = Abc.tune("M:4/4\nL:1/4\nK:C", "CDEF    | G```AB`c\ns: \"^slow\" | !f! ** !fff!");

        assertThat(read.tune().measure(0).marks().toString()).contains("offset=0", "slow");
        assertThat(read.tune().measure(1).marks().toString()).contains("offset=0, level=F]", "offset=3/4, level=FFF]");
        assertThat(Abc.listed(read)).isEmpty();
    }

    @Test
    void section415_symbolLinesCarryChordsAndGoOn() {
        ReadTune read = Abc.plain(
                "C2D2 z2E2|[FA]4{g}G4|\nw: one two\ns: \"C\" * \"Am\" |\n+: \"F\" \"G7\"!fermata!\nc8|\ns: \"C\"");

        assertThat(Abc.chords(read)).isEqualTo("C@0 Am@3/4 | F@0 G7@1/2 | C@0");
        assertThat(Abc.melody(read).get(5).marks().fermata()).isTrue();
        assertThat(Abc.listed(read)).isEmpty();
    }

    @Test
    void section415_aSymbolWithoutANoteIsListed() {
        ReadTune read = Abc.plain("C8|\ns: \"C\" \"G\"");

        assertThat(Abc.chords(read)).isEqualTo("C@0");
        assertThat(Abc.listed(read)).singleElement().asString().contains("s:\"G\"");
    }

    /** O40. */
    @Test
    void section418_chordSymbolsAndAFinger() {
        ReadTune read = Abc.plain("\"Cdim7\"!3!C4\"G(Em)\"G2\"C/E\"c2|");

        assertThat(Abc.chords(read)).isEqualTo("Cdim7@0 G(Em)@1/2 C/E@3/4");
        assertThat(Abc.melody(read).get(0).notes().get(0).fingers()).containsExactly(3);
        assertThat(read.tune().measure(0).chords().get(0).symbol().pitchClasses())
                .containsExactly(0, 3, 6, 9);
    }

    @Test
    void section3117_otherFilesAreNotTakenIn() {
        ReadTune read = Abc.tune("I:abc-include other.abh\n%%MIDI program 74\nM:4/4\nL:1/4\nK:C", "CDEF|");

        assertThat(Abc.pitches(read)).isEqualTo("C4 D4 E4 F4");
        assertThat(Abc.listed(read))
                .hasSize(2)
                .anyMatch(line -> line.contains("abc-include other.abh"))
                .anyMatch(line -> line.contains("MIDI program 74"));
    }

    @Test
    void section10_olderSpellingsAreForgivenAndListed() {
        ReadTune read = Abc.plain("+fermata+C2D2!E2F2|+CEG+4G4|");

        assertThat(Abc.pitches(read)).isEqualTo("C4 D4 E4 F4 C4+E4+G4 G4");
        assertThat(Abc.melody(read).get(0).marks().fermata()).isTrue();
        assertThat(Abc.listed(read))
                .containsExactly(
                        "forgiven: +fermata+, a spelling of older versions (line 6, column 1)",
                        "forgiven: !, a spelling of older versions (line 6, column 14)",
                        "forgiven: +CEG+, a spelling of older versions (line 6, column 20)");
    }

    @Test
    void measuresAreNumberedAsPeopleCountThem() {
        ReadTune read = Abc.tune("M:4/4\nL:1/4\nK:C", "G|:CDEF|GAB:|c|DEFG|C3|]");

        assertThat(read.tune().measures()).extracting(Measure::number).containsExactly("0", "1", "2", "2", "3", "4");
        assertThat(read.tune().measures())
                .extracting(Measure::pickup)
                .containsExactly(true, false, false, true, false, false);
        assertThat(Abc.listed(read)).isEmpty();
    }
}
