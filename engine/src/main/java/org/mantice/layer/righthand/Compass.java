package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.rule.HandPlaces;

/** Whether the keyboard and the hand have what the music asks for, and if not, what would help. */
final class Compass {
    private static final int MOST_KEYS = 5;
    private static final int PLACES_NAMED = 5;

    private Compass() {}

    static List<Obstacle> obstacles(HandMusic music, TrebleKeyboard keyboard) {
        List<Obstacle> obstacles = new ArrayList<>();
        offKeyboard(music, keyboard).ifPresent(obstacles::add);
        beyondHand(music).ifPresent(obstacles::add);
        return obstacles;
    }

    private static Optional<Obstacle> offKeyboard(HandMusic music, TrebleKeyboard keyboard) {
        TreeMap<Integer, List<String>> missing = new TreeMap<>();
        int lowest = Integer.MAX_VALUE;
        int highest = Integer.MIN_VALUE;
        TreeSet<Integer> passes = new TreeSet<>();
        for (int index = 0; index < music.size(); index++)
            for (int key : music.moment(index).keys()) {
                lowest = Math.min(lowest, key);
                highest = Math.max(highest, key);
                if (keyboard.hasKey(key)) continue;
                missing.computeIfAbsent(key, none -> new ArrayList<>()).add(music.words(index));
                passes.add(music.pass(index));
            }
        if (missing.isEmpty()) return Optional.empty();
        String notes = missing.entrySet().stream()
                .map(note ->
                        HandPlaces.name(note.getKey()) + " (" + note.getValue().get(0)
                                + (note.getValue().size() > 1
                                        ? " and " + (note.getValue().size() - 1) + " more"
                                        : "") + ")")
                .collect(Collectors.joining(", "));
        List<Sentence> remedies = new ArrayList<>();
        octave(music, keyboard, passes).ifPresent(remedies::add);
        key(lowest, highest, keyboard).ifPresent(remedies::add);
        remedies.add(Sentence.of(
                "take-instrument-with-keys",
                "Take an instrument whose right hand has the keys {0} to {1}.",
                HandPlaces.name(lowest),
                HandPlaces.name(highest)));
        return Optional.of(new Obstacle(
                "note-off-keyboard",
                Sentence.of(
                        "keyboard-lacks",
                        "The keyboard goes from {0} to {1} and lacks {2}.",
                        HandPlaces.name(keyboard.lowestMidi()),
                        HandPlaces.name(keyboard.highestMidi()),
                        notes),
                remedies));
    }

    /** The nearest octave in which every pass that lacks a key fits. */
    private static Optional<Sentence> octave(HandMusic music, TrebleKeyboard keyboard, SortedSet<Integer> passes) {
        int lowest = Integer.MAX_VALUE;
        int highest = Integer.MIN_VALUE;
        for (int index = 0; index < music.size(); index++)
            if (passes.contains(music.pass(index))) {
                List<Integer> keys = music.moment(index).keys();
                lowest = Math.min(lowest, keys.get(0));
                highest = Math.max(highest, keys.get(keys.size() - 1));
            }
        for (int octaves : new int[] {1, -1, 2, -2, 3, -3})
            if (keyboard.hasKey(lowest + 12 * octaves) && keyboard.hasKey(highest + 12 * octaves))
                return Optional.of(Sentence.of(
                        octaves > 0 ? "play-pass-higher" : "play-pass-lower",
                        octaves > 0 ? "Play pass {0} {1} higher." : "Play pass {0} {1} lower.",
                        passes.stream().map(String::valueOf).collect(Collectors.joining(" and ")),
                        Math.abs(octaves) == 1 ? "1 octave" : Math.abs(octaves) + " octaves"));
        return Optional.empty();
    }

    private static Optional<Sentence> key(int lowest, int highest, TrebleKeyboard keyboard) {
        for (int semitones = 1; semitones <= 11; semitones++)
            for (int signed : new int[] {semitones, -semitones})
                if (keyboard.hasKey(lowest + signed) && keyboard.hasKey(highest + signed))
                    return Optional.of(Sentence.of(
                            signed > 0 ? "transpose-up" : "transpose-down",
                            signed > 0 ? "Transpose by {0} up." : "Transpose by {0} down.",
                            semitones == 1 ? "1 semitone" : semitones + " semitones"));
        return Optional.empty();
    }

    private static Optional<Obstacle> beyondHand(HandMusic music) {
        List<String> places = new ArrayList<>();
        for (int index = 0; index < music.size(); index++)
            if (music.moment(index).keys().size() > MOST_KEYS) places.add(music.words(index));
        if (places.isEmpty()) return Optional.empty();
        return Optional.of(Obstacle.of(
                Sentence.of(
                        "more-keys-than-fingers",
                        "More than five keys at once: {0}.",
                        String.join("; ", places.subList(0, Math.min(PLACES_NAMED, places.size())))
                                + (places.size() > PLACES_NAMED
                                        ? "; and " + (places.size() - PLACES_NAMED) + " more"
                                        : "")),
                List.of(Sentence.of("leave-out-inner-notes", "Leave out inner notes of these chords."))));
    }
}
