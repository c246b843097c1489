package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.mantice.reading.midi.MidiFile;
import org.mantice.reading.midi.MidiMeta;
import org.mantice.reading.midi.MidiTrack;

/** The signs of all tracks of a MIDI file by kind, in order of time. */
final class MidiSigns {
    private final List<MidiMeta> all = new ArrayList<>();
    private final List<MidiMeta.Syllable> syllables;

    MidiSigns(MidiFile file) {
        file.tracks().forEach(track -> all.addAll(track.metas()));
        all.sort(Comparator.comparingLong(MidiMeta::tick));
        syllables = sung(file);
    }

    <T extends MidiMeta> List<T> of(Class<T> kind) {
        return all.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Those of the track that has the most; plain text counts only where a track marks lines or its head as songs do. */
    List<MidiMeta.Syllable> syllables() {
        return syllables;
    }

    private static List<MidiMeta.Syllable> sung(MidiFile file) {
        List<MidiMeta.Syllable> most = List.of();
        for (MidiTrack track : file.tracks()) {
            List<MidiMeta.Syllable> lyrics = ofKind(track, false);
            if (lyrics.size() > most.size()) most = lyrics;
        }
        if (!most.isEmpty()) return most;
        for (MidiTrack track : file.tracks()) {
            List<MidiMeta.Syllable> texts = ofKind(track, true);
            boolean song = texts.stream().anyMatch(text -> text.text().matches("(?s)[@\\\\/].*"));
            List<MidiMeta.Syllable> words =
                    texts.stream().filter(text -> !text.text().startsWith("@")).toList();
            if (song && words.size() > most.size()) most = words;
        }
        return most;
    }

    private static List<MidiMeta.Syllable> ofKind(MidiTrack track, boolean plain) {
        return track.metas().stream()
                .filter(MidiMeta.Syllable.class::isInstance)
                .map(MidiMeta.Syllable.class::cast)
                .filter(syllable -> syllable.plain() == plain)
                .toList();
    }
}
