package org.mantice.editing;

import java.util.ArrayList;
import java.util.List;
import org.mantice.editing.TuneEditException.Reason;
import org.mantice.performance.PlayOrder;
import org.mantice.performance.TuneException;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Edits of whole measures: their barlines, and the key from them on. */
final class MeasureEdits {
    private MeasureEdits() {}

    static Tune barlines(Spot spot, TuneEdit.SetBarlines edit) {
        Measure measure = spot.measure(edit.measure()).withBarlines(edit.barlines());
        Tune tune = spot.tune().withMeasure(edit.measure(), measure);
        try {
            PlayOrder.of(tune);
        } catch (TuneException tooLong) {
            throw spot.refuse(
                    Reason.TOO_LONG,
                    spot.words(new WrittenPlace(edit.measure(), MusicalTime.ZERO)),
                    PlayOrder.MOST_MEASURES);
        }
        return tune;
    }

    static Tune key(Spot spot, TuneEdit.SetKey edit) {
        Key before = spot.measure(edit.measure()).key();
        List<Measure> measures = new ArrayList<>(spot.tune().measures());
        for (int i = edit.measure();
                i < measures.size() && measures.get(i).key().equals(before);
                i++) measures.set(i, measures.get(i).withKey(edit.key()));
        return new Tune(spot.tune().title(), spot.tune().dance(), measures);
    }
}
