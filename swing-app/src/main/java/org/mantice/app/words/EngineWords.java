package org.mantice.app.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.mantice.plan.BellowsPlan;

/**
 * The stable English forms in which the engine names places, buttons, notes, locks and reasons, put into the player's
 * language. What has none of these forms stays as it is.
 */
final class EngineWords {
    private static final Pattern PASS = Pattern.compile("pass (\\d+)(?:, (.+))?");
    private static final Pattern BEAT = Pattern.compile("measure ([^,]+), beat (\\d+(?:\\+\\d+/\\d+)?)");
    private static final Pattern OFFSET = Pattern.compile("written measure (\\d+), offset (-?\\d+(?:/\\d+)?)");
    private static final Pattern BUTTON =
            Pattern.compile("([A-G](?:bb?|##?)?) (counterbass|bass|major|minor|seventh|diminished)");
    private static final Pattern LOCK = Pattern.compile("(.+?) at (.+?)(?: in pass (\\d+))?");
    private static final Pattern WHOLE_PASS = Pattern.compile("(register|octave) (\\S+)(?: in pass (\\d+))?");
    private static final Pattern FINGER = Pattern.compile("finger (\\d) on note (\\d+)");
    private static final Pattern NOTE = Pattern.compile("\\b([A-G])(?:(bb?)(?![a-z])|(##?))");
    private static final Pattern KEYS = Pattern.compile("[A-G](?:bb?|##?)?-?\\d*(?:\\+[A-G](?:bb?|##?)?-?\\d*)*");
    private static final Pattern KEY_AT = Pattern.compile("([A-G]#?-?\\d+) \\((.+?)(?: and (\\d+) more)?\\)");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d+(?:\\.(\\d+))?");
    private static final Pattern FINGERS = Pattern.compile("\\[(\\d(?:, \\d)*)]");

    /** A part of a phrase that differs from case to case: a quotation, a number, a row of numbers. */
    private static final Pattern VARYING = Pattern.compile("\"([^\"]*)\"|-?\\d+(?:[/.]\\d+)?(?:, \\d+)*");

    /** What stands between the items of a list, the outermost first. */
    private static final List<String> SEPARATORS = List.of("; and ", "; ", " and ", "(?<=\\)), ", ", ");

    private final Words words;

    EngineWords(Words words) {
        this.words = words;
    }

    /** "pass 1, measure 3, beat 2", "pass 1", "measure 3, beat 2". */
    String place(String english) {
        return known(english).orElse(english);
    }

    private Optional<String> known(String place) {
        Matcher pass = PASS.matcher(place);
        if (!pass.matches()) return written(place);
        String number = words.text("music.pass", pass.group(1));
        return pass.group(2) == null
                ? Optional.of(number)
                : written(pass.group(2)).map(written -> words.text("music.place", number, written));
    }

    private Optional<String> written(String place) {
        Matcher beat = BEAT.matcher(place);
        if (beat.matches()) return Optional.of(words.text("music.measure-beat", beat.group(1), beat.group(2)));
        Matcher offset = OFFSET.matcher(place);
        return offset.matches()
                ? Optional.of(words.text("music.measure-offset", offset.group(1), offset.group(2)))
                : Optional.empty();
    }

    /** "C bass + C major". */
    String buttons(String english) {
        return Arrays.stream(english.split(" \\+ "))
                .map(name -> button(name).orElse(name))
                .collect(Collectors.joining(" + "));
    }

    private Optional<String> button(String english) {
        Matcher parts = BUTTON.matcher(english);
        if (!parts.matches()) return Optional.empty();
        String note = signs(parts.group(1));
        return Optional.of(
                switch (parts.group(2)) {
                    case "counterbass" -> words.text("music.button.counterbass", note);
                    case "bass" -> words.text("music.button.bass", note);
                    case "major" -> words.text("music.button.major", note);
                    case "minor" -> words.text("music.button.minor", note);
                    case "seventh" -> words.text("music.button.seventh", note);
                    default -> words.text("music.button.diminished", note);
                });
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
        return text("music.register." + slug(english)).orElse(english);
    }

