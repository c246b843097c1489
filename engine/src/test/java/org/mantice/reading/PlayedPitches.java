package org.mantice.reading;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.performance.TrebleMoment;
import org.mantice.tune.Tune;

/** The pitches of a tune in the order they are struck: what is struck together in ascending order. */
final class PlayedPitches {
    private PlayedPitches() {}

    /** As our performance has them, grace notes apart. */
    static List<List<Integer>> of(Tune tune) {
        List<List<Integer>> struck = new ArrayList<>();
        for (TrebleMoment moment : Performer.perform(
                        tune, SettingsBuilder.of(tune).timesThrough(1).build())
                .treble()) {
            List<Integer> pitches = moment.notes().stream()
                    .filter(note -> !note.held())
                    .map(note -> note.midi())
                    .sorted()
                    .distinct()
                    .toList();
            if (moment.graceIndex() == 0 && !pitches.isEmpty()) struck.add(pitches);
        }
        return struck;
    }

    /** As a MIDI file has them in its first track with notes, the melody. */
    static List<List<Integer>> of(Path midi) throws IOException, InvalidMidiDataException {
        Map<Long, TreeSet<Integer>> byTick = new TreeMap<>();
        for (Track track : MidiSystem.getSequence(midi.toFile()).getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                MidiEvent event = track.get(i);
                if (event.getMessage() instanceof ShortMessage message
                        && message.getCommand() == ShortMessage.NOTE_ON
                        && message.getData2() > 0)
                    byTick.computeIfAbsent(event.getTick(), tick -> new TreeSet<>())
                            .add(message.getData1());
            }
            if (!byTick.isEmpty()) break;
        }
        return byTick.values().stream().map(List::copyOf).toList();
    }

    static String text(List<List<Integer>> struck) {
        return struck.stream()
                .map(pitches -> pitches.stream().map(String::valueOf).collect(Collectors.joining("+")))
                .collect(Collectors.joining(" "));
    }

    /** The first 16 hexadecimal digits of the SHA-256 of the text. */
    static String fingerprint(List<List<Integer>> struck) {
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(text(struck).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
