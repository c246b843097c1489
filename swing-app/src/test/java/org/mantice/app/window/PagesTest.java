package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
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
import org.mantice.app.sheet.SheetSign;
import org.mantice.app.view.AccessibleNames;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.view.Pictures;
import org.mantice.app.words.Words;

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
}
