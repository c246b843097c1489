package org.mantice.app.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.Substitution;
import org.mantice.json.JsonFileException;
import org.mantice.layer.Pricing;
import org.mantice.performance.Places;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;
import org.mantice.plugin.RuleStuckException;
import org.mantice.reading.Skipped;
import org.mantice.reading.SkippedWhat;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

class ProblemWordsTest {
    private static final Path ROOT = Path.of(System.getProperty("mantice.root", ".."));
    private static final Pattern SENTENCE = Pattern.compile(
            "(?:Sentence\\.of|\\bsentence)\\(\\s*(?:[^\"(){};]*\\?\\s*)?\"([a-z-]+)\"(?:\\s*:\\s*\"([a-z-]+)\")?"
                    + "(?:,\\s*\"([^\"]*)\"(?=\\s*[,)]))?");
    private static final Pattern TUNE_CODE = Pattern.compile("new TuneException\\(\\s*\"([A-Z_]+)\"");
    private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d)}");

    private final Words englishTexts = Words.of(Locale.ENGLISH);
    private final Words germanTexts = Words.of(Locale.GERMAN);
    private final MusicWords english = new MusicWords(englishTexts);
    private final MusicWords german = new MusicWords(germanTexts);
    private final EngineWords said = new EngineWords(germanTexts);

    @Test
    void everyReasonOfARefusedFileHasASentence() {
        for (Words texts : List.of(englishTexts, germanTexts)) {
            for (TuneReadException.Reason reason : TuneReadException.Reason.values())
                assertThat(texts.has("problems.tune." + reason))
                        .as("%s", reason)
                        .isTrue();
            for (JsonFileException.Reason reason : JsonFileException.Reason.values())
                assertThat(texts.has("problems.json." + reason))
                        .as("%s", reason)
                        .isTrue();
        }
    }

    @Test
    void everyCodeOfATuneThatCannotBePlayedHasASentence() throws IOException {
        Set<String> codes = new TreeSet<>();
        for (String source : engineSources()) {
            Matcher found = TUNE_CODE.matcher(source);
            while (found.find()) codes.add(found.group(1));
        }

        assertThat(codes).hasSizeGreaterThanOrEqualTo(3);
        for (String code : codes)
            assertThat(germanTexts.has("problems.played." + code)).as(code).isTrue();
    }

    @Test
    void everySentenceOfTheEngineIsSaidWithTheSameArguments() throws IOException {
        SortedMap<String, Optional<String>> sentences = new TreeMap<>();
        for (String source : engineSources()) {
            Matcher found = SENTENCE.matcher(source);
            while (found.find()) {
                sentences.put(found.group(1), Optional.ofNullable(found.group(3)));
                if (found.group(2) != null) sentences.put(found.group(2), Optional.empty());
            }
        }

        assertThat(sentences).hasSizeGreaterThan(30);
        assertThat(sentences.keySet()).isEqualTo(keysOf("problems.said."));
        sentences.forEach((code, template) ->
                template.ifPresent(text -> assertThat(arguments(germanTexts.text("problems.said." + code)))
                        .as(code)
                        .isEqualTo(arguments(text))));
    }

    @Test
    void everythingThatAReaderMayLeaveOutIsSaidWithTheSameArguments() {
        for (SkippedWhat what : SkippedWhat.values()) {
            String key = "problems.skipped." + what;
            for (int i = 0; i < 3; i++)
                assertThat(germanTexts.text(key).contains("{" + i + "}"))
                        .as("%s speaks of argument %d", key, i)
                        .isEqualTo(what.sentence(List.of("α0", "α1", "α2")).contains("α" + i));
        }
    }

    @Test
    void aSkippedThingSaysWhatHowOftenAndWhere() {
        Skipped trill = new Skipped(SkippedWhat.NOTE_MARK, List.of("trill-mark"), List.of("3", "7"), 2);
        Skipped meter = new Skipped(SkippedWhat.NO_METER, List.of("4/4"), List.of(), 1);

        assertThat(english.skipped(trill)).isEqualTo("left out: trill-mark (2×; measures 3, 7)");
        assertThat(german.skipped(trill)).isEqualTo("weggelassen: trill-mark (2×; Takte 3, 7)");
        assertThat(german.skipped(meter)).isEqualTo("angenommen: Taktart 4/4, nach der Länge der meisten Takte");
        assertThat(german.skipped(
                        new Skipped(SkippedWhat.ENDING_CHANGED, List.of("\"1\" had no end"), List.of("8"), 1)))
                .isEqualTo("geändert: Klammer „1“ hatte kein Ende (Takt 8)");
    }

    @Test
    void aFileThatIsMissingIsNamedWithTheReason(@TempDir Path folder) {
        Path missing = folder.resolve("nowhere.player.json");

        Throwable cause = catchThrowable(() -> PlayerFile.read(missing));

        assertThat(german.trouble(cause)).isEqualTo(missing + ": Diese Datei gibt es nicht.");
    }

    @Test
    void aDamagedFileIsNamedWithItsLine(@TempDir Path folder) throws IOException {
        Path damaged = Files.writeString(folder.resolve("waltz.musicxml"), "<score-partwise>\n<part>\n</wrong>");

        Throwable cause = catchThrowable(() -> new TuneReader().read(damaged));

        assertThat(german.trouble(cause)).startsWith(damaged + ", Zeile 3: Das XML der Datei ist beschädigt (");
        assertThat(english.trouble(cause)).startsWith(damaged + ", line 3: The XML of the file is damaged (");
    }

    @Test
    void whatIsNotOursIsSaidInGeneralWords() {
        assertThat(german.trouble(new IllegalArgumentException("plans is 0; allowed: 1 to 12")))
                .isEqualTo("Das geht nicht: plans is 0; allowed: 1 to 12");
        assertThat(german.trouble(new IllegalStateException("odd")))
                .isEqualTo("Das Programm ist gescheitert (IllegalStateException: odd).");
        assertThat(german.trouble(new NullPointerException()))
                .isEqualTo("Das Programm ist gescheitert (NullPointerException).");
        assertThat(german.trouble(new OutOfMemoryError("heap"))).startsWith("Dafür reicht der Speicher nicht");
    }

    @Test
    void aRuleThatFailsIsNamedWithPlaceAndReason() {
        PassChoice step = new PassChoice(
                1,
                1,
                AccordionPresets.get("student-26-key-24-bass")
                        .treble()
                        .switches()
                        .get(0),
                0,
                60,
                72);

        assertThat(german.trouble(catchThrowable(() -> Pricing.cost(rule(-5), step, "pass 1"))))
                .isEqualTo("Die Regel „odd.rule“ ist bei Durchgang 1 gescheitert:"
                        + " sie nannte die Kosten -5; erlaubt: 0 bis 2147483647.");
        assertThat(german.trouble(catchThrowable(() -> Pricing.cost(rule(Rule.BAN), step, "pass 1"))))
                .endsWith("sie verbietet, sagt aber nicht, wie ihre Verbote nachgeben.");
        assertThat(german.trouble(catchThrowable(() -> Pricing.withoutBan(rule(Rule.BAN), step, "pass 1"))))
                .doesNotContain("bans");
        assertThat(german.trouble(catchThrowable(() -> Pricing.reasons(rule(7), step, "pass 1"))))
                .endsWith("sie kostet 7, begründet aber 0.");
        assertThat(english.trouble(catchThrowable(() -> Pricing.cost(rule(-5), step, "pass 1"))))
                .isEqualTo("The rule “odd.rule” failed at pass 1: it gave the cost -5; allowed: 0 to 2147483647.");
    }

    @Test
    void ruleThatNeverComesBackIsNamedWithItsPack() {
        RuleStuckException stuck = new RuleStuckException("stranger.rule", "stranger", 60);

        assertThat(english.trouble(stuck))
                .isEqualTo("The rule “stranger.rule” has not come back after 60 seconds. Its pack “stranger” is off"
                        + " until the program starts again.");
        assertThat(german.trouble(stuck)).contains("„stranger.rule“", "60 Sekunden", "Paket „stranger“");
    }

    private static Rule<PassChoice> rule(long cost) {
        return new Rule<>() {
            @Override
            public RuleInfo info() {
                return RuleInfo.of("odd.rule", RuleSet.REPEAT_VARIATION, "invented");
            }

            @Override
            public Class<PassChoice> reach() {
                return PassChoice.class;
            }

            @Override
            public long cost(PassChoice choice) {
                return cost;
            }

            @Override
            public Reasons explain(PassChoice choice) {
                return Reasons.NOTHING;
            }
        };
    }

    @Test
    void aTuneThatDoesNotFitTheKeyboardIsSaidInGerman() {
        Obstacle obstacle = obstacleOn("fog-over-grebe-holm", "beginner-26-key-12-bass");

        assertThat(german.obstacle(obstacle)).startsWith("Töne ohne Taste auf diesem Akkordeon (B3 bis C6): G3, ");
        assertThat(german.remedies(obstacle))
                .hasSameSizeAs(obstacle.remedies())
                .last()
                .asString()
                .isEqualTo("Ein Akkordeon mit Tasten von G3 bis E6.");
        assertThat(english.obstacle(obstacle)).startsWith("Notes without a key on this accordion (B3 to C6): G3, ");
    }

    @Test
    void everyFormOfALockIsUnderstood() {
        Tune tune = tune("the-rusty-gate");
        WrittenPlace start = new WrittenPlace(0, MusicalTime.ZERO);
        List<Lock> locks = List.of(
                new Lock.Register(OptionalInt.of(1), "bassoon"),
                new Lock.Octave(OptionalInt.empty(), -1),
                new Lock.Turn(OptionalInt.of(2), start, true),
                new Lock.Turn(OptionalInt.empty(), start, false),
                new Lock.Buttons(OptionalInt.of(1), start, Set.of(new BassButton(BassRow.COUNTERBASS, 0))),
                new Lock.Finger(OptionalInt.of(2), start, 1, 4));
        String joined = String.join(
                " and ",
                locks.stream()
                        .map(lock -> lock.words(place -> Places.words(tune, place)))
                        .toList());

        Sentence sentence = Sentence.of("locks-contradict", "These locks contradict each other: {0}.", joined);

        assertThat(german.sentence(sentence))
                .isEqualTo(
                        "Was festgehalten ist, widerspricht sich: Register Fagott in Durchgang 1, eine Oktave tiefer,"
                                + " Balgwechsel bei Takt 1, Zählzeit 1 in Durchgang 2,"
                                + " kein Balgwechsel bei Takt 1, Zählzeit 1,"
                                + " E-Terzbass bei Takt 1, Zählzeit 1 in Durchgang 1 und"
                                + " Finger 4 auf Ton 2 bei Takt 1, Zählzeit 1 in Durchgang 2.");
    }

    @Test
    void keysWithTheirPlacesAreUnderstood() {
        assertThat(said.said("F#3 (pass 1, measure 2, beat 1 and 3 more), G3 (pass 1, measure 4, beat 2)"))
                .isEqualTo("F♯3 (Durchgang 1, Takt 2, Zählzeit 1 und 3 weitere), G3 (Durchgang 1, Takt 4, Zählzeit 2)");
        assertThat(said.said("pass 1, measure 2, beat 1; pass 1, measure 3, beat 1; and 4 more"))
                .isEqualTo("Durchgang 1, Takt 2, Zählzeit 1; Durchgang 1, Takt 3, Zählzeit 1 und 4 weitere");
    }

    @Test
    void whatIsUnknownStaysAsItIs() {
        assertThat(said.said("Grumbler and Hooter, 2 of them")).isEqualTo("Grumbler and Hooter, 2 of them");
        assertThat(said.said("")).isEmpty();
    }

    @Test
    void everySubstitutionIsSaidInGerman() {
        for (Substitution substitution : Substitution.values())
            assertThat(german.substitution(substitution.text())).isNotEqualTo(substitution.text());
    }

    @Test
    void whatAPlaceToTurnOffersIsSaidInGerman() {
        List<String> offers = Stream.of(
                        Stream.of(
                                "next time through",
                                "section",
                                "phrase mark",
                                "breath",
                                "end of a sentence",
                                "comma in the words",
                                "rest of 250 ms",
                                "before the pickup",
                                "barline after a pickup",
                                "after 8 measures of the section",
                                "inside a slur",
                                "inside a held note",
                                "under a held chord",
                                "small jump of the left hand",
                                "large jump of the left hand"),
                        Arrays.stream(TurnPlace.Strength.values())
                                .map(strength ->
                                        strength.name().toLowerCase(Locale.ROOT).replace('_', ' ')))
                .flatMap(words -> words)
                .toList();

        for (String offer : offers) assertThat(said.said(offer)).isNotEqualTo(offer);
        assertThat(said.phrases("rest of 250 ms, off beat")).isEqualTo("Pause von 250 ms, zwischen den Schlägen");
    }

    private static Obstacle obstacleOn(String tune, String accordion) {
        Tune music = tune(tune);
        Alternatives answer = new Planner(Packs.of(Optional.empty()).providers())
                .plan(new PlanRequest(
                        music,
                        AccordionPresets.get(accordion),
                        PlayerPresets.get("medium-hand"),
                        SettingsBuilder.of(music).build(),
                        List.of(),
                        1));
        return ((Alternatives.NotPlayable) answer).obstacles().get(0);
    }

    private static Tune tune(String name) {
        return new TuneReader()
                .read(ROOT.resolve("examples/tunes/" + name + ".musicxml"))
                .tune();
    }

    private static List<String> engineSources() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT.resolve("engine/src/main/java"))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("Sentence.java"))
                    .map(ProblemWordsTest::read)
                    .toList();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Set<String> keysOf(String beginning) {
        return new TreeSet<>(
                java.util.ResourceBundle.getBundle("org.mantice.app.words.problems", Locale.GERMAN).keySet().stream()
                        .filter(key -> key.startsWith(beginning))
                        .map(key -> key.substring(beginning.length()))
                        .toList());
    }

    private static SortedSet<String> arguments(String text) {
        SortedSet<String> arguments = new TreeSet<>();
        Matcher found = ARGUMENT.matcher(text);
        while (found.find()) arguments.add(found.group(1));
        return arguments;
    }
}
