package org.mantice.reading.abc;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.NoteName;
import org.mantice.tune.Step;

/**
 * A K: field (ABC 2.1, section 3.1.14).
 *
 * @param signature the key, or the nearest that a signature can show; empty where the field names no key
 * @param exact whether the signature has all accidentals of the field and no others
 * @param alters what each letter is altered by
 * @param properties clef, octave, transposition
 */
public record AbcKey(Optional<Key> signature, boolean exact, Map<Step, Integer> alters, AbcProperties properties) {
    private static final Pattern TONIC =
            Pattern.compile("([A-G])([#b\u266f\u266d]?)\\s*([A-Za-z]*)(?=[\\s^_=]|$)(.*)", Pattern.DOTALL);
    private static final Pattern ACCIDENTAL = Pattern.compile("(\\^{1,2}|_{1,2}|=)([A-Ga-g])");
    private static final Pattern ACCIDENTALS = Pattern.compile("(?:(?:\\^{1,2}|_{1,2}|=)[A-Ga-g])+");
    private static final Step[] FIFTHS = {Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B};

    public AbcKey {
        alters = Map.copyOf(alters);
    }

    /** C major, where a tune has no key. */
    public static final AbcKey C_MAJOR = of(0, Mode.MAJOR, AbcProperties.read(""));

    private static AbcKey of(int fifths, Mode mode, AbcProperties properties) {
        return new AbcKey(Optional.of(key(fifths, mode)), fifths >= -7 && fifths <= 7, alters(fifths), properties);
    }

    /** Empty if it cannot be read. */
    public static Optional<AbcKey> read(String text) {
        String plain = text.strip();
        if (plain.equals("HP") || plain.startsWith("HP ")) return Optional.of(of(0, Mode.NONE, rest(plain, 2)));
        if (plain.equals("Hp") || plain.startsWith("Hp ")) return Optional.of(of(2, Mode.NONE, rest(plain, 2)));
        if (plain.isEmpty()) return Optional.of(of(0, Mode.NONE, AbcProperties.read("")));
        if (plain.matches("none(\\s.*)?")) return Optional.of(withAccidentals(of(0, Mode.NONE, rest(plain, 4)), true));
        Matcher tonic = TONIC.matcher(plain);
        if (tonic.matches()) {
            Optional<Mode> mode = mode(tonic.group(3));
            String after = mode.isPresent() ? tonic.group(4) : tonic.group(3) + tonic.group(4);
            int fifths = new NoteName(Step.valueOf(tonic.group(1)), alter(tonic.group(2))).fifths()
                    - distance(mode.orElse(Mode.MAJOR));
            return Optional.of(withAccidentals(of(fifths, mode.orElse(Mode.MAJOR), AbcProperties.read(after)), false));
        }
        AbcProperties properties = AbcProperties.read(plain);
        if (properties.words().stream()
                .anyMatch(
                        word -> word.equals("exp") || ACCIDENTALS.matcher(word).matches()))
            return Optional.of(withAccidentals(of(0, Mode.NONE, properties), true));
        if (properties.values().isEmpty()) return Optional.empty();
        return Optional.of(new AbcKey(Optional.empty(), true, Map.of(), properties));
    }

    private static AbcProperties rest(String text, int from) {
        return AbcProperties.read(text.substring(from));
    }

    private static int alter(String sign) {
        return switch (sign) {
            case "#", "\u266f" -> 1;
            case "b", "\u266d" -> -1;
            default -> 0;
        };
    }

    private static Optional<Mode> mode(String word) {
        if (word.isEmpty() || word.equals("M")) return Optional.of(Mode.MAJOR);
        if (word.equals("m")) return Optional.of(Mode.MINOR);
        String start = word.substring(0, Math.min(3, word.length())).toLowerCase(Locale.ROOT);
        return Optional.ofNullable(
                switch (start) {
                    case "maj" -> Mode.MAJOR;
                    case "min" -> Mode.MINOR;
                    case "ion" -> Mode.IONIAN;
                    case "dor" -> Mode.DORIAN;
                    case "phr" -> Mode.PHRYGIAN;
                    case "lyd" -> Mode.LYDIAN;
                    case "mix" -> Mode.MIXOLYDIAN;
                    case "aeo" -> Mode.AEOLIAN;
                    case "loc" -> Mode.LOCRIAN;
                    default -> null;
                });
    }

    /** Fifths from the key note of the major key with the same signature. */
    private static int distance(Mode mode) {
        return new Key(0, mode).tonic().fifths();
    }

    private static Key key(int fifths, Mode mode) {
        int shown = fifths > 7 ? fifths - 12 : fifths < -7 ? fifths + 12 : fifths;
        return new Key(shown, mode);
    }

    private static Map<Step, Integer> alters(int fifths) {
        Map<Step, Integer> alters = new EnumMap<>(Step.class);
        for (int i = 0; i < FIFTHS.length; i++) alters.put(FIFTHS[i], Math.floorDiv(fifths + 6 - i, 7));
        return alters;
    }

    /** Adds the accidentals among the words, instead of those of the key where the word "exp" stands. */
    private static AbcKey withAccidentals(AbcKey plain, boolean explicit) {
        List<String> words = plain.properties.words();
        List<String> written = words.stream()
                .filter(word -> ACCIDENTALS.matcher(word).matches())
                .toList();
        boolean alone = explicit || words.contains("exp");
        if (written.isEmpty() && !alone) return plain;
        Map<Step, Integer> alters = new EnumMap<>(Step.class);
        alters.putAll(alone ? alters(0) : plain.alters);
        for (String word : written) {
            Matcher each = ACCIDENTAL.matcher(word);
            while (each.find())
                alters.put(
                        Step.valueOf(each.group(2).toUpperCase(Locale.ROOT)),
                        switch (each.group(1)) {
                            case "^" -> 1;
                            case "^^" -> 2;
                            case "_" -> -1;
                            case "__" -> -2;
                            default -> 0;
                        });
        }
        Key key = plain.signature.orElse(Key.C_MAJOR);
        for (int fifths = -7; fifths <= 7; fifths++)
            if (alters(fifths).equals(alters)) {
                Mode mode = fifths == key.fifths() ? key.mode() : Mode.NONE;
                return new AbcKey(Optional.of(new Key(fifths, mode)), true, alters, plain.properties);
            }
        return new AbcKey(Optional.of(key), false, alters, plain.properties);
    }
}
