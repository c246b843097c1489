package org.mantice.editing;

import org.mantice.editing.TuneEditException.Reason;
import org.mantice.performance.Places;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/**
 * The tune that an edit meets, and the refusals that name it.
 *
 * @param number of the edit, from 1
 */
record Spot(Tune tune, int number) {
    /** @throws TuneEditException if the tune has no such measure */
    Measure measure(int index) {
        if (index >= tune.measures().size())
            throw refuse(Reason.NO_SUCH_MEASURE, index + 1, tune.measures().size());
        return tune.measure(index);
    }

    /** @throws TuneEditException if the place is in no measure of the tune */
    Measure measure(WrittenPlace place) {
        Measure measure = measure(place.measure());
        if (!place.offset().isBefore(measure.length()))
            throw refuse(
                    Reason.BEYOND_MEASURE,
                    words(new WrittenPlace(place.measure(), MusicalTime.ZERO)),
                    place.offset(),
                    measure.length());
        return measure;
    }

    String words(WrittenPlace place) {
        return Places.words(tune, place);
    }

    /** @param args what comes after the edit's number */
    TuneEditException refuse(Reason reason, Object... args) {
        Object[] all = new Object[args.length + 1];
        all[0] = number;
        System.arraycopy(args, 0, all, 1, args.length);
        return TuneEditException.of(reason, tune, all);
    }
}
