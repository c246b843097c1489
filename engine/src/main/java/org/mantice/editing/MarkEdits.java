package org.mantice.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.mantice.editing.TuneEditException.Reason;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Edits of phrase and metronome marks. */
final class MarkEdits {
    private MarkEdits() {}

    static Tune phrase(Spot spot, TuneEdit.SetPhrase edit) {
        WrittenPlace place = edit.place();
        Measure measure = spot.measure(place);
        boolean noteBegins = measure.melody().stream()
                .anyMatch(event -> !event.isRest() && event.offset().equals(place.offset()));
        if (edit.begins() && !noteBegins) throw spot.refuse(Reason.NO_NOTE, spot.words(place));
        List<Mark> marks = without(measure, place, Mark.PhraseStart.class::isInstance);
        if (!edit.begins() && marks.size() == measure.marks().size())
            throw spot.refuse(Reason.NO_PHRASE, spot.words(place));
        if (edit.begins()) marks.add(new Mark.PhraseStart(place.offset()));
        return spot.tune().withMeasure(place.measure(), measure.withMarks(marks));
    }

    static Tune tempo(Spot spot, TuneEdit.SetTempo edit) {
        WrittenPlace place = edit.place();
        Measure measure = spot.measure(place);
        List<Mark> marks = without(measure, place, Mark.TempoChange.class::isInstance);
        if (edit.tempo().isEmpty() && marks.size() == measure.marks().size())
            throw spot.refuse(Reason.NO_TEMPO, spot.words(place));
        edit.tempo().ifPresent(tempo -> marks.add(new Mark.TempoChange(place.offset(), tempo)));
        return spot.tune().withMeasure(place.measure(), measure.withMarks(marks));
    }

    private static List<Mark> without(Measure measure, WrittenPlace place, Predicate<Mark> kind) {
        List<Mark> marks = new ArrayList<>(measure.marks());
        marks.removeIf(mark -> kind.test(mark) && mark.offset().equals(place.offset()));
        return marks;
    }
}
