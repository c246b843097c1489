package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Sorts the notes of a measure into voices. A voice belongs to the staff that holds most of its notes, so that a note
 * written on the other staff for once stays in its voice.
 */
final class VoicePicker {
    /** A voice at home on a staff; lower numbers first, then names. */
    record Voice(int staff, String name) implements Comparable<Voice> {
        private static final Comparator<Voice> ORDER = Comparator.comparingInt(Voice::staff)
                .thenComparingInt(voice -> Numbers.integer(voice.name, Integer.MAX_VALUE))
                .thenComparing(Voice::name);

        @Override
        public int compareTo(Voice other) {
            return ORDER.compare(this, other);
        }
    }

    private final Map<Voice, List<ScoreNote>> voices = new TreeMap<>();

    VoicePicker(ScoreMeasure measure) {
        Map<String, Map<Integer, Integer>> counts = new TreeMap<>();
        for (ScoreNote note : measure.notes()) {
            int weight = note.isMelodic() ? 1000 : 1;
            counts.computeIfAbsent(key(note), key -> new TreeMap<>()).merge(note.staff(), weight, Integer::sum);
        }
        for (ScoreNote note : measure.notes()) {
            Voice voice = new Voice(home(counts.getOrDefault(key(note), Map.of())), note.voice());
            voices.computeIfAbsent(voice, key -> new ArrayList<>()).add(note);
        }
    }

    private static String key(ScoreNote note) {
        return note.run() + " " + note.voice();
    }

    private static int home(Map<Integer, Integer> counts) {
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse(1);
    }

    /** The first voice of a staff with pitched notes, grace notes apart; else its first voice, if any. */
    Optional<Voice> first(int staff) {
        List<Voice> own =
                voices.keySet().stream().filter(voice -> voice.staff() == staff).toList();
        Optional<Voice> withNotes = own.stream().filter(this::hasNotes).findFirst();
        return withNotes.or(() -> own.stream().findFirst());
    }

    private boolean hasNotes(Voice voice) {
        return notes(voice).stream().anyMatch(note -> note.isMelodic() && !note.isGrace());
    }

    /** Home staves of the voices that have pitched notes. */
    IntStream stavesWithNotes() {
        return voices.keySet().stream().filter(this::hasNotes).mapToInt(Voice::staff);
    }

    /** Notes of a voice in the order of the file. */
    List<ScoreNote> notes(Voice voice) {
        return voices.getOrDefault(voice, List.of());
    }

    /** All voices, top staff first. */
    List<Voice> voices() {
        return List.copyOf(voices.keySet());
    }
}
