package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.midi.Bar;
import org.mantice.reading.midi.Bars;
import org.mantice.reading.midi.ChordFinder;
import org.mantice.reading.midi.FoundChord;
import org.mantice.reading.midi.Grid;
import org.mantice.reading.midi.MidiFile;
import org.mantice.reading.midi.MidiMeta;
import org.mantice.reading.midi.MidiNote;
import org.mantice.reading.midi.MidiPart;
import org.mantice.reading.midi.MidiTrack;
import org.mantice.reading.midi.Quantizer;
import org.mantice.reading.midi.TopVoice;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;

/**
 * Makes a tune of a MIDI file: the melody is one part, put on a grid of beats; chord symbols are recognised from the parts
 * that accompany it, and from what lies under the melody in its own part.
 */
final class MidiTune {
    /** Notes of one chord, and a syllable and its note, may lie apart by this part of a quarter (estimate). */
    private static final int TOGETHER = 16;

    private final TuneSource source;
    private final MidiFile file;
    private final MidiSigns signs;
    private final ReadReport report = new ReadReport();

    MidiTune(TuneSource source, MidiFile file) {
        this.source = source;
        this.file = file;
        this.signs = new MidiSigns(file);
    }

    ReadTune build(ReadOptions options) {
        reportDamage();
        List<MidiPart> parts = MidiPart.of(file);
        MidiChoice chooser = new MidiChoice(source.place(), parts);
        MidiPart part = chooser.melody(
                options, signs.syllables().stream().map(MidiMeta::tick).toList());
        TopVoice voices = TopVoice.of(part.notes(), file.division() / TOGETHER);
        List<MidiPart> others = chooser.accompaniment(part);
        String title = title();
        Tune tune = new Tune(title, ScoreHeader.danceIn(List.of(title)), measures(part, voices, others));
        reportParts(parts, part, voices);
        MelodyChoice choice = new MelodyChoice(MidiChoice.info(part), 1, chooser.rule(options));
        return new ReadTune(tune, report.skipped(), chooser.infos(), choice, source.fingerprint());
    }

    private List<Measure> measures(MidiPart part, TopVoice voices, List<MidiPart> others) {
        List<MidiNote> under = new ArrayList<>(voices.under());
        others.forEach(other -> under.addAll(other.notes()));
        List<MidiNote> all = new ArrayList<>(under);
        all.addAll(voices.melody());
        long[] starts = voices.melody().stream().mapToLong(MidiNote::start).toArray();
        Bars bars = bars(part);
        MidiClock clock = new MidiClock(bars, file.division());
        Grid grid = Quantizer.grid(bars, starts, file.division());
        List<Key> keys = MidiKeys.of(bars, clock, signs.of(MidiMeta.KeySignature.class), all, report);
        Key key = keys.get(clock.barAt(clock.time(starts[0])));
        List<FoundChord> chords = ChordFinder.find(bars, grid, under, file.division(), key);
        MusicalTime begin = begin(grid, clock, starts[0], chords);
        MusicalTime end = grid.end(clock.moment(lastEnd(voices)));
        MidiMeasures measures = new MidiMeasures(bars, clock, begin, end, keys);
        reportBeginning(bars.bars().get(clock.barAt(begin)), begin);
        List<MidiEvent> events = new MidiMelody(grid, clock, report).events(voices.melody());
        new MidiLyrics(signs.syllables(), report).addTo(events, file.division() / TOGETHER * 2L);
        measures.add(events);
        measures.addChords(chords);
        new MidiTempos(bars, clock, report).addTo(measures, signs.of(MidiMeta.Tempo.class), begin);
        reportChords(part, voices, others, chords);
        new MidiGridReport(report, clock).add(grid, starts);
        return measures.measures();
    }

    private Bars bars(MidiPart melody) {
        TreeMap<Long, MidiMeta.TimeSignature> signatures = new TreeMap<>();
        for (MidiMeta.TimeSignature each : signs.of(MidiMeta.TimeSignature.class)) signatures.put(each.tick(), each);
        if (signatures.isEmpty()) report.add(SkippedWhat.METER_OF_STANDARD, "4/4");
        long last = melody.notes().stream().mapToLong(MidiNote::end).max().orElseThrow();
        return Bars.of(List.copyOf(signatures.values()), file.division(), last, ReadLimits.MEASURES)
                .orElseThrow(() -> TuneReadException.of(Reason.TOO_MANY_MEASURES, source.place(), ReadLimits.MEASURES));
    }

    private static long lastEnd(TopVoice voices) {
        return voices.melody().stream().mapToLong(MidiNote::end).max().orElseThrow();
    }

    /** The first note of the melody or, if the chords begin in an earlier bar or at its barline, their first. */
    private static MusicalTime begin(Grid grid, MidiClock clock, long first, List<FoundChord> chords) {
        MusicalTime melody = grid.onset(clock.moment(first));
        return chords.stream()
                .map(FoundChord::place)
                .findFirst()
                .map(melody::min)
                .orElse(melody);
    }

    private void reportDamage() {
        for (MidiTrack track : file.tracks())
            track.damagedAt()
                    .ifPresent(at ->
                            report.add(SkippedWhat.TRACK_DAMAGED, String.valueOf(track.number()), String.valueOf(at)));
    }

    private void reportBeginning(Bar bar, MusicalTime begin) {
        if (bar.start().isBefore(begin))
            report.add(SkippedWhat.PICKUP_ASSUMED, begin.minus(bar.start()).toString());
    }

    private void reportParts(List<MidiPart> parts, MidiPart melody, TopVoice voices) {
        voices.under().forEach(note -> report.add(SkippedWhat.NOTES_UNDER_MELODY));
        for (MidiPart part : parts) {
            if (part.equals(melody)) continue;
            SkippedWhat what = part.isDrums() ? SkippedWhat.DRUM_NOTES : SkippedWhat.OTHER_PART_NOTES;
            String label = MidiChoice.info(part).label();
            part.notes().forEach(note -> report.add(what, label));
        }
    }

    private void reportChords(MidiPart melody, TopVoice voices, List<MidiPart> others, List<FoundChord> chords) {
        List<MidiPart> sources = new ArrayList<>(others);
        if (!voices.under().isEmpty()) sources.add(0, melody);
        String labels =
                sources.stream().map(part -> MidiChoice.info(part).label()).collect(Collectors.joining(", "));
        chords.forEach(chord -> report.add(SkippedWhat.CHORDS_RECOGNISED, labels));
    }

    /** A name of the whole stands in the first track, if that has no notes or is the only one (Standard MIDI Files 1.0). */
    private String title() {
        MidiTrack first = file.tracks().get(0);
        return first.notes().isEmpty() || file.tracks().size() == 1 ? first.name() : "";
    }
}
