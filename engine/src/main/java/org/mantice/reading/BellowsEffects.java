package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.MusicalTime;

/**
 * Applies bellows effects in words to the melody: from their place to the words that end them, or, where none follow
 * before the next effect, to one event (common practice, no source).
 */
final class BellowsEffects {
    private final List<ScoreMeasure> measures;
    private final List<List<EventDraft>> melody;

    BellowsEffects(List<ScoreMeasure> measures, List<List<EventDraft>> melody) {
        this.measures = measures;
        this.melody = melody;
    }

    private record Place(int measure, MusicalTime onset, ScoreSign sign) {}

    void apply() {
        List<Place> places = measures.stream()
                .flatMap(measure -> measure.signs().stream()
                        .filter(sign -> sign instanceof ScoreSign.Effect || sign instanceof ScoreSign.EffectEnd)
                        .map(sign -> new Place(measure.index(), sign.onset(), sign)))
                .sorted((a, b) ->
                        a.measure != b.measure ? Integer.compare(a.measure, b.measure) : a.onset.compareTo(b.onset))
                .toList();
        for (int i = 0; i < places.size(); i++)
            if (places.get(i).sign instanceof ScoreSign.Effect effect) {
                Optional<Place> end = i + 1 < places.size() && places.get(i + 1).sign instanceof ScoreSign.EffectEnd
                        ? Optional.of(places.get(i + 1))
                        : Optional.empty();
                apply(effect, places.get(i), end);
            }
    }

    private void apply(ScoreSign.Effect effect, Place from, Optional<Place> end) {
        melody.stream()
                .flatMap(List::stream)
                .filter(draft -> !draft.isRest() && !isBefore(draft, from))
                .filter(draft -> end.isEmpty() || isBefore(draft, end.get()))
                .limit(end.isEmpty() ? 1 : Long.MAX_VALUE)
                .forEach(draft -> draft.effect = Optional.of(effect.effect()));
    }

    private static boolean isBefore(EventDraft draft, Place place) {
        return draft.measure != place.measure ? draft.measure < place.measure : draft.onset.isBefore(place.onset);
    }
}
