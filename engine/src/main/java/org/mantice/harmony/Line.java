package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;

/** The highest notes of the melody one after another, rests left out. */
final class Line {
    private final List<Integer> pitches = new ArrayList<>();
    private final List<List<Integer>> places = new ArrayList<>();

    Line(List<Measure> measures) {
        for (Measure measure : measures) {
            List<Integer> here = new ArrayList<>();
            for (MelodyEvent event : measure.melody()) {
                here.add(pitches.size());
                if (!event.isRest())
                    pitches.add(
                            event.notes().get(event.notes().size() - 1).pitch().midi());
            }
            places.add(here);
        }
    }

    boolean hasNext(int measure, int event) {
        return place(measure, event) + 1 < pitches.size();
    }

    /** The pitch after a sounding event; its own where it is the last. */
    int next(int measure, int event) {
        int place = place(measure, event);
        return pitches.get(hasNext(measure, event) ? place + 1 : place);
    }

    /** Reached and left by two semitones or less, not by repetition alone. */
    boolean isByStep(int measure, int event) {
        int place = place(measure, event);
        if (place == 0 || !hasNext(measure, event)) return false;
        int before = Math.abs(pitches.get(place) - pitches.get(place - 1));
        int after = Math.abs(pitches.get(place + 1) - pitches.get(place));
        return before <= 2 && after <= 2 && before + after > 0;
    }

    private int place(int measure, int event) {
        return places.get(measure).get(event);
    }
}
