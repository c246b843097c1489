package org.mantice.reading;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.reading.midi.Bars;
import org.mantice.reading.midi.Beat;
import org.mantice.reading.midi.MidiMeta;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/**
 * Tempo marks of a MIDI file: at most one a beat, and only where the tempo differs by more than one part in fifty from the
 * last one shown. None stands where the file has none.
 */
final class MidiTempos {
    private static final int LEAST_CHANGE = 50;
    private final Bars bars;
    private final MidiClock clock;
    private final ReadReport report;

    MidiTempos(Bars bars, MidiClock clock, ReadReport report) {
        this.bars = bars;
        this.clock = clock;
        this.report = report;
    }

    void addTo(MidiMeasures measures, List<MidiMeta.Tempo> tempos, MusicalTime begin) {
        TreeMap<MusicalTime, Beat> beats = new TreeMap<>();
        for (Beat beat : bars.beats()) beats.put(beat.start(), beat);
        TreeMap<MusicalTime, Integer> perBeat = new TreeMap<>();
        for (MidiMeta.Tempo tempo : tempos) {
            Map.Entry<MusicalTime, Beat> beat = beats.floorEntry(clock.time(tempo.tick()));
            if (beat != null) perBeat.put(beat.getKey().max(begin), tempo.microsPerQuarter());
        }
        long shown = 0;
        for (Map.Entry<MusicalTime, Integer> each : perBeat.entrySet()) {
            long micros = each.getValue();
            if (Math.abs(micros - shown) * LEAST_CHANGE <= shown) continue;
            MusicalTime unit =
                    bars.bars().get(clock.barAt(each.getKey())).meter().beat();
            MusicalTime perMinute = MusicalTime.of(60_000_000_000L, micros).dividedBy(unit.times(4));
            long milli = perMinute.plus(MusicalTime.of(1, 2)).countOf(MusicalTime.WHOLE);
            if (milli < 5_000 || milli > 1_000_000) {
                report.addAt(clock.bar(each.getKey()), SkippedWhat.TEMPO, "1/4=" + 60_000_000 / micros);
                continue;
            }
            Tempo tempo = new Tempo(unit, (int) milli);
            measures.addMark(each.getKey(), offset -> new Mark.TempoChange(offset, tempo));
            shown = micros;
        }
    }
}
