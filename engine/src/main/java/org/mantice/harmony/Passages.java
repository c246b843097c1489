package org.mantice.harmony;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Finds passages of two measures or more that come again note for note. */
final class Passages {
    private record Sound(MusicalTime offset, MusicalTime duration, List<Pitch> pitches) {}

    private record Content(Key key, Meter meter, MusicalTime length, boolean pickup, List<Sound> sounds) {}

    private record Pair(Content first, Content second) {}

    private Passages() {}

    /** For each slot the chord that a draft gives to the first measure of its kind, if that comes before. */
    static List<Optional<Harmony>> earlier(Tune tune, List<Slot> slots, List<Harmony> draft) {
        Map<WrittenPlace, Harmony> drafted = new HashMap<>();
        for (int i = 0; i < slots.size(); i++)
            drafted.put(new WrittenPlace(slots.get(i).measure(), slots.get(i).offset()), draft.get(i));
        List<Integer> models = models(tune.measures());
        List<Optional<Harmony>> earlier = new ArrayList<>();
        for (Slot slot : slots) {
            int model = models.get(slot.measure());
            earlier.add(
                    model == slot.measure()
                            ? Optional.empty()
                            : Optional.ofNullable(drafted.get(new WrittenPlace(model, slot.offset()))));
        }
        return earlier;
    }

    /** For each measure the first that is alike and has a neighbour alike; itself where there is none. */
    static List<Integer> models(List<Measure> measures) {
        List<Content> contents = measures.stream().map(Passages::content).toList();
        Map<Pair, Integer> firsts = new HashMap<>();
        List<Integer> models = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) models.add(i);
        for (int i = 0; i + 1 < contents.size(); i++) {
            Pair pair = new Pair(contents.get(i), contents.get(i + 1));
            Integer first = firsts.putIfAbsent(pair, i);
            if (first != null) {
                models.set(i, Math.min(models.get(i), first));
                models.set(i + 1, first + 1);
            }
        }
        return models;
    }

    private static Content content(Measure measure) {
        List<Sound> sounds = measure.melody().stream()
                .map(event -> new Sound(
                        event.offset(),
                        event.duration(),
                        event.notes().stream().map(note -> note.pitch()).toList()))
                .toList();
        return new Content(measure.key(), measure.meter(), measure.length(), measure.pickup(), sounds);
    }
}
