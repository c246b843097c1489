package org.mantice.harmony;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What sounds in the melody around a slot, in thousandths of a beat for each pitch class (0 is C). A note may be held
 * over from the chord before or come ahead of the next one, and the bars beside tell which chords are near.
 */
record NotesAround(Map<Place, List<Long>> permille) {
    /** Where the notes lie; measures and the tune by the mean of their beats. The order is that of the tables. */
    enum Place {
        BEAT_BEFORE,
        BEAT_AFTER,
        MEASURE_BEFORE,
        MEASURE,
        MEASURE_AFTER,
        TUNE
    }

    private static final List<Long> SILENCE = mean(List.of());

    NotesAround {
        permille = Map.copyOf(permille);
    }

    long at(Place place, int pitchClass) {
        return Objects.requireNonNull(permille.get(place)).get(pitchClass);
    }

    /**
     * For each slot.
     *
     * @param measures for each slot the index of its measure
     */
    static List<NotesAround> of(List<SlotMelody> melodies, List<Integer> measures) {
        Map<Integer, List<SlotMelody>> inMeasure = new HashMap<>();
        for (int i = 0; i < melodies.size(); i++)
            inMeasure.computeIfAbsent(measures.get(i), m -> new ArrayList<>()).add(melodies.get(i));
        Map<Integer, List<Long>> means = new HashMap<>();
        inMeasure.forEach((measure, beats) -> means.put(measure, mean(beats)));
        List<Long> tune = mean(melodies);
        List<NotesAround> around = new ArrayList<>();
        for (int i = 0; i < melodies.size(); i++) {
            int measure = measures.get(i);
            around.add(new NotesAround(Map.of(
                    Place.BEAT_BEFORE, mean(melodies.subList(Math.max(0, i - 1), i)),
                    Place.BEAT_AFTER, mean(melodies.subList(i + 1, Math.min(melodies.size(), i + 2))),
                    Place.MEASURE_BEFORE, means.getOrDefault(measure - 1, SILENCE),
                    Place.MEASURE, means.getOrDefault(measure, SILENCE),
                    Place.MEASURE_AFTER, means.getOrDefault(measure + 1, SILENCE),
                    Place.TUNE, tune)));
        }
        return around;
    }

    private static List<Long> mean(List<SlotMelody> beats) {
        List<Long> mean = new ArrayList<>();
        for (int note = 0; note < 12; note++) {
            long sum = 0;
            for (SlotMelody beat : beats) sum = Math.addExact(sum, beat.sounding(note));
            mean.add(beats.isEmpty() ? 0 : sum / beats.size());
        }
        return List.copyOf(mean);
    }
}
