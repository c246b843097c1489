package org.mantice.reading.midi;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The notes of one channel in one track: what other files call a part.
 *
 * @param id {@code "T2"}, or {@code "T2C4"} where the track has several channels
 * @param name of the track; may be empty
 * @param notes in order, one or more
 */
public record MidiPart(String id, String name, int track, List<MidiNote> notes) {
    /** The parts of a file by track and channel. */
    public static List<MidiPart> of(MidiFile file) {
        List<MidiPart> parts = new ArrayList<>();
        for (MidiTrack track : file.tracks()) {
            Map<Integer, List<MidiNote>> channels = new TreeMap<>();
            for (MidiNote note : track.notes())
                channels.computeIfAbsent(note.channel(), key -> new ArrayList<>())
                        .add(note);
            channels.forEach((channel, notes) -> parts.add(new MidiPart(
                    "T" + track.number() + (channels.size() > 1 ? "C" + channel : ""),
                    track.name(),
                    track.number(),
                    List.copyOf(notes))));
        }
        return parts;
    }

    public boolean isDrums() {
        return notes.get(0).isDrum();
    }

    /** Mean pitch in hundredths of a semitone. */
    public long meanPitchCents() {
        return notes.stream().mapToLong(MidiNote::pitch).sum() * 100 / notes.size();
    }

    /**
     * Per mille of the notes over which another note of the part sounds: that begins with them or before, and lasts
     * through half of them or more.
     */
    public int crowdedPermille() {
        long crowded = 0;
        long[] soundsUntil = new long[128];
        int from = 0;
        while (from < notes.size()) {
            int to = from;
            while (to < notes.size() && notes.get(to).start() == notes.get(from).start()) to++;
            if (to - from > 1) crowded += to - from;
            else if (soundsPast(notes.get(from), soundsUntil)) crowded++;
            for (MidiNote note : notes.subList(from, to))
                soundsUntil[note.pitch()] = Math.max(soundsUntil[note.pitch()], note.end());
            from = to;
        }
        return (int) (crowded * 1000 / notes.size());
    }

    private static boolean soundsPast(MidiNote note, long[] soundsUntil) {
        long half = (note.start() + note.end() + 1) / 2;
        for (int pitch = 0; pitch < 128; pitch++) if (pitch != note.pitch() && soundsUntil[pitch] > half) return true;
        return false;
    }
}
