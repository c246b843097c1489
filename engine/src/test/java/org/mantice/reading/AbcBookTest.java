package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.reading.TuneReadException.Reason;

/** Books of tunes, their text, and what is forgiven or refused. */
class AbcBookTest {
    private static final String BOOK = "%abc-2.1\nM:4/4\nL:1/4\nR:reel\n\nSome words about the book: a|b\n\n"
            + "X:7\nT:The First\nK:C\nCDEF|\n\nX:3\nT:The Second\nT:Another name\nM:3/4\nK:G\nGAB|\n\n"
            + "X:7\nT:The Third\nK:D\nDEFG|\n";

    private static ReadTune tune(String wanted) {
        return Abc.read(BOOK, ReadOptions.DEFAULT.withTune(wanted));
    }

    @Test
    void theTunesOfABookAreListed() {
        List<TuneEntry> entries = new TuneReader()
                .open("book.abc", BOOK.getBytes(StandardCharsets.UTF_8))
                .entries();

        assertThat(entries).extracting(TuneEntry::label).containsExactly("7 The First", "3 The Second", "7 The Third");
        assertThat(entries).extracting(TuneEntry::place).containsExactly(1, 2, 3);
        assertThat(entries)
                .extracting(entry ->
                        entry.key().orElseThrow().tonic() + " " + entry.meter().orElseThrow())
                .containsExactly("C 4/4", "G 3/4", "D 4/4");
        assertThat(entries).extracting(entry -> entry.line().getAsInt()).containsExactly(8, 13, 20);
    }

    /** Dividing the text anew for each tune would take more than a minute. */
    @Test
    void allTunesOfAThickBookAreReadInTimeLinearInItsSize() {
        int tunes = 3_000;
        StringBuilder text = new StringBuilder("M:4/4\nL:1/4\n\n");
        for (int i = 1; i <= tunes; i++) text.append("X:").append(i).append("\nT:Invented\nK:C\nCDEF|GABc|\n\n");

        Duration guard = Duration.ofSeconds(20);
        int notes = assertTimeoutPreemptively(guard, () -> {
            TuneBook book = new TuneReader().open("thick.abc", text.toString().getBytes(StandardCharsets.UTF_8));
            int sum = 0;
            for (TuneEntry entry : book.entries())
                sum += (int) Abc.notes(book.read(ReadOptions.DEFAULT.withTune(entry.handle())));
            return sum;
        });

        assertThat(notes).isEqualTo(8 * tunes);
    }

    @Test
    void musicXmlIsABookOfOneTune() {
        List<TuneEntry> entries = new TuneReader()
                .open("a.xml", Xml.score(Xml.note("C4", 16)).getBytes(StandardCharsets.UTF_8))
                .entries();

        assertThat(entries).extracting(TuneEntry::place).containsExactly(1);
    }

    @ParameterizedTest
    @CsvSource({
        "7, The First",
        "3, The Second",
        "the second, The Second",
        "another NAME, The Second",
        "#3, The Third",
        "2, The Second",
        "#1, The First"
    })
    void aTuneIsPickedByNumberTitleOrPlace(String wanted, String title) {
        assertThat(tune(wanted).tune().title()).isEqualTo(title);
    }

    @Test
    void withoutAChoiceTheFirstIsReadAndThatIsSaid() {
        ReadTune read = Abc.read(BOOK);

        assertThat(read.tune().title()).isEqualTo("The First");
        assertThat(Abc.listed(read)).containsExactly("assumed: the first of 3 tunes in the file is meant");
    }

    @Test
    void theHeadOfTheFileCountsForEveryTune() {
        assertThat(tune("#1").tune().measure(0).meter()).hasToString("4/4");
        assertThat(tune("#2").tune().measure(0).meter()).hasToString("3/4");
        assertThat(tune("#3").tune().dance()).contains("reel");
        assertThat(Abc.events(tune("#3"))).isEqualTo("D4 1/4, E4 1/4, F#4 1/4, G4 1/4");
    }

    @Test
    void aTuneThatIsNotThereIsRefusedWithThoseThatAre() {
        assertThatThrownBy(() -> tune("The Fourth"))
                .hasMessage(
                        "tune.abc: there is no tune \"The Fourth\"; allowed: 7 The First, 3 The Second, 7 The Third");
    }

    @Test
    void aTuneWithoutNumberIsForgiven() {
        ReadTune read = Abc.read("T:Bare\nM:4/4\nL:1/4\nK:C\nCDEF|\n");

        assertThat(read.tune().title()).isEqualTo("Bare");
        assertThat(Abc.listed(read)).containsExactly("forgiven: X: missing in the head of the tune (line 1, column 1)");
    }

