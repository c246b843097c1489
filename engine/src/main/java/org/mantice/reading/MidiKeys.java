package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import org.mantice.reading.midi.Bar;
import org.mantice.reading.midi.Bars;
import org.mantice.reading.midi.KeyFinder;
import org.mantice.reading.midi.MidiMeta;
import org.mantice.reading.midi.MidiNote;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;

/** The key of every bar: as the file says, else found from the notes. */
final class MidiKeys {
    private MidiKeys() {}

    /** @param notes that show the key where the file names none */
    static List<Key> of(
            Bars bars,
            MidiClock clock,
            List<MidiMeta.KeySignature> signatures,
            List<MidiNote> notes,
            ReadReport report) {
        List<Key> keys = new ArrayList<>();
        if (signatures.isEmpty()) {
            Key found = KeyFinder.find(weights(notes));
            report.add(
                    found.mode() == Mode.MINOR ? SkippedWhat.KEY_FOUND_MINOR : SkippedWhat.KEY_FOUND_MAJOR,
                    found.tonic().toString());
            for (int i = 0; i < bars.bars().size(); i++) keys.add(found);
            return keys;
        }
        Key key = key(signatures.get(0));
        int at = 0;
        for (Bar bar : bars.bars()) {
            while (at < signatures.size()
                    && clock.time(signatures.get(at).tick()).compareTo(bar.start()) <= 0)
                key = key(signatures.get(at++));
            keys.add(key);
        }
        return keys;
    }

    private static Key key(MidiMeta.KeySignature signature) {
        return new Key(signature.fifths(), signature.minor() ? Mode.MINOR : Mode.MAJOR);
    }

    private static long[] weights(List<MidiNote> notes) {
        long[] weights = new long[12];
        for (MidiNote note : notes) weights[note.pitch() % 12] += Math.max(1, note.end() - note.start());
        return weights;
    }
}
