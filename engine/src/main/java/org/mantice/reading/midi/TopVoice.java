package org.mantice.reading.midi;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts a keyboard's notes into the melody and what lies under it. A note is under the melody if a higher one that began
 * earlier sounds on through half of it or more, if it begins more than a tenth below the highest of its chord, or, in a
 * part with much under the melody, if it lies more than a twelfth below the melody's mean. Intervals are estimates.
 *
 * @param melody in order, one or more
 * @param under in order
 */
public record TopVoice(List<MidiNote> melody, List<MidiNote> under) {
    private static final int CHORD_SEMITONES = 16;
    private static final int MEAN_SEMITONES = 19;

    /** @param together notes that begin within so many ticks begin together */
    public static TopVoice of(List<MidiNote> notes, long together) {
        List<MidiNote> melody = new ArrayList<>();
        List<MidiNote> under = new ArrayList<>();
        long[] soundsUntil = new long[128];
        int from = 0;
        while (from < notes.size()) {
            int to = from;
            int highest = 0;
            while (to < notes.size() && notes.get(to).start() - notes.get(from).start() <= together)
                highest = Math.max(highest, notes.get(to++).pitch());
            List<MidiNote> group = notes.subList(from, to);
            for (MidiNote note : group) {
                boolean low = note.pitch() < highest - CHORD_SEMITONES || isCovered(note, soundsUntil);
                (low ? under : melody).add(note);
            }
            for (MidiNote note : group) soundsUntil[note.pitch()] = Math.max(soundsUntil[note.pitch()], note.end());
            from = to;
        }
        if (under.size() * 4 > melody.size()) lower(melody, under);
        return new TopVoice(
                List.copyOf(melody), under.stream().sorted(MidiNote.ORDER).toList());
    }

    private static boolean isCovered(MidiNote note, long[] soundsUntil) {
        long half = (note.start() + note.end() + 1) / 2;
        for (int pitch = note.pitch() + 1; pitch < 128; pitch++) if (soundsUntil[pitch] > half) return true;
        return false;
    }

    private static void lower(List<MidiNote> melody, List<MidiNote> under) {
        if (melody.isEmpty()) return;
        double mean = melody.stream().mapToInt(MidiNote::pitch).average().orElseThrow();
        List<MidiNote> low = melody.stream()
                .filter(note -> note.pitch() < mean - MEAN_SEMITONES)
                .toList();
        melody.removeIf(note -> note.pitch() < mean - MEAN_SEMITONES);
        under.addAll(low);
    }
}
