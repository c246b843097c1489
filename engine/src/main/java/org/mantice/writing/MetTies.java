package org.mantice.writing;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;

/** Keeps the ties of a melody that have both ends; the written one may need others for other passes. */
final class MetTies {
    private record Timed(MusicalTime start, MelodyEvent event) {
        MusicalTime end() {
            return start.plus(event.duration());
        }
    }

    private MetTies() {}

    static List<Measure> only(List<Measure> measures) {
        List<Timed> events = new ArrayList<>();
        MusicalTime start = MusicalTime.ZERO;
        for (Measure measure : measures) {
            for (MelodyEvent event : measure.melody()) events.add(new Timed(start.plus(event.offset()), event));
            start = start.plus(measure.length());
        }
        List<Measure> kept = new ArrayList<>();
        int next = 0;
        for (Measure measure : measures) {
            List<MelodyEvent> melody = new ArrayList<>();
            for (int i = 0; i < measure.melody().size(); i++, next++) melody.add(only(events, next));
            kept.add(measure.withMelody(melody));
        }
        return kept;
    }

    private static MelodyEvent only(List<Timed> events, int at) {
        MelodyEvent event = events.get(at).event();
        List<MelodyNote> notes = event.notes().stream()
                .map(note -> new MelodyNote(
                        note.pitch(),
                        note.tiedBack() && at > 0 && isTied(events.get(at - 1), events.get(at), note),
                        note.tiedForward()
                                && at + 1 < events.size()
                                && isTied(events.get(at), events.get(at + 1), note),
                        note.fingers()))
                .toList();
        return new MelodyEvent(event.offset(), event.duration(), notes, event.graces(), event.after(), event.marks());
    }

    private static boolean isTied(Timed first, Timed second, MelodyNote note) {
        int midi = note.pitch().midi();
        return first.end().equals(second.start())
                && first.event().notes().stream().anyMatch(each -> each.pitch().midi() == midi && each.tiedForward())
                && second.event().notes().stream().anyMatch(each -> each.pitch().midi() == midi && each.tiedBack());
    }
}
