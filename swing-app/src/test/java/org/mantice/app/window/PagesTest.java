package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.BookLine;
import org.mantice.app.model.BookModel;
import org.mantice.app.model.MelodyModel;
import org.mantice.app.sheet.SheetSign;
import org.mantice.app.view.AccessibleNames;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.view.Pictures;
import org.mantice.app.words.Words;
import org.mantice.reading.MidiBytes;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneEntry;
import org.mantice.reading.TuneReader;

class PagesTest {
    private LookAndFeel before;

    @BeforeEach
    void useLook() {
        before = UIManager.getLookAndFeel();
        Looks.use(false);
    }

    @AfterEach
    void putBack() throws Exception {
        UIManager.setLookAndFeel(before);
    }

    static Stream<Locale> languages() {
        return Words.LANGUAGES.stream();
    }

    @ParameterizedTest
    @MethodSource("languages")
    void keysPageListsEveryCommandWithItsKeysAndWhatItDoes(Locale language) throws IOException {
        Words words = Words.of(language);
        Actions actions = new Actions(words);

        List<KeysPage.Row> rows = KeysPage.rows(words, actions);
        KeysPage page = new KeysPage(words, actions);
        Pictures.keep(Pictures.of(page, 1000, 800), "shell-keys-" + language);

        Set<String> listed = rows.stream().map(KeysPage.Row::keys).collect(Collectors.toSet());
        for (Command command : Command.values())
            if (!actions.keys(command).isEmpty()) assertThat(listed).contains(actions.keyWords(command));
        assertThat(rows).hasSizeGreaterThan(Command.values().length + 8);
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.place()).isNotBlank();
            assertThat(row.what()).isNotBlank();
            assertThat(row.hint()).endsWith(".");
        });
        assertThat(rows.stream().filter(row -> row.what().equals(words.text("window.keys.why"))))
                .singleElement()
                .satisfies(row -> assertThat(row.keys()).isNotBlank());
        AccessibleNames.check(page);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void signsPageShowsEverySignOfTheSheet(Locale language) throws IOException {
        Words words = Words.of(language);

        SignsPage page = new SignsPage(words);
        BufferedImage picture = Pictures.of(page, 640, 40 * SheetSign.values().length);
        Pictures.keep(picture, "shell-signs-" + language);

        AccessibleNames.check(page);
        assertThat(Stream.of(SheetSign.values()).map(sign -> words.of("sheet", sign)))
                .doesNotHaveDuplicates()
                .allSatisfy(meaning -> assertThat(meaning).endsWith("."));
        assertThat(Pictures.colours(picture)).isGreaterThan(8);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void aboutPageNamesLicencesAndWarnsOfPain(Locale language) throws IOException {
        Words words = Words.of(language);

        AboutPage page = new AboutPage(words, "1.2.3");
        Pictures.keep(Pictures.of(page, 700, 400), "shell-about-" + language);

        AccessibleNames.check(page);
        assertThat(words.text("window.about.name", "1.2.3")).contains("1.2.3");
        assertThat(words.text("window.about.parts")).contains("FlatLaf", "Jackson", "picocli", "Bravura", "DejaVu");
        assertThat(words.text("window.about.licence")).contains("2.0");
    }

    @ParameterizedTest
    @MethodSource("languages")
    void crashPageHasAReportThatCanBeCopied(Locale language) throws IOException {
        Words words = Words.of(language);
        String report = Uncaught.report(Thread.currentThread(), new IllegalStateException("the reed is stuck"));

        Container page = new CrashPage(words, report);
        Pictures.keep(Pictures.of(page, 800, 400), "shell-crash-" + language);

        AccessibleNames.check(page);
        assertThat(report).contains("Mantice", "Java", "IllegalStateException: the reed is stuck", "PagesTest");
    }

    @ParameterizedTest
    @MethodSource("languages")
    void aBookShowsItsTunesInBothLooks(Locale language) throws IOException {
        StringBuilder text = new StringBuilder("M:6/8\n\n");
        for (int i = 1; i <= 30; i++)
            text.append("X:")
                    .append(i)
                    .append("\nT:Invented tune no. ")
                    .append(i)
                    .append("\nK:Em\nE3|\n\n");
        List<TuneEntry> entries = new TuneReader()
                .open("book.abc", text.toString().getBytes(StandardCharsets.UTF_8))
                .entries();

        for (boolean dark : new boolean[] {false, true}) {
            Looks.use(dark);
            BookModel book = new BookModel(BookLine.of(entries), Optional.of("#3"), Words.of(language));
            BookPanel panel = new BookPanel(book, Words.of(language), () -> {});
            panel.filter().setText("tune 1");
            Pictures.keep(Pictures.of(panel, 640, 420), "book-" + language + (dark ? "-dark" : "-light"));

            assertThat(book.size()).isEqualTo(12);
            AccessibleNames.check(panel);
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void theMelodysPartAndTheGridAreShownInBothLooks(Locale language) throws IOException {
        MidiBytes.Track high = new MidiBytes.Track().name("High");
        MidiBytes.Track low = new MidiBytes.Track().name("Low");
        for (int i = 0; i < 8; i++) {
            high.note(1, 72 + i, i * 48L + i % 2, i * 48L + 40);
            low.note(2, 48, i * 48L, i * 48L + 40);
        }
        byte[] midi = MidiBytes.file(1, 96, new MidiBytes.Track().tempo(0, 500_000), high, low);
        ReadTune read = new TuneReader().read("two.mid", midi, ReadOptions.DEFAULT);

        for (boolean dark : new boolean[] {false, true}) {
            Looks.use(dark);
            MelodyModel where = MelodyModel.of(read, Words.of(language));
            MelodyPanel panel = new MelodyPanel(where, Words.of(language), () -> {});
            Pictures.keep(Pictures.of(panel, 640, 380), "melody-" + language + (dark ? "-dark" : "-light"));

            assertThat(where.grid()).hasSizeGreaterThanOrEqualTo(2);
            assertThat(panel.choice()).map(PartInfo::name).contains("High");
            AccessibleNames.check(panel);
        }
    }
}
