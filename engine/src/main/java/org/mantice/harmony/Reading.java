package org.mantice.harmony;

import java.util.List;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Mode;
import org.mantice.tune.Tune;

/**
 * The keys that a tune is read in. A major key, or one of no mode, that the tune ends in is read as its relative minor
 * or as Dorian where the last note is the key note of that.
 */
final class Reading {
    private final Key written;
    private final Key read;

    Reading(Tune tune) {
        List<Measure> measures = tune.measures();
        written = measures.get(measures.size() - 1).key();
        int last = 0;
        for (Measure measure : measures)
            for (MelodyEvent event : measure.melody())
                if (!event.isRest()) last = event.notes().get(0).pitch().midi();
        read = new Key(written.fifths(), mode(written, last));
    }

    private static Mode mode(Key key, int lastMidi) {
        if (key.mode() != Mode.MAJOR && key.mode() != Mode.IONIAN && key.mode() != Mode.NONE) return key.mode();
        return switch (Math.floorMod(lastMidi - key.tonic().pitchClass(), 12)) {
            case 9 -> Mode.MINOR;
            case 2 -> Mode.DORIAN;
            default -> Mode.MAJOR;
        };
    }

    Key key(Measure measure) {
        return measure.key().equals(written) ? read : measure.key();
    }
}
