package org.mantice.app.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Decision;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.reading.Skipped;
import org.mantice.rule.GiveWay;
import org.mantice.rule.HandMove;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.RuleSet;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mode;
import org.mantice.tune.NoteName;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/**
 * Places, decisions, costs and troubles in the player's language. Notes keep the international letters of chord symbols
 * in every language, with ♯ and ♭: B is the note below C, B♭ the one below that, so that the words agree with the chord
 * symbols on the sheet.
 */
public final class MusicWords {
    private final Words words;
    private final EngineWords engine;
    private final ProblemWords problems;

    public MusicWords(Words words) {
        this.words = words;
        this.engine = new EngineWords(words);
        this.problems = new ProblemWords(words, engine);
    }

    /** As "pass 1, measure 3, beat 2". @param measure index of the played measure */
    public String place(Performance performance, int measure, WrittenPlace place) {
        return engine.place(Places.words(performance, performance.measures().get(measure), place));
    }

    /** As "measure 3, beat 2", whatever the pass. */
    public String place(Tune tune, WrittenPlace place) {
        return engine.place(Places.words(tune, place));
    }

    /** The place of an explanation's leaf, which the engine gives in English in one stable form. */
    public String place(String engineWords) {
        return engine.place(engineWords);
    }

    public String kind(Decision.Kind kind) {
        return words.of("music", kind);
    }

    /** A decision's value, as "out", "3", "C bass + C major", the name of a register switch. */
    public String value(Decision.Kind kind, String value, Accordion accordion) {
        return switch (kind) {
            case REGISTER -> registerAndOctave(value, accordion);
            case OCTAVE -> octave(Integer.parseInt(value));
            case BUTTONS -> engine.buttons(value);
            case TURN -> engine.turn(value);
            case FINGER -> words.text("music.finger", value);
            case HAND_PLACE -> words.text("music.thumb-at", EngineWords.whiteKey(Integer.parseInt(value)));
        };
    }

    /** A choice's value names the octave too; an octave as written goes without saying. */
    private String registerAndOctave(String value, Accordion accordion) {
        int comma = value.indexOf(", octave ");
        if (comma < 0) return register(value, accordion);
        String name = register(value.substring(0, comma), accordion);
        int octave = Integer.parseInt(value.substring(comma + ", octave ".length()));
        return octave == 0 ? name : words.text("music.and", name, octave(octave));
    }

    /** The name of a switch; its id if the accordion has no such switch. */
    public String register(String switchId, Accordion accordion) {
        return accordion.treble().switches().stream()
                .filter(register -> register.id().equals(switchId))
                .map(this::register)
                .findFirst()
                .orElse(switchId);
    }

    /** A name that the maker or player gave stays as it is; the usual names are put into the language. */
    public String register(RegisterSwitch register) {
        return engine.register(register.name());
    }

    /** @param octaves up from the written melody */
    public String octave(int octaves) {
        return engine.octave(octaves);
    }

    public String direction(BellowsPlan.Direction direction) {
        return words.of("music", direction);
    }

    public String buttons(Collection<BassButton> buttons) {
        return buttons.stream().map(button -> engine.buttons(button.toString())).collect(Collectors.joining(" + "));
    }

    public String note(NoteName note) {
        return EngineWords.signs(note.toString());
    }

    /** A key of the keyboard, as "F♯4"; C4 is the middle C. */
    public String note(int midi) {
        return EngineWords.signs(HandPlaces.name(midi));
    }

    /** Pitch classes, as "G, B". */
    public String tones(Collection<Integer> pitchClasses) {
        return pitchClasses.stream()
                .map(pitchClass -> EngineWords.signs(HandPlaces.name(pitchClass).replaceAll("-?\\d", "")))
                .collect(Collectors.joining(", "));
    }

