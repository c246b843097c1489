package org.mantice.app.words;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every bundle of the app: nothing missing, nothing unused, both languages alike. */
class BundlesTest {
    private static final Path APP = Path.of(System.getProperty("mantice.root", ".."), "swing-app/src/main");
    private static final Path FOLDER = APP.resolve("resources/org/mantice/app/words");
    private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d+)");
    private static final Pattern SPELT_OUT = Pattern.compile(
            "(?i)\\b(fuer|ueber\\w*|koenn\\w*|moegl\\w*|\\w*aender\\w*|laenge\\w*|hoeh\\w*|hoer\\w*|\\w*waehl\\w*"
                    + "|oeffn\\w*|schliessen|gross\\w*|groess\\w*|stueck\\w*|\\w*knoepf\\w*|naechst\\w*|zurueck\\w*"
                    + "|loesch\\w*|spaet\\w*|laess\\w*|muess\\w*|wuerd\\w*|tuer|baelg\\w*|baess\\w*|zaehl\\w*)\\b");

    private static SortedMap<String, String> used;

    static List<String> bundles() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".properties"))
                    .map(name -> name.replaceAll("(_de)?\\.properties$", ""))
                    .distinct()
                    .sorted()
                    .toList();
        }
    }

    @BeforeAll
    static void readTheSources() throws IOException {
        used = UsedKeys.in(APP.resolve("java"), bundles());
    }

    @Test
    void bundlesAreSeen() throws IOException {
        assertThat(bundles()).contains("music", "problems");
        assertThat(used).containsKeys("music.turn", "music.Kind.REGISTER", "problems.tune.");
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyKeyOfTheCodeHasATextInBothLanguages(String bundle) throws IOException {
        for (String language : List.of("", "_de")) {
            Properties texts = texts(bundle, language);
            String missing = used.entrySet().stream()
                    .filter(use -> use.getKey().startsWith(bundle + ".") && !isBeginning(use.getKey()))
                    .filter(use -> !texts.containsKey(use.getKey()))
                    .map(use -> use.getKey() + "=   (used in " + use.getValue() + ")")
                    .collect(joining("\n"));

            assertThat(missing)
                    .as("lines to add to %s%s.properties", bundle, language)
                    .isEmpty();
        }
    }

    @Test
    void everyKeyOfTheCodeIsOfABundleThatThereIs() throws IOException {
        List<String> known = bundles();

        assertThat(used.entrySet())
                .filteredOn(use -> !known.contains(use.getKey().replaceAll("\\..*", "")))
                .as("keys without a bundle, and where they are used")
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextIsUsed(String bundle) throws IOException {
        String unused = texts(bundle, "").stringPropertyNames().stream()
                .sorted()
                .filter(key -> !used.containsKey(key))
                .filter(key -> used.keySet().stream().noneMatch(use -> isBeginning(use) && key.startsWith(use)))
                .collect(joining("\n"));

        assertThat(unused).as("lines to take out of %s.properties", bundle).isEmpty();
    }

    private static boolean isBeginning(String key) {
        return key.endsWith(".") || key.endsWith("-");
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void bothLanguagesHaveTheSameKeysAndArguments(String bundle) throws IOException {
        Properties english = texts(bundle, "");
        Properties german = texts(bundle, "_de");

        assertThat(new TreeSet<>(german.stringPropertyNames())).isEqualTo(new TreeSet<>(english.stringPropertyNames()));
        for (String key : english.stringPropertyNames())
            assertThat(arguments(german.getProperty(key)))
                    .as("arguments of %s in German", key)
                    .isEqualTo(arguments(english.getProperty(key)));
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void keysBeginWithTheirBundleAndComeOnce(String bundle) throws IOException {
        for (String language : List.of("", "_de")) {
            List<String> lines;
            try (Stream<String> all = Files.lines(file(bundle, language))) {
                lines = all.filter(line -> line.matches("[^#\\s][^=]*=.*")).toList();
            }
            List<String> keys = lines.stream()
                    .map(line -> line.substring(0, line.indexOf('=')))
                    .toList();

            assertThat(keys).doesNotHaveDuplicates();
            assertThat(texts(bundle, language).stringPropertyNames()).allMatch(key -> key.startsWith(bundle + "."));
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void textsAreWellFormed(String bundle) throws IOException {
        for (String language : List.of("", "_de")) {
            Properties texts = texts(bundle, language);
            for (String key : texts.stringPropertyNames()) {
                String text = texts.getProperty(key);
                String where = key + " in " + file(bundle, language).getFileName();
                if (arguments(text).isEmpty())
                    assertThat(text)
                            .as("%s has no arguments: single apostrophes", where)
                            .doesNotContain("''");
                else {
                    assertThat(text.replace("''", ""))
                            .as("%s has arguments: doubled apostrophes", where)
                            .doesNotContain("'");
                    assertThatCode(() -> new MessageFormat(text, Locale.ROOT))
                            .as(where)
                            .doesNotThrowAnyException();
                }
                assertThat(text).as(where).isEqualTo(text.strip()).doesNotContain("®", "™", "\uFFFD", "\t");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void germanHasItsUmlauts(String bundle) throws IOException {
        List<String> spelt = new ArrayList<>();
        Properties german = texts(bundle, "_de");
        for (String key : german.stringPropertyNames()) {
            Matcher found = SPELT_OUT.matcher(german.getProperty(key));
            if (found.find() && !key.contains(".key.")) spelt.add(key + ": " + found.group());
        }

        assertThat(spelt).isEmpty();
    }

    private static SortedSet<String> arguments(String text) {
        SortedSet<String> arguments = new TreeSet<>();
        Matcher found = ARGUMENT.matcher(text);
        while (found.find()) arguments.add(found.group(1));
        return arguments;
    }

    private static Path file(String bundle, String language) {
        return FOLDER.resolve(bundle + language + ".properties");
    }

    private static Properties texts(String bundle, String language) throws IOException {
        Properties texts = new Properties();
        try (Reader in = Files.newBufferedReader(file(bundle, language))) {
            texts.load(in);
        }
        return texts;
    }
}
