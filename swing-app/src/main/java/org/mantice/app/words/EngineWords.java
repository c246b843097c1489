package org.mantice.app.words;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.mantice.instrument.BassButton;
import org.mantice.plan.BellowsPlan;

/**
 * The stable English forms in which the engine names places, buttons, notes and locks, put into the player's language.
 * What has none of these forms stays as it is.
 */
final class EngineWords {
    private static final Pattern PASS = Pattern.compile("pass (\\d+)(?:, (.+))?");
    private static final Pattern BEAT = Pattern.compile("measure (.+), beat (\\d+(?:\\+\\d+/\\d+)?)");
    private static final Pattern OFFSET = Pattern.compile("written measure (\\d+), offset (-?\\d+(?:/\\d+)?)");
    private static final Pattern BUTTON =
            Pattern.compile("([A-G](?:bb|b|##|#)?) (counterbass|bass|major|minor|seventh|diminished)");
    private static final Pattern NOTE = Pattern.compile("\\b([A-G])(?:(bb?)(?![a-z])|(##?))");
    private static final Pattern LOCK = Pattern.compile("(.+?) at (.+?)(?: in pass (\\d+))?");
    private static final Pattern WHOLE_PASS = Pattern.compile("(register|octave) (\\S+)(?: in pass (\\d+))?");
    private static final Pattern FINGER = Pattern.compile("finger (\\d) on note (\\d+)");

    private final Words words;

    EngineWords(Words words) {
        this.words = words;
    }

    /** "pass 1, measure 3, beat 2", "pass 1", "measure 3, beat 2". */
    String place(String english) {
        Matcher pass = PASS.matcher(english);
        if (!pass.matches()) return written(english).orElse(english);
        String number = words.text("music.pass", pass.group(1));
        if (pass.group(2) == null) return number;
        return written(pass.group(2))
                .map(place -> words.text("music.place", number, place))
                .orElse(english);
    }

    private Optional<String> written(String english) {
        Matcher beat = BEAT.matcher(english);
        if (beat.matches()) return Optional.of(words.text("music.measure-beat", beat.group(1), beat.group(2)));
        Matcher offset = OFFSET.matcher(english);
        return offset.matches()
                ? Optional.of(words.text("music.measure-offset", offset.group(1), offset.group(2)))
                : Optional.empty();
    }

    /** "C bass + C major". */
    String buttons(String english) {
        return Arrays.stream(english.split(" \\+ ")).map(this::button).collect(Collectors.joining(" + "));
    }

    String button(BassButton button) {
        return button(button.toString());
    }

    private String button(String english) {
        Matcher parts = BUTTON.matcher(english);
        if (!parts.matches()) return english;
        String note = signs(parts.group(1));
        return switch (parts.group(2)) {
            case "counterbass" -> words.text("music.button.counterbass", note);
            case "bass" -> words.text("music.button.bass", note);
            case "major" -> words.text("music.button.major", note);
            case "minor" -> words.text("music.button.minor", note);
            case "seventh" -> words.text("music.button.seventh", note);
            default -> words.text("music.button.diminished", note);
        };
    }

    /** "out", "in", "turn", "no turn". */
    String turn(String english) {
        return switch (english) {
            case "out" -> words.of("music", BellowsPlan.Direction.OUT);
            case "in" -> words.of("music", BellowsPlan.Direction.IN);
            case "turn", "a turn" -> words.text("music.turn");
            case "no turn" -> words.text("music.no-turn");
            default -> english;
        };
    }

    String octave(int octaves) {
        if (octaves == 0) return words.text("music.octave.written");
        if (Math.abs(octaves) > 1) return words.text("music.octave.many", octaves);
        return octaves > 0 ? words.text("music.octave.up") : words.text("music.octave.down");
    }

    /** A register by its usual English name. */
    String register(String english) {
        String key = "music.register." + english.replaceAll("[^a-z0-9]+", "-").replaceAll("-$", "");
        return words.has(key) ? words.text(key) : english;
    }

    /** A word that the engine puts into its sentences; what is no such word stays. */
    String word(String english) {
        String key = "problems.word." + english.replaceAll("[^A-Za-z0-9]+", "-");
        return words.has(key) ? words.text(key) : english;
    }

    /** A lock as the engine's messages name it. */
    String lock(String english) {
        Matcher whole = WHOLE_PASS.matcher(english);
        if (whole.matches())
            return inPass(
                    whole.group(1).equals("register")
                            ? words.text("music.lock.register", whole.group(2))
                            : octave(Integer.parseInt(whole.group(2))),
                    whole.group(3));
        Matcher placed = LOCK.matcher(english);
        if (!placed.matches()) return english;
        return inPass(words.text("music.lock.at", decided(placed.group(1)), place(placed.group(2))), placed.group(3));
    }

    private String inPass(String what, String pass) {
        return pass == null ? what : words.text("music.lock.in-pass", what, pass);
    }

    private String decided(String english) {
        Matcher finger = FINGER.matcher(english);
        if (!finger.matches()) return buttons(turn(english));
        return finger.group(2).equals("1")
                ? words.text("music.finger", finger.group(1))
                : words.text("music.finger-on-note", finger.group(1), finger.group(2));
    }

    /** A list with semicolons of places, locks, buttons or notes. */
    String list(String english) {
        return Arrays.stream(english.split("; ")).map(this::item).collect(Collectors.joining("; "));
    }

    private String item(String english) {
        String place = place(english);
        if (!place.equals(english)) return place;
        String lock = lock(english);
        return lock.equals(english) ? signs(buttons(english)) : lock;
    }

    /** Sharps and flats of note names as signs: "F#4" is "F♯4". */
    static String signs(String text) {
        return NOTE.matcher(text)
                .replaceAll(note -> note.group(1)
                        + (note.group(2) == null
                                ? note.group(3).replace('#', '♯')
                                : note.group(2).replace('b', '♭')));
    }

    /** @param place white keys from C0 */
    static String whiteKey(int place) {
        return "CDEFGAB".charAt(Math.floorMod(place, 7)) + String.valueOf(Math.floorDiv(place, 7));
    }
}
