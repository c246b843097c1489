package org.mantice.reading;

import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.midi.MidiFile;
import org.mantice.reading.midi.MidiRefusal;

/** Standard MIDI Files of format 0 and 1, plain or in RIFF. */
final class MidiFormat implements TuneFormat {
    @Override
    public boolean claims(byte[] bytes) {
        return MidiFile.claims(bytes);
    }

    @Override
    public TuneBook open(TuneSource source) {
        return TuneFormat.single(options -> read(source, options));
    }

    private static ReadTune read(TuneSource source, ReadOptions options) {
        try {
            MidiFile file = MidiFile.parse(source.bytes(), ReadLimits.PARTS, ReadLimits.NOTES);
            return new MidiTune(source, file).build(options);
        } catch (MidiRefusal e) {
            throw refusal(source, e);
        }
    }

    private static TuneReadException refusal(TuneSource source, MidiRefusal e) {
        Reason reason =
                switch (e.why()) {
                    case TRUNCATED -> Reason.MIDI_TRUNCATED;
                    case FORMAT -> Reason.MIDI_FORMAT;
                    case FRAMES -> Reason.MIDI_FRAMES;
                    case TRACKS -> Reason.TOO_MANY_PARTS;
                    case EVENTS -> Reason.MIDI_TOO_MANY_EVENTS;
                };
        return TuneReadException.causedBy(e, reason, source.place(), e.value());
    }
}