    /** A lock as the engine's messages name it. */
    Optional<String> lock(String english) {
        Matcher whole = WHOLE_PASS.matcher(english);
        if (whole.matches()) {
            boolean register = whole.group(1).equals("register");
            if (!register && !whole.group(2).matches("-?\\d+")) return Optional.empty();
            String what = register
                    ? words.text("music.lock.register", register(whole.group(2)))
                    : octave(Integer.parseInt(whole.group(2)));
            return Optional.of(inPass(what, whole.group(3)));
        }
        Matcher placed = LOCK.matcher(english);
        if (!placed.matches()) return Optional.empty();
        return decided(placed.group(1)).flatMap(what -> written(placed.group(2))
                .map(place -> inPass(words.text("music.lock.at", what, place), placed.group(3))));
    }

    private String inPass(String what, String pass) {
        return pass == null ? what : words.text("music.lock.in-pass", what, pass);
    }

    private Optional<String> decided(String english) {
        if (english.equals("a turn") || english.equals("no turn")) return Optional.of(turn(english));
        if (isButtons(english)) return Optional.of(buttons(english));
        Matcher finger = FINGER.matcher(english);
        if (!finger.matches()) return Optional.empty();
        return Optional.of(
                finger.group(2).equals("1")
                        ? words.text("music.finger", finger.group(1))
                        : words.text("music.finger-on-note", finger.group(1), finger.group(2)));
    }

    private static boolean isButtons(String english) {
        return Arrays.stream(english.split(" \\+ "))
                .allMatch(name -> BUTTON.matcher(name).matches());
    }

    /** What a sentence or a fact speaks of: one of the forms above, or several of them in a row. */
    String said(String english) {
        return row(english).orElse(english);
    }

    private Optional<String> row(String english) {
        Optional<String> one = item(english);
        if (one.isPresent()) return one;
        for (String separator : SEPARATORS) {
            List<String> parts = List.of(english.split(separator));
            if (parts.size() < 2) continue;
            List<String> said = new ArrayList<>();
            for (String part : parts) row(part).ifPresent(said::add);
            if (said.size() == parts.size()) return Optional.of(joined(separator, said));
        }
        return Optional.empty();
    }

    private String joined(String separator, List<String> said) {
        if (!separator.contains("and")) return String.join(separator.equals("; ") ? "; " : ", ", said);
        String last = said.get(said.size() - 1);
        String before = String.join(", ", said.subList(0, said.size() - 1));
        return words.text("music.list", before, last);
    }

    private Optional<String> item(String english) {
        if (isButtons(english)) return Optional.of(buttons(english));
        if (KEYS.matcher(english).matches()) return Optional.of(signs(english));
        if (DECIMAL.matcher(english).matches()) return Optional.of(number(english));
        Matcher fingers = FINGERS.matcher(english);
        if (fingers.matches()) return Optional.of(fingers.group(1));
        Matcher key = KEY_AT.matcher(english);
        if (key.matches() && known(key.group(2)).isPresent()) return Optional.of(keyAt(key));
        return known(english)
                .or(() -> lock(english))
                .or(() -> phrase(english))
                .or(() -> text("music.register." + slug(english)));
    }

    private String keyAt(Matcher key) {
        String note = signs(key.group(1));
        String place = place(key.group(2));
        return key.group(3) == null
                ? words.text("music.key-at", note, place)
                : words.text("music.key-at-and-more", note, place, key.group(3));
    }

    private String number(String english) {
        return words.locale().equals(Locale.GERMAN) ? english.replace('.', ',') : english;
    }

    /** One of the fixed phrases that the engine puts into its sentences, with whatever varies in it. */
    private Optional<String> phrase(String english) {
        List<String> varying = new ArrayList<>();
        Matcher found = VARYING.matcher(english);
        while (found.find()) varying.add(found.group(1) == null ? number(found.group()) : found.group(1));
        String key = "music.said." + slug(VARYING.matcher(english).replaceAll("N"));
        return text(key, varying.toArray());
    }

    private Optional<String> text(String key, Object... arguments) {
        return words.has(key) ? Optional.of(words.text(key, arguments)) : Optional.empty();
    }

    private static String slug(String english) {
        return english.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    }

    /** Phrases with commas between them, as what a place to turn offers. */
    String phrases(String english) {
        return Arrays.stream(english.split(", ")).map(this::said).collect(Collectors.joining(", "));
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