    /** As "G major"; where the source names no mode, its sharps or flats. */
    public String key(Key key) {
        if (key.mode() == Mode.NONE)
            return key.fifths() < 0
                    ? words.text("music.flats", -key.fifths())
                    : words.text("music.sharps", key.fifths());
        String tonic = note(key.tonic());
        boolean small = key.mode() == Mode.MINOR && words.locale().equals(Locale.GERMAN);
        return words.text("music.key", small ? tonic.toLowerCase(Locale.ROOT) : tonic, words.of("music", key.mode()));
    }

    public String loudness(Loudness loudness) {
        return words.of("music", loudness);
    }

    /** How the right hand comes to its place. */
    public String move(HandMove move) {
        return words.of("music", move);
    }

    /** How far the left hand moves. */
    public String jump(LeftHandPlan.Jump jump) {
        return words.of("music", jump);
    }

    /** What had to give way, as "turn in a slur". */
    public String gaveWay(GiveWay what) {
        return words.of("music", what);
    }

    public String ruleSet(RuleSet ruleSet) {
        return words.of("music", ruleSet);
    }

    /** The name of a preset in the language; any other accordion's own name. */
    public String name(Accordion accordion) {
        return AccordionPresets.find(accordion.id())
                .filter(preset -> preset.name().equals(accordion.name()))
                .map(preset -> words.text("music.accordion." + preset.id()))
                .orElse(accordion.name());
    }

    /** The name of a preset in the language; any other player's own name. */
    public String name(Player player) {
        return PlayerPresets.find(player.id())
                .filter(preset -> preset.name().equals(player.name()))
                .map(preset -> words.text("music.player." + preset.id()))
                .orElse(player.name());
    }

    /** A lock as "finger 3 at measure 2, beat 1 in pass 1". */
    public String lock(Lock lock, Performance performance, Accordion accordion) {
        return lock(lock, performance.tune(), accordion);
    }

    /** The same where the tune is not known as played. */
    public String lock(Lock lock, Tune tune, Accordion accordion) {
        String what;
        if (lock instanceof Lock.Register register) what = register(register.switchId(), accordion);
        else if (lock instanceof Lock.Octave octave) what = octave(octave.octave());
        else {
            String english = lock.words(place -> Places.words(tune, place)).replaceAll(" in pass \\d+$", "");
            what = engine.lock(english).orElse(english);
        }
        return lock.pass().isEmpty()
                ? words.text("music.lock.every-pass", what)
                : words.text(
                        "music.lock.in-pass", what, String.valueOf(lock.pass().getAsInt()));
    }

    public String obstacle(Obstacle obstacle) {
        return problems.obstacle(obstacle);
    }

    /** What would help, nearest first. */
    public List<String> remedies(Obstacle obstacle) {
        return problems.remedies(obstacle);
    }

    /** A remark or a remedy of the engine. */
    public String sentence(Sentence sentence) {
        return problems.sentence(sentence);
    }

    /** What the place of a turn offers: {@link BellowsPlan.Stroke#turnWords}. */
    public String turnPlace(BellowsPlan.Stroke stroke) {
        return stroke.turnWords().isEmpty() ? "" : engine.phrases(stroke.turnWords());
    }

    /** Why the buttons are not the usual ones: one of {@link LeftHandPlan.Event#substitutions}. */
    public String substitution(String reason) {
        return engine.said(reason);
    }

    /** Any failure as one sentence for the player; our own by code, others in general words. */
    public String trouble(Throwable cause) {
        return problems.trouble(cause);
    }

    /** Something of a file that the tune does not hold as written, as one line. */
    public String skipped(Skipped skipped) {
        return problems.skipped(skipped);
    }

    /** Micropoints as ordinary position changes, two decimals, as the language writes numbers. */
    public String cost(long micropoints) {
        NumberFormat format = NumberFormat.getNumberInstance(words.locale());
        format.setMinimumFractionDigits(2);
        format.setMaximumFractionDigits(2);
        return format.format(BigDecimal.valueOf(micropoints, 6).setScale(2, RoundingMode.HALF_UP));
    }
}
