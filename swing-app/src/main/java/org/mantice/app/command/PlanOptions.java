package org.mantice.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.Planner;
import org.mantice.app.files.Profiles;
import org.mantice.instrument.Accordion;
import org.mantice.layer.RuleBook;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.ChordsPlayed.Alternates;
import org.mantice.performance.Settings;
import org.mantice.performance.SettingsBuilder;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.tune.Loudness;
import org.mantice.tune.Tune;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What every verb that plans may be told. */
final class PlanOptions {
    @Option(
            names = "--accordion",
            paramLabel = "PRESET|FILE",
            defaultValue = "full-41-key-120-bass",
            description = "preset or *.accordion.json (${DEFAULT-VALUE})")
    private String accordion;

    @Option(
            names = "--player",
            paramLabel = "PRESET|FILE",
            defaultValue = "medium-hand",
            description = "preset or *.player.json (${DEFAULT-VALUE})")
    private String player;

    @Option(
            names = "--tempo",
            paramLabel = "BPM",
            description = "felt beats a minute at the start: quarters in 3/4, dotted quarters in 6/8")
    private Integer tempo;

    @Option(names = "--times", paramLabel = "N", description = "times through the whole tune, 1 to 20")
    private Integer times;

    @Option(names = "--transpose", paramLabel = "SEMITONES", description = "-11 to 11")
    private Integer transpose;

    @Option(names = "--loudness", paramLabel = "ppp..fff", description = "where nothing is written")
    private String loudness;

    @Option(
            names = "--alternates",
            paramLabel = "WHEN",
            description = "when the second of two chords at one place is played: later (from the second pass on), "
                    + "never, always; later if nothing is said")
    private String alternates;

    @Option(names = "--leave-optional", description = "leave out chords in brackets: the chord before goes on")
    private boolean leaveOptional;

    @Option(
            names = "--packs",
            paramLabel = "DIR",
            description = "folder with jars of more rules; code in a jar is code")
    private Path packs;

    @Option(
            names = "--without",
            paramLabel = "RULE",
            description = "go on without this rule, as if its pack did not have it; may be repeated")
    private List<String> without = new ArrayList<>();

    @Option(
            names = "--weight",
            paramLabel = "RULE=PERMILLE",
            description = "how much a rule counts against its default of 1000; may be repeated")
    private List<String> weights = new ArrayList<>();

    @Option(
            names = "--lock",
            paramLabel = "WHAT",
            description = "a decision that every plan keeps: register=ID, octave=N, turn@MEASURE:BEAT=yes|no, "
                    + "buttons@MEASURE:BEAT=C bass+C major, "
                    + "finger@MEASURE:BEAT=1..5; pass2: before it limits it to pass 2; may be repeated")
    private List<String> locks = new ArrayList<>();

    @Mixin
    private Proposing proposing = new Proposing();

    @Option(
            names = "--part",
            paramLabel = "PART",
            description = "the part with the melody: its id, name or number, instead of the one chosen by rule")
    private String part;

    /** With chords proposed, if that is wanted and the tune has none. */
    Proposing.Proposed proposed(Tune tune) {
        return proposing.of(tune);
    }

    ReadOptions reading() {
        return part().filter(name -> !name.isBlank()).map(ReadOptions::ofPart).orElse(ReadOptions.DEFAULT);
    }

    @Mixin
    private LeftHandOptions leftHand = new LeftHandOptions();

    Optional<String> part() {
        return Optional.ofNullable(part);
    }

    List<String> locks() {
        return locks;
    }

    Accordion accordion() {
        return Profiles.accordion(accordion);
    }

    Player player() {
        Player given = Profiles.player(player);
        Taste taste = given.taste();
        for (String weight : weights) {
            int equals = weight.indexOf('=');
            if (equals < 1 || !weight.substring(equals + 1).matches("\\d{1,6}"))
                throw new IllegalArgumentException(
                        "weight is " + weight + "; allowed: RULE=PERMILLE, as in variation.growing=500");
            taste = taste.with(weight.substring(0, equals), Integer.parseInt(weight.substring(equals + 1)));
        }
        return new Player(
                given.id(),
                given.name(),
                given.handSpanTenths(),
                given.bassMethod(),
                given.jumps(),
                given.mayTurnInHeldNote(),
                taste);
    }

    /** @throws IllegalArgumentException if what the call asks for is wrong for every tune */
    void check(Packs found) {
        accordion();
        player();
        RuleBook book = planner(found).rules();
        List<String> known = book.entries().stream().map(RuleBook.Entry::id).toList();
        for (String weight : weights) {
            String rule = weight.substring(0, weight.indexOf('='));
            if (!known.contains(rule))
                throw new IllegalArgumentException(
                        "rule in weight " + weight + " is " + rule + "; allowed: " + String.join(", ", known));
        }
        for (String lock : locks) LockWords.check(lock);
        leftHand.check();
        inRange("tempo", tempo, 5, 1_000);
        inRange("times", times, 1, 20);
        inRange("transpose", transpose, -11, 11);
        chosenLoudness();
        chords();
        if (part != null && part.isBlank())
            throw new IllegalArgumentException("part is blank; allowed: an id, a name or a number from 1");
    }

    private static void inRange(String name, Integer value, int least, int most) {
        if (value != null && (value < least || value > most))
            throw new IllegalArgumentException(name + " is " + value + "; allowed: " + least + " to " + most);
    }

    private Optional<Loudness> chosenLoudness() {
        return Optional.ofNullable(loudness).map(mark -> Loudness.ofMark(mark)
                .orElseThrow(() -> new IllegalArgumentException(
                        "loudness is " + mark + "; allowed: ppp, pp, p, mp, mf, f, ff, fff")));
    }

    private ChordsPlayed chords() {
        Alternates when = alternates == null
                ? ChordsPlayed.USUAL.alternates()
                : switch (alternates) {
                    case "later" -> Alternates.LATER_PASSES;
                    case "never" -> Alternates.NEVER;
                    case "always" -> Alternates.ALWAYS;
                    default ->
                        throw new IllegalArgumentException(
                                "alternates is " + alternates + "; allowed: later, never, always");
                };
        return new ChordsPlayed(when, !leaveOptional);
    }

    Packs foundPacks() {
        return Profiles.packs(Optional.ofNullable(packs));
    }

    Planner planner(Packs found) {
        RuleBook book = RuleBook.of(found.providers());
        for (String rule : without) book = book.without(rule);
        return new Planner(book);
    }

    Settings settings(Tune tune) {
        SettingsBuilder settings = SettingsBuilder.of(tune);
        if (tempo != null) settings.beatsPerMinute(tempo);
        if (times != null) settings.timesThrough(times);
        if (transpose != null) settings.transposition(transpose);
        chosenLoudness().ifPresent(settings::loudness);
        settings.chords(chords());
        settings.leftHand(leftHand.chosen(tune));
        return settings.build();
    }
}
