package org.mantice.reading.midi;

import java.util.List;
import java.util.OptionalInt;

/**
 * A track of a file.
 *
 * @param number from 1
 * @param name as the file names the track; may be empty
 * @param notes in order
 * @param metas in order of time
 * @param damagedAt the byte of the file from which the track cannot be read on
 */
public record MidiTrack(int number, String name, List<MidiNote> notes, List<MidiMeta> metas, OptionalInt damagedAt) {
    public MidiTrack {
        notes = notes.stream().sorted(MidiNote.ORDER).toList();
        metas = List.copyOf(metas);
    }
}