    @Test
    void anEmptyLineInsideATuneIsForgivenButWordsBetweenTunesAreNone() {
        ReadTune read = Abc.read("X:1\nM:4/4\nL:1/4\nK:C\nCDEF|\n\nGABc|\n\nThese are words | and no music.\n");

        assertThat(Abc.pitches(read)).isEqualTo("C4 D4 E4 F4 G4 A4 B4 C5");
        assertThat(Abc.listed(read)).containsExactly("forgiven: empty line inside the tune (line 6, column 1)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "ISO-8859-1", "UTF-16"})
    void textIsReadInItsEncoding(String encoding) {
        byte[] bytes = "X:1\nT:Übermut\nM:4/4\nL:1/4\nK:C\nCDEF|\n".getBytes(Charset.forName(encoding));

        assertThat(new TuneReader()
                        .read("a.abc", bytes, ReadOptions.DEFAULT)
                        .tune()
                        .title())
                .isEqualTo("Übermut");
    }

    @Test
    void aNamedEncodingAndAByteOrderMarkCount() {
        byte[] named = "%%abc-charset iso-8859-2\nX:1\nT:Łąka\nK:C\nC|\n".getBytes(Charset.forName("ISO-8859-2"));
        byte[] marked = "\uFEFFX:1\nT:Łąka\nK:C\nC|\n".getBytes(StandardCharsets.UTF_8);

        for (byte[] bytes : List.of(named, marked))
            assertThat(new TuneReader()
                            .read("a.abc", bytes, ReadOptions.DEFAULT)
                            .tune()
                            .title())
                    .isEqualTo("Łąka");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '\t',
            value = {
                "caf\\'e\tcafé",
                "M\\\"uller\tMüller",
                "&eacute;t&eacute;\tété",
                "\\u00e9\té",
                "\\cc\\~n\\/o\\ss\\aa\tçñøßå",
                "Fish &amp; Bread\tFish & Bread",
                "&#233;&#xE9;\téé",
                "100\\%\t100%",
                "\\`a\\^o\\vs\tàôš"
            })
    void escapesInTextsAreRead(String written, String title) {
        assertThat(Abc.read("X:1\nT:" + written + "\nK:C\nC|\n").tune().title()).isEqualTo(title);
    }

    @Test
    void aQuotationMarkInsideATextIsEscaped() {
        assertThat(Abc.plain("\"^say \\\" here\"C8|").tune().measure(0).marks().toString())
                .contains("say \" here");
    }

    @Test
    void crAndCrLfEndLines() {
        for (String end : List.of("\r", "\r\n", "\n"))
            assertThat(Abc.pitches(Abc.read("X:1\nM:4/4\nK:C\nCD\\\nEF|\n".replace("\n", end))))
                    .isEqualTo("C4 D4 E4 F4");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '\t',
            value = {
                "C2k2|\tline 6, column 3: k means nothing here",
                "[CEG2|\tline 6, column 1: [ without its end",
                "\"Am |C8|\tline 6, column 1: \" without its end",
                "C2+trill+D2|\tline 6, column 3: +trill+, a spelling of older versions",
                "C2D0|\tline 6, column 4: note length 0 read as 1",
                "|:C8:| 2D8|\tline 6, column 8: number 2 of an ending apart from its bar line",
                "C4>|D4|\tline 6, column 3: > without a note on both sides",
                "(3CD|E8|\tline 6, column 1: tuplet of 3 that the measure ends too early"
            })
    void strictReadingRefusesWithThePlaceWhatIsForgivenOtherwise(String body, String problem) {
        String text = "X:1\nT:Invented\nM:4/4\nL:1/8\nK:C\n" + body + "\n";
        String place = problem.substring(0, problem.indexOf(':'));

        assertThat(Abc.listed(Abc.read(text)))
                .anyMatch(
                        line -> line.equals("forgiven: " + problem.substring(place.length() + 2) + " (" + place + ")"));
        assertThatThrownBy(() -> Abc.read(text, ReadOptions.DEFAULT.strictly()))
                .isInstanceOfSatisfying(
                        TuneReadException.class, e -> assertThat(e.reason()).isEqualTo(Reason.NOT_STRICT))
                .hasMessage("tune.abc, " + problem + "; allowed in strict reading: ABC 2.1 as it is written down");
    }

    @Test
    void strictReadingTakesWhatTheStandardAllows() {
        String text = "%abc-2.1\nX:1\nT:Invented\nM:4/4\nL:1/8\nK:C\n|:\"C\"CDEF !trill!G4|1 (3ABc d6:|2 z8|]\n";

        assertThat(Abc.read(text, ReadOptions.DEFAULT.strictly()).tune().measures())
                .hasSize(3);
    }

    @ParameterizedTest
    @CsvSource({
        "'X:1\nK:C\n', NO_MEASURES",
        "'X:1\nT:Words only\n', NO_MEASURES",
        "'X:1\nK:C\nz8|\n', NO_NOTES",
        "'X:1\nK:C\nZ999999|C\n', TOO_MANY_MEASURES",
        "'%abc-2.1\n', NO_TUNES"
    })
    void aTuneThatCannotBeReadIsRefused(String text, Reason reason) {
        assertThatThrownBy(() -> Abc.read(text))
                .isInstanceOfSatisfying(
                        TuneReadException.class, e -> assertThat(e.reason()).isEqualTo(reason));
    }

    @Test
    void proseIsNoTune() {
        assertThatThrownBy(() -> Abc.read("Dear reader, T: what a day | K: it was.\n"))
                .isInstanceOfSatisfying(
                        TuneReadException.class, e -> assertThat(e.reason()).isEqualTo(Reason.OTHER_FORMAT));
    }
}
