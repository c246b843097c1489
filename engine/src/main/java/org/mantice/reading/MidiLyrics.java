package org.mantice.reading;

import java.util.List;
import org.mantice.reading.midi.MidiMeta.Syllable;
import org.mantice.tune.Lyric;

/**
 * Puts the syllables of a MIDI file under the notes that begin with them. A word ends at a blank or a new line, as in the
 * recommended practice for lyrics (MIDI Manufacturers Association, RP-017), or without a hyphen where a file has neither.
 */
final class MidiLyrics {
    private final List<Syllable> syllables;
    private final ReadReport report;

    MidiLyrics(List<Syllable> syllables, ReadReport report) {
        this.syllables = syllables;
        this.report = report;
    }

    /** @param apart ticks that a syllable may lie beside its note at most */
    void addTo(List<MidiEvent> events, long apart) {
        boolean spaced = syllables.stream().anyMatch(syllable -> syllable.text().matches("(?s).*[\\s\\\\/].*"));
        int at = 0;
        for (int i = 0; i < syllables.size(); i++) {
            String text = syllables.get(i).text();
            String word = text.replaceAll("[\\s\\\\/\\p{Cntrl}]+", " ").strip();
            if (word.isEmpty()) continue;
            long tick = syllables.get(i).tick();
            while (at + 1 < events.size()
                    && Math.abs(events.get(at + 1).tick - tick) <= Math.abs(events.get(at).tick - tick)) at++;
            MidiEvent event = events.get(at);
            if (Math.abs(event.tick - tick) > apart || !event.lyrics.isEmpty()) {
                report.add(SkippedWhat.SYLLABLE);
                continue;
            }
            boolean hyphen = word.endsWith("-") && word.length() > 1;
            String next = i + 1 < syllables.size() ? syllables.get(i + 1).text() : " ";
            boolean ends = !hyphen && (!spaced || text.matches("(?s).*[\\s\\\\/]") || next.matches("(?s)[\\s\\\\/].*"));
            event.lyrics.add(new Lyric(1, hyphen ? word.substring(0, word.length() - 1) : word, ends));
        }
    }
}
