package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.mantice.tune.ChordKind;
import org.mantice.tune.Mode;

/**
 * The chords of a mode. Major and minor are measured; the other modes borrow the weights of the chord that does the same
 * work there (in Mixolydian the major chord on the seventh is the dominant, in Phrygian that on the second): an estimate.
 */
record Vocabulary(List<Harmony> chords, HarmonyTable table) {
    private static final Map<Mode, List<String>> BORROWED = Map.of(
            Mode.MIXOLYDIAN,
            List.of("I 0 major I", "bVII 10 major V", "v 7 minor v", "IV 5 major IV", "ii 2 minor ii", "vi 9 minor vi"),
            Mode.LYDIAN,
            List.of(
                    "I 0 major I",
                    "V 7 major V",
                    "II 2 major IV applied",
                    "vi 9 minor vi",
                    "iii 4 minor iii",
                    "vii 11 minor v"),
            Mode.PHRYGIAN,
            List.of(
                    "i 0 minor i",
                    "bII 1 major V",
                    "bvii 10 minor v",
                    "iv 5 minor iv",
                    "bIII 3 major III applied",
                    "bVI 8 major VI"),
            Mode.LOCRIAN,
            List.of(
                    "i0 0 diminished i",
                    "bII 1 major V",
                    "bvii 10 minor v",
                    "iv 5 minor iv",
                    "biii 3 minor III",
                    "bVI 8 major VI",
                    "bV 6 major VII"));

    private static final Map<Mode, Vocabulary> ALL =
            Stream.of(Mode.values()).collect(Collectors.toUnmodifiableMap(mode -> mode, Vocabulary::make));

    static Vocabulary of(Mode mode) {
        return Objects.requireNonNull(ALL.get(mode));
    }

    private static Vocabulary make(Mode mode) {
        HarmonyTable table =
                switch (mode) {
                    case MAJOR, IONIAN, NONE, LYDIAN, MIXOLYDIAN -> HarmonyTable.MAJOR;
                    case MINOR, AEOLIAN, DORIAN, PHRYGIAN, LOCRIAN -> HarmonyTable.MINOR;
                };
        List<Harmony> chords = new ArrayList<>();
        for (String line : BORROWED.getOrDefault(mode, table.chords())) chords.add(harmony(line.split(" "), table));
        return new Vocabulary(List.copyOf(chords), table);
    }

    private static Harmony harmony(String[] words, HarmonyTable table) {
        ChordKind kind = ChordKind.ofMusicXml(words[2]).orElseThrow();
        return new Harmony(words[0], Integer.parseInt(words[1]), kind, table.role(words[3]), words.length > 4);
    }
}
