package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.words.Words;
import org.mantice.reading.TuneEntry;
import org.mantice.reading.TuneReader;

class BookModelTest {
    private static final String BOOK = "M:4/4\n\nX:1\nT:Élan d’été\nK:G\nG4|\n\nX:12\nT:Frost\nM:3/4\nK:Dmix\nd3|\n\n"
            + "X:21\nT:The Twelfth Night\nM:6/8\nK:Am\nA6|\n\nX:3\nK:F\nF4|\n";

    private static BookModel book(Locale language, Optional<String> last) {
        List<TuneEntry> entries = new TuneReader()
                .open("book.abc", BOOK.getBytes(StandardCharsets.UTF_8))
                .entries();
        return new BookModel(BookLine.of(entries), last, Words.of(language));
    }

    private static List<String> numbers(BookModel book) {
        return IntStream.range(0, book.size())
                .mapToObj(row -> book.entry(row).number())
                .toList();
    }

    @Test
    void everyTuneIsShownInTheOrderOfTheBookWithMeterAndKey() {
        BookModel book = book(Locale.GERMAN, Optional.empty());

        assertThat(numbers(book)).containsExactly("1", "12", "21", "3");
        assertThat(book.meter(0)).isEqualTo("4/4");
        assertThat(book.key(0)).isEqualTo("G-Dur");
        assertThat(book.key(2)).isEqualTo("a-Moll");
        assertThat(book.choice()).map(TuneEntry::number).contains("1");
    }

    @ParameterizedTest
    @CsvSource({
        "elan, 1",
        "d'ete, 1",
        "D’ÉTÉ, 1",
        "night twelfth, 21",
        "3/4, 12",
        "minor, 21",
        "12, 12",
        "nothing of the kind, ''",
        "'', 1 12 21 3"
    })
    void whatIsTypedLeavesTheTunesThatHoldEveryWord(String typed, String left) {
        BookModel book = book(Locale.ENGLISH, Optional.empty());

        book.filter(typed);

        assertThat(String.join(" ", numbers(book))).isEqualTo(left);
        assertThat(book.total()).isEqualTo(4);
    }

    @Test
    void theTuneChosenLastIsSelectedAndStaysSoWhileItIsShown() {
        BookModel book = book(Locale.ENGLISH, Optional.of("#3"));
        assertThat(book.choice()).map(TuneEntry::number).contains("21");

        book.filter("t");
        assertThat(book.choice()).map(TuneEntry::number).contains("21");
        book.filter("frost");
        assertThat(book.choice()).map(TuneEntry::number).contains("12");
        book.filter("no such words");
        assertThat(book.choice()).isEmpty();
        book.filter("");
        assertThat(book.choice()).map(TuneEntry::number).contains("1");
    }

    @Test
    void aNumberTypedInFullSelectsItsTune() {
        BookModel book = book(Locale.ENGLISH, Optional.empty());

        book.filter("3");

        assertThat(numbers(book)).containsExactly("12", "3");
        assertThat(book.choice()).map(TuneEntry::number).contains("3");
    }

    @Test
    void walkingStopsAtTheEnds() {
        BookModel book = book(Locale.ENGLISH, Optional.empty());

        book.move(-5);
        assertThat(book.selected()).isZero();
        book.move(2);
        assertThat(book.selected()).isEqualTo(2);
        book.move(50);
        assertThat(book.selected()).isEqualTo(3);
        book.filter("nothing of the kind");
        book.move(1);
        assertThat(book.selected()).isEqualTo(BookModel.NONE);
    }
}
